package rutbook.ui.compare;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import rutbook.compare.Comparison;
import rutbook.compare.FullComparison;
import rutbook.compare.Subject;
import rutbook.drawing.MarkGlyph;
import rutbook.notebook.Bike;
import rutbook.notebook.Notebook;
import rutbook.notebook.SettingId;
import rutbook.notebook.Timeline;
import rutbook.reasoning.MoveEffects;
import rutbook.reasoning.RuleBook;
import rutbook.ui.Desk;
import rutbook.ui.PictureKey;
import rutbook.ui.SideChoice;
import rutbook.ui.controls.Keys;
import rutbook.words.CompareWords;
import rutbook.words.EffectWords;

/** Two sides: what differs, where a start comes from, what it was like. */
final class TwoSides extends VBox {
  /**
   * A comparison and how its sides were made.
   *
   * @param fromNow how many settings differ between the bike now and the second side, where the
   *     bike is set like neither; 0 otherwise
   */
  record Compared(FullComparison comparison, List<SideChoice.Made> made, int fromNow) {
    Compared {
      made = List.copyOf(made);
    }

    static Compared of(Timeline timeline, FullComparison comparison, List<SideChoice.Made> made) {
      Subject now = Subject.now(timeline);
      int first = differing(now, comparison.sides().from());
      int second = differing(now, comparison.sides().to());
      return new Compared(comparison, made, first > 0 ? second : 0);
    }

    private static int differing(Subject one, Subject other) {
      return Comparison.of(one, other).settings().differing().size();
    }
  }

  private static final String DOES = "compare.does";
  private static final String SHOWN = "yes";
  private static final double LOW = 32;

  private final Desk desk;
  private final Compared compared;
  private final SettingRows rows;
  private final ToggleButton does;
  private final HBox title = new HBox(14);
  private Map<SettingId, List<String>> effects = Map.of();

  /**
   * @param beginNow puts what is on the bike now on the first side
   */
  TwoSides(Desk desk, Compared compared, Runnable beginNow) {
    this(desk, compared, true);
    if (compared.fromNow() > 0) {
      neither(compared.fromNow(), beginNow);
    }
  }

  /** Who turns from where the bike stands by what differs between two others ends up wrong. */
  private void neither(int settings, Runnable beginNow) {
    Label said = Keys.prose(desk.text("compare.neither", settings), "strong");
    said.setMinWidth(0);
    said.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(said, Priority.ALWAYS);
    said.setAlignment(Pos.CENTER_RIGHT);
    said.setId("compare-neither");
    Button begin = Keys.smallKey("compare-from-now", desk.text("compare.from-now"), beginNow);
    begin.setMinWidth(USE_PREF_SIZE);
    title.getChildren().addAll(said, begin);
  }

  private TwoSides(Desk desk, Compared compared, boolean saved) {
    super(16);
    this.desk = desk;
    this.compared = compared;
    this.rows = new SettingRows(desk, compared.comparison().sides());
    this.does = Keys.choice("compare-does", desk.text("compare.does"), this::fold);
    does.getStyleClass().add("small");
    Label what = Keys.label(desk.text("compare.settings"), "card-title");
    what.setMinWidth(USE_PREF_SIZE);
    does.setMinWidth(USE_PREF_SIZE);
    title.getChildren().add(what);
    title.setAlignment(Pos.CENTER_LEFT);
    if (saved) {
      title.getChildren().add(does);
    }
    getChildren().add(new VBox(6, title, rows));
    compared.made().stream()
        .flatMap(made -> StartPart.of(desk, made).stream())
        .forEach(getChildren()::add);
    getChildren().addAll(new RideParts(desk, saved).of(compared.comparison()));
  }

  private void fold() {
    desk.keep(DOES, does.isSelected() ? SHOWN : "");
    rows.showEffects(does.isSelected());
  }

  /** Where it is low, what each difference does is folded away until it is asked for. */
  void room(double height) {
    boolean shown = desk.kept(DOES).map(SHOWN::equals).orElse(height >= desk.em() * LOW);
    does.setSelected(shown);
    rows.showEffects(shown);
  }

  /** Rules and own motos are asked apart from the rest, which is shown meanwhile. */
  void explain(Timeline timeline) {
    Notebook notebook = desk.notebook();
    RuleBook rules = desk.rules();
    Comparison sides = compared.comparison().sides();
    EffectWords words = new EffectWords(desk.phrases());
    desk.background()
        .run(
            "compare-effects",
            () -> words.lines(MoveEffects.of(notebook, timeline, rules), sides),
            this::explain,
            fault -> {
              throw new IllegalStateException(fault);
            });
  }

  private void explain(Map<SettingId, List<String>> lines) {
    effects = lines;
    rows.explain(lines);
  }

  /** All of it on one sheet, with nothing folded away. */
  Optional<PictureKey.Picture> picture() {
    TwoSides copy = new TwoSides(desk, compared, false);
    copy.explain(effects);
    copy.rows.unfold();
    Comparison sides = compared.comparison().sides();
    VBox head =
        new VBox(4, side(MarkGlyph.FIRST, sides.from()), side(MarkGlyph.SECOND, sides.to()));
    String title = desk.bike().map(Bike::name).orElse("");
    String name = desk.text("picture.compared", said(sides.from()), said(sides.to()));
    return Optional.of(new PictureKey.Picture(name, PictureKey.sheet(title, head, copy)));
  }

  private Node side(MarkGlyph mark, Subject subject) {
    HBox side =
        new HBox(8, PictureKey.drawn(mark.drawing()), Keys.label(said(subject), "card-title"));
    side.setAlignment(Pos.CENTER_LEFT);
    return side;
  }

  private String said(Subject subject) {
    return desk.phrases().sentence(new CompareWords(desk.phrases()).choice(subject.choice()));
  }
}
