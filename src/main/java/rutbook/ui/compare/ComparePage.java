package rutbook.ui.compare;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.OverrunStyle;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import rutbook.compare.FullComparison;
import rutbook.compare.SettingHistory;
import rutbook.drawing.MarkGlyph;
import rutbook.notebook.Bike;
import rutbook.notebook.Notebook;
import rutbook.notebook.Timeline;
import rutbook.reasoning.RuleBook;
import rutbook.ui.Desk;
import rutbook.ui.NoBike;
import rutbook.ui.Page;
import rutbook.ui.PictureKey;
import rutbook.ui.SideChoice;
import rutbook.ui.SideOptions;
import rutbook.ui.controls.Keys;
import rutbook.ui.controls.Scrolling;
import rutbook.ui.fx.DrawingView;

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
  private final ScrollPane scroll = Scrolling.withStop(body);
  private final SideList list;
  private final PictureKey picture;
  private Optional<TwoSides> shown = Optional.empty();
  private Supplier<Optional<PictureKey.Picture>> pictured = Optional::empty;
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
    scroll
        .heightProperty()
        .addListener((height, before, now) -> shown.ifPresent(it -> it.room(now.doubleValue())));
    StackPane middle = new StackPane(scroll, list);
    middle.setMinHeight(0);
    VBox.setVgrow(middle, Priority.ALWAYS);
    picture = new PictureKey(desk, "compare-picture", () -> pictured.get());
    Region between = new Region();
    HBox.setHgrow(between, Priority.ALWAYS);
    HBox head =
        new HBox(
            8, Keys.label(desk.text("compare.title"), "page-title"), between, picture.key(), views);
    head.setAlignment(Pos.CENTER_LEFT);
    getChildren().addAll(head, picture.told(), chooser, middle);
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
    picture.key().setVisible(any);
    chooser.setVisible(any && !isSeason());
    sides.setSelected(!isSeason());
    season.setSelected(isSeason());
    if (!any) {
      pictured = Optional::empty;
      String text = desk().text("compare.nothing");
      body.getChildren()
          .setAll(timeline.isEmpty() ? new NoBike(desk(), text) : Keys.prose(text, "wash"));
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

  @Override
  protected void picture() {
    picture.save();
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

  private void beginNow() {
    desk().keep(FROM, SideOptions.NOW);
    compare();
    from.requestFocus();
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
              return TwoSides.Compared.of(
                  timeline,
                  FullComparison.of(notebook.shelf(), timeline, one.subject(), other.subject()),
                  List.of(one, other));
            },
            this::show,
            fault -> body.getChildren().setAll(Keys.prose(desk().text("compare.failed"))));
  }

  private void show(TwoSides.Compared compared) {
    TwoSides sides = new TwoSides(desk(), compared, this::beginNow);
    sides.room(scroll.getHeight());
    shown = Optional.of(sides);
    pictured = sides::picture;
    body.getChildren().setAll(sides);
    sides.explain(timeline().orElseThrow());
  }

  private void showSeason(Timeline timeline) {
    desk()
        .background()
        .run(
            "compare",
            () -> SettingHistory.of(timeline),
            histories -> {
              SeasonView view = new SeasonView(desk(), timeline, histories);
              pictured = view::picture;
              body.getChildren().setAll(view);
            },
            fault -> body.getChildren().setAll(Keys.prose(desk().text("compare.failed"))));
  }
}
