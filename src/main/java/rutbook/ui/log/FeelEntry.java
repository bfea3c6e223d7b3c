package rutbook.ui.log;

import java.util.Optional;
import java.util.OptionalInt;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.DoubleBinding;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import rutbook.edit.MotoEdit;
import rutbook.notebook.EntryId;
import rutbook.notebook.Feel;
import rutbook.notebook.Section;
import rutbook.ui.Desk;
import rutbook.ui.controls.KeyRow;
import rutbook.ui.controls.Keys;

/**
 * Fast feel entry: where, what, how badly, one touch each; what bothered before waits at the right
 * for one touch, and trust above for one more. Where there is no room for both, the lap gives its
 * place to the symptoms of the chosen section.
 */
final class FeelEntry extends VBox {
  private static final int MOST_TRUST = 10;

  /** What the symptoms of a section need below the lap. */
  private static final double SYMPTOMS_EM = 18.5;

  private static final double HALF = 50;

  /** Narrower than this, the names of complaints need more room than those of sections. */
  private static final double NARROW_EM = 70;

  private static final double NARROW_SHARE = 47;

  private final Desk desk;
  private final EntryId session;
  private final KeyRow trust = new KeyRow("feel-trust", 4);
  private final LapOfSections lap;
  private final SymptomChoice what;
  private final StillThere still;
  private final VBox left = new VBox(10);
  private FeelModel model;
  private Optional<Section> section = Optional.empty();
  private double room;

  FeelEntry(Desk desk, EntryId session) {
    super(8);
    this.desk = desk;
    this.session = session;
    setId("feel-entry");
    lap = new LapOfSections(desk, this::choose);
    what = new SymptomChoice(desk, this::note, this::backToTheLap);
    still = new StillThere(desk, this::note, this::takeBack);
    left.getChildren().addAll(lap, what);
    GridPane halves = new GridPane();
    halves.setHgap(20);
    ColumnConstraints sections = new ColumnConstraints();
    ColumnConstraints standing = new ColumnConstraints();
    halves.getColumnConstraints().addAll(sections, standing);
    DoubleBinding share =
        Bindings.createDoubleBinding(
            () -> halves.getWidth() < NARROW_EM * desk.em() ? NARROW_SHARE : HALF,
            halves.widthProperty());
    sections.percentWidthProperty().bind(share);
    standing.percentWidthProperty().bind(share.negate().add(2 * HALF));
    halves.addRow(0, left, still);
    getChildren().addAll(trust(), halves);
  }

  private HBox trust() {
    for (int i = 1; i <= MOST_TRUST; i++) {
      int value = i;
      ToggleButton key = Keys.choice("trust-" + i, Integer.toString(i), () -> trust(value));
      key.getStyleClass().addAll("number", "square");
      key.setAccessibleText(desk.text("moto.trust", i));
      trust.add(key, i == MOST_TRUST ? "0" : Integer.toString(i));
    }
    trust.fill();
    trust.setMaxWidth(760);
    HBox.setHgrow(trust, Priority.ALWAYS);
    Label label = Keys.label(desk.text("feel.trust"), "group-title");
    label.setMinWidth(USE_PREF_SIZE);
    HBox row = new HBox(12, label, trust);
    row.setAlignment(Pos.CENTER_LEFT);
    return row;
  }

  /** So much height is there without scrolling. */
  void room(double height) {
    if (height != room) {
      room = height;
      arrange();
    }
  }

  void show(FeelModel newModel) {
    if (model == null || !model.moto().id().equals(newModel.moto().id())) {
      section = Optional.empty();
    }
    model = newModel;
    OptionalInt now = model.moto().report().trust();
    trust.choose(now.isPresent() ? Optional.of(now.getAsInt() - 1) : Optional.empty());
    still.show(model);
    arrange();
  }

  private void arrange() {
    if (model == null) {
      return;
    }
    boolean both =
        room
            >= trust.prefHeight(-1)
                + getSpacing()
                + lap.prefHeight(lap.getWidth())
                + SYMPTOMS_EM * desk.em();
    boolean lapStands = both || section.isEmpty();
    boolean whatStands = both || section.isPresent();
    lap.setVisible(lapStands);
    lap.setManaged(lapStands);
    what.setVisible(whatStands);
    what.setManaged(whatStands);
    lap.show(section);
    what.show(model, section, !lapStands);
  }

  private void choose(Section chosen) {
    section = Optional.of(chosen);
    arrange();
    if (!lap.isVisible()) {
      what.focus();
    }
  }

  private void backToTheLap() {
    Optional<Section> before = section;
    section = Optional.empty();
    arrange();
    lap.focus(before);
  }

  private void note(Feel feel) {
    desk.make(new MotoEdit.NoteFeel(session, model.moto().id(), feel));
    show(model);
  }

  private void takeBack(Feel feel) {
    desk.make(new MotoEdit.ForgetFeel(session, model.moto().id(), feel.key()));
  }

  /** A second touch takes it back. */
  private void trust(int value) {
    boolean again = model.moto().report().trust().equals(OptionalInt.of(value));
    OptionalInt next = again ? OptionalInt.empty() : OptionalInt.of(value);
    desk.make(new MotoEdit.Trust(session, model.moto().id(), next));
    show(model);
  }

  /** Where the keyboard begins. */
  void focus() {
    if (lap.isVisible()) {
      lap.focus(section);
    } else {
      what.focus();
    }
  }
}
