package rutbook.ui.bike;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import rutbook.edit.Edit;
import rutbook.edit.EntryEdit;
import rutbook.edit.ShelfEdit;
import rutbook.notebook.BikeId;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Rider;
import rutbook.notebook.RiderId;
import rutbook.ui.controls.Keys;
import rutbook.ui.controls.Scrolling;
import rutbook.units.Amount;
import rutbook.units.Display;

/** Makes a bike in three short steps; what is not known now can be put on the sheet any day. */
final class GuidedStart extends VBox {
  private final BikeDesk desk;
  private final Consumer<BikeId> made;
  private final Answers answers;
  private final Label title = Keys.label("", "page-title");
  private final Label progress = Keys.label("", "soft");
  private final Label error = Keys.prose("", "error");
  private final ScrollPane scroll = Scrolling.withStop(new VBox());
  private final Button back;
  private final Button next;
  private final Button cancel;
  private final StartBike bike;
  private StartSettings settings;
  private StartManual manual;
  private int step;

  GuidedStart(BikeDesk desk, Consumer<BikeId> made, Runnable leave) {
    super(14);
    this.desk = desk;
    this.made = made;
    this.answers = new Answers(desk);
    setId("guided-start");
    bike = new StartBike(desk, this::forget);
    back = Keys.key("start-back", desk.text("start.back"), () -> go(step - 1));
    next = Keys.mainKey("start-next", "", this::forward);
    cancel = Keys.key("start-cancel", desk.text("cancel"), leave);
    error.setId("start-error");
    VBox.setVgrow(scroll, Priority.ALWAYS);
    HBox bar = new HBox(8, back, next, cancel);
    bar.setAlignment(Pos.CENTER_LEFT);
    getChildren().addAll(new VBox(2, title, progress), scroll, bar);
    addEventHandler(KeyEvent.KEY_PRESSED, this::key);
    go(0);
  }

  /** Whether there is a page to go back to. */
  void mayLeave(boolean may) {
    cancel.setVisible(may);
    cancel.setManaged(may);
  }

  /** Other units or another fork ask other things; what was typed there went with the old ones. */
  private void forget() {
    settings = null;
    manual = null;
  }

  private Display display() {
    return bike.display(desk.desk().notebook().display());
  }

  private StartStep stepAt(int place) {
    if (place == 0) {
      return bike;
    }
    if (place == 1) {
      if (settings == null) {
        settings = new StartSettings(desk, display());
      }
      return settings;
    }
    if (manual == null) {
      manual = new StartManual(desk, display(), bike.fork());
    }
    return manual;
  }

  private void go(int place) {
    step = place;
    VBox content = new VBox(stepAt(place).node());
    content.getStyleClass().add("wash");
    scroll.setContent(content);
    scroll.setVvalue(0);
    title.setText(desk.text("start.title." + place));
    progress.setText(desk.text("start.progress", place + 1));
    back.setDisable(place == 0);
    next.setText(desk.text(place == 2 ? "start.make" : "start.next"));
    tell("");
    if (place == 0) {
      bike.focus();
    } else {
      next.requestFocus();
    }
  }

  private void forward() {
    tell("");
    try {
      stepAt(step).check(answers);
      if (step < 2) {
        go(step + 1);
      } else {
        make();
      }
    } catch (Refused refused) {
      refused.ask().refuse(refused.getMessage());
      refused.ask().requestFocus();
    }
  }

  private void make() {
    stepAt(1).check(answers);
    List<FirstSheet.Line> lines = new ArrayList<>(settings.lines());
    lines.addAll(manual.lines());
    FirstSheet sheet =
        new FirstSheet(
            bike.name(),
            bike.from(),
            bike.fork(),
            bike.legs(),
            display(),
            lines,
            manual.intervals());
    try {
      FirstSheet.Made first =
          sheet.made(
              desk.desk().ids()::next,
              desk.desk().today(),
              manual.meter(),
              desk.text("start.baseline"));
      Optional<String> refused = desk.make(new Edit.Together(edits(first)));
      refused.ifPresentOrElse(this::tell, () -> made.accept(first.bike().id()));
    } catch (NotebookException fault) {
      tell(desk.words().fault(fault));
    }
  }

  private List<Edit> edits(FirstSheet.Made first) {
    List<Edit> edits = new ArrayList<>();
    if (!display().equals(desk.desk().notebook().display())) {
      edits.add(new ShelfEdit.ChooseUnits(display()));
    }
    edits.add(new ShelfEdit.AddBike(first.bike()));
    manual.weight().ifPresent(weight -> edits.add(rider(first, weight)));
    edits.add(new EntryEdit.Add(first.baseline()));
    return edits;
  }

  /** The only rider there is, or a first one: with more than one, weights are the sheet's job. */
  private Edit rider(FirstSheet.Made first, Amount weight) {
    Rider.Weight inGear = new Rider.Weight(first.bike().sheets().get(0).from(), weight);
    List<Rider> riders = desk.desk().notebook().shelf().riders();
    if (riders.isEmpty()) {
      RiderId id = new RiderId(desk.desk().ids().next());
      return new ShelfEdit.PutRider(new Rider(id, desk.desk().text("new.rider"), List.of(inGear)));
    }
    Rider rider = riders.get(0);
    List<Rider.Weight> weights = new ArrayList<>(rider.weights());
    weights.removeIf(each -> each.from().equals(inGear.from()));
    weights.add(inGear);
    return new ShelfEdit.PutRider(new Rider(rider.id(), rider.name(), weights));
  }

  private void tell(String sentence) {
    error.setText(sentence);
    getChildren().remove(error);
    if (!sentence.isEmpty()) {
      getChildren().add(2, error);
    }
  }

  private void key(KeyEvent event) {
    if (event.getCode() == KeyCode.ENTER && event.getTarget() instanceof TextField) {
      forward();
      event.consume();
    } else if (event.getCode() == KeyCode.ESCAPE && cancel.isVisible()) {
      cancel.fire();
      event.consume();
    }
  }
}
