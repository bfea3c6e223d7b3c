package rutbook.ui.compare;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.OverrunStyle;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import rutbook.compare.Comparison;
import rutbook.compare.FullComparison;
import rutbook.compare.SettingHistory;
import rutbook.drawing.MarkGlyph;
import rutbook.notebook.Bike;
import rutbook.notebook.Notebook;
import rutbook.notebook.Timeline;
import rutbook.reasoning.MoveEffects;
import rutbook.reasoning.RuleBook;
import rutbook.ui.Desk;
import rutbook.ui.Page;
import rutbook.ui.controls.Keys;
import rutbook.ui.fx.DrawingView;
import rutbook.words.EffectWords;

/**
 * Two sides of the rider's choice: what differs, what it was like, and whether it matters; or how
 * each setting moved over the season.
 */
public final class ComparePage extends Page {
  private static final String FROM = "compare.from";
  private static final String TO = "compare.to";
  private static final String SEASON = "compare.view.season";

  private final Button from = side("compare-from", FROM);
  private final Button to = side("compare-to", TO);
  private final ToggleButton sides;
  private final ToggleButton season;
  private final HBox chooser;
  private final HBox views;
  private final VBox body = new VBox(16);
  private final ScrollPane scroll = new ScrollPane(body);
  private final SideList list;
  private SideOptions options;
  private Notebook optionsOf;

  public ComparePage(Desk desk) {
    super(desk);
    setId("compare-page");
    setSpacing(12);
    sides = Keys.choice("compare-sides", desk.text("compare.sides"), () -> view(false));
    season = Keys.choice("compare-season-key", desk.text(SEASON), () -> view(true));
    views = new HBox(6, sides, season);
    chooser =
        new HBox(
            8,
            glyph(MarkGlyph.FIRST),
            from,
            Keys.label("→"),
            glyph(MarkGlyph.SECOND),
            to,
            Keys.key("compare-swap", desk.text("compare.swap"), this::swap));
    chooser.setAlignment(Pos.CENTER_LEFT);
    chooser.managedProperty().bind(chooser.visibleProperty());
    views.managedProperty().bind(views.visibleProperty());
    list = new SideList(desk, this::leaveList);
    list.setVisible(false);
    scroll.setId("compare-scroll");
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.setMinHeight(0);
    StackPane middle = new StackPane(scroll, list);
    middle.setMinHeight(0);
    VBox.setVgrow(middle, Priority.ALWAYS);
    Region between = new Region();
    HBox.setHgrow(between, Priority.ALWAYS);
    HBox head = new HBox(8, Keys.label(desk.text("compare.title"), "page-title"), between, views);
    head.setAlignment(Pos.CENTER_LEFT);
    getChildren().addAll(head, chooser, middle);
  }

  private Button side(String id, String kept) {
    Button side = Keys.key(id, "", () -> ask(kept));
    side.getStyleClass().add("side");
    side.setTextOverrun(OverrunStyle.ELLIPSIS);
    side.setAlignment(Pos.CENTER_LEFT);
    side.setMinWidth(0);
    side.setPrefWidth(200);
    side.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(side, Priority.ALWAYS);
    return side;
  }

  private static DrawingView glyph(MarkGlyph mark) {
    DrawingView view = new DrawingView();
    view.show(mark.drawing());
    view.setMinWidth(mark.drawing().width());
    view.setMaxHeight(mark.drawing().height());
    return view;
  }

  @Override
  protected void show(Notebook notebook) {
    Optional<Timeline> timeline = timeline();
    boolean any = timeline.map(it -> !it.entries().isEmpty()).orElse(false);
    views.setVisible(any);
    chooser.setVisible(any && !isSeason());
    sides.setSelected(!isSeason());
    season.setSelected(isSeason());
    if (!any) {
      body.getChildren().setAll(Keys.prose(desk().text("compare.nothing"), "wash"));
      return;
    }
    if (optionsOf != notebook) {
      options = new SideOptions(notebook.shelf(), timeline.orElseThrow(), desk().phrases());
      optionsOf = notebook;
    }
    if (isSeason()) {
      showSeason(timeline.orElseThrow());
    } else {
      compare();
    }
  }

  private boolean isSeason() {
    return desk().kept(SEASON).isPresent();
  }

  private void view(boolean overTheSeason) {
    if (overTheSeason) {
      desk().keep(SEASON, "yes");
    } else {
      desk().forget(SEASON);
    }
    leaveList();
    show(desk().notebook());
  }

  private Optional<Timeline> timeline() {
    return desk().bike().map((Bike bike) -> desk().timeline(bike.id()));
  }

  /** What was chosen stays chosen while the window is open, whatever page is looked at between. */
  private SideChoice chosen(String kept) {
    SideChoice usual = options.firstChoice().get(kept.equals(FROM) ? 0 : 1);
    return desk().kept(kept).flatMap(options::find).orElse(usual);
  }

  private void ask(String kept) {
    scroll.setVisible(false);
    list.setVisible(true);
    list.ask(
        desk().text(kept),
        options,
        chosen(kept),
        option -> {
          desk().keep(kept, option.key());
          leaveList();
          compare();
          (kept.equals(FROM) ? from : to).requestFocus();
        });
  }

  private void leaveList() {
    list.setVisible(false);
    scroll.setVisible(true);
  }

  private void swap() {
    SideChoice before = chosen(FROM);
    desk().keep(FROM, chosen(TO).key());
    desk().keep(TO, before.key());
    leaveList();
    compare();
  }

  private void say(Button side, String kept) {
    String said = options.said(chosen(kept));
    side.setText(said);
    side.setAccessibleText(desk().text(kept) + ": " + said);
  }

  private void compare() {
    say(from, FROM);
    say(to, TO);
    Timeline timeline = timeline().orElseThrow();
    Notebook notebook = desk().notebook();
    RuleBook rules = desk().rules();
    SideChoice first = chosen(FROM);
    SideChoice second = chosen(TO);
    desk()
        .background()
        .run(
            "compare",
            () -> {
              SideChoice.Made one = first.made(notebook, timeline, rules);
              SideChoice.Made other = second.made(notebook, timeline, rules);
              return new Shown(
                  FullComparison.of(timeline, one.subject(), other.subject()), List.of(one, other));
            },
            this::shown,
            fault -> body.getChildren().setAll(Keys.prose(desk().text("compare.failed"))));
  }

  private record Shown(FullComparison comparison, List<SideChoice.Made> made) {}

  private void shown(Shown shown) {
    Label differs = Keys.label(desk().text("compare.settings"), "card-title");
    SettingRows rows = new SettingRows(desk(), shown.comparison().sides());
    explain(rows, shown.comparison().sides());
    body.getChildren().setAll(new VBox(6, differs, rows));
    shown.made().stream()
        .flatMap(made -> StartPart.of(desk(), made).stream())
        .forEach(body.getChildren()::add);
    body.getChildren().addAll(new RideParts(desk()).of(shown.comparison()));
  }

  /** Rules and own motos are asked apart from the rest, which is shown meanwhile. */
  private void explain(SettingRows rows, Comparison compared) {
    Notebook notebook = desk().notebook();
    Timeline timeline = timeline().orElseThrow();
    RuleBook rules = desk().rules();
    EffectWords words = new EffectWords(desk().phrases());
    desk()
        .background()
        .run(
            "compare-effects",
            () -> words.lines(MoveEffects.of(notebook, timeline, rules), compared),
            rows::explain,
            fault -> {
              throw new IllegalStateException(fault);
            });
  }

  private void showSeason(Timeline timeline) {
    desk()
        .background()
        .run(
            "compare",
            () -> SettingHistory.of(timeline),
            histories -> body.getChildren().setAll(new SeasonView(desk(), timeline, histories)),
            fault -> body.getChildren().setAll(Keys.prose(desk().text("compare.failed"))));
  }
}
