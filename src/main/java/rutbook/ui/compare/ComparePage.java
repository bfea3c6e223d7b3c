package rutbook.ui.compare;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import rutbook.compare.Comparison;
import rutbook.compare.FullComparison;
import rutbook.drawing.MarkGlyph;
import rutbook.notebook.Bike;
import rutbook.notebook.Notebook;
import rutbook.notebook.Timeline;
import rutbook.reasoning.MoveEffects;
import rutbook.ui.Desk;
import rutbook.ui.Page;
import rutbook.ui.SideOption;
import rutbook.ui.controls.Keys;
import rutbook.ui.fx.DrawingView;
import rutbook.words.EffectWords;

/** Two sides of the rider's choice: what differs, what it was like, and whether it matters. */
public final class ComparePage extends Page {
  private static final String FROM = "compare.from";
  private static final String TO = "compare.to";

  private final ComboBox<SideOption> from = side("compare-from", FROM);
  private final ComboBox<SideOption> to = side("compare-to", TO);
  private final Button swap;
  private final HBox chooser;
  private final VBox body = new VBox(16);
  private boolean telling;

  public ComparePage(Desk desk) {
    super(desk);
    setId("compare-page");
    setSpacing(12);
    swap = Keys.key("compare-swap", desk.text("compare.swap"), this::swap);
    chooser =
        new HBox(
            8, glyph(MarkGlyph.FIRST), from, Keys.label("→"), glyph(MarkGlyph.SECOND), to, swap);
    chooser.setAlignment(Pos.CENTER_LEFT);
    from.setAccessibleText(desk.text(FROM));
    to.setAccessibleText(desk.text(TO));
    ScrollPane scroll = new ScrollPane(body);
    scroll.setId("compare-scroll");
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.setMinHeight(0);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().addAll(Keys.label(desk.text("compare.title"), "page-title"), chooser, scroll);
  }

  private ComboBox<SideOption> side(String id, String kept) {
    ComboBox<SideOption> side = new ComboBox<>();
    side.setId(id);
    side.setConverter(
        new StringConverter<>() {
          @Override
          public String toString(SideOption option) {
            return option == null ? "" : option.said();
          }

          @Override
          public SideOption fromString(String said) {
            return null;
          }
        });
    side.setMinWidth(0);
    side.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(side, Priority.ALWAYS);
    side.valueProperty()
        .addListener(
            (value, before, now) -> {
              if (!telling && now != null) {
                desk().keep(kept, now.key());
                compare();
              }
            });
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
    chooser.setVisible(any);
    chooser.setManaged(any);
    if (!any) {
      body.getChildren().setAll(Keys.prose(desk().text("compare.nothing"), "wash"));
      return;
    }
    List<SideOption> options =
        SideOption.all(notebook.shelf(), timeline.orElseThrow(), desk().phrases());
    List<SideOption> usual = SideOption.firstChoice(options);
    telling = true;
    choose(from, options, FROM, usual.get(0));
    choose(to, options, TO, usual.get(1));
    telling = false;
    compare();
  }

  /** What was chosen stays chosen while the window is open, whatever page is looked at between. */
  private void choose(
      ComboBox<SideOption> side, List<SideOption> options, String kept, SideOption usual) {
    side.getItems().setAll(options);
    side.setValue(desk().kept(kept).flatMap(key -> SideOption.find(options, key)).orElse(usual));
  }

  private Optional<Timeline> timeline() {
    return desk().bike().map((Bike bike) -> desk().timeline(bike.id()));
  }

  private void swap() {
    SideOption before = from.getValue();
    telling = true;
    from.setValue(to.getValue());
    telling = false;
    desk().keep(FROM, from.getValue().key());
    to.setValue(before);
  }

  private void compare() {
    Timeline timeline = timeline().orElseThrow();
    SideOption first = from.getValue();
    SideOption second = to.getValue();
    desk()
        .background()
        .run(
            "compare",
            () -> FullComparison.of(timeline, first.subject(timeline), second.subject(timeline)),
            this::shown,
            fault -> body.getChildren().setAll(Keys.prose(desk().text("compare.failed"))));
  }

  private void shown(FullComparison comparison) {
    Label differs = Keys.label(desk().text("compare.settings"), "card-title");
    SettingRows rows = new SettingRows(desk(), comparison.sides());
    explain(rows, comparison.sides());
    VBox settings = new VBox(6, differs, rows);
    body.getChildren().setAll(settings);
    for (Node part : new RideParts(desk()).of(comparison)) {
      body.getChildren().add(part);
    }
  }

  /** Rules and own motos are asked apart from the rest, which is shown meanwhile. */
  private void explain(SettingRows rows, Comparison sides) {
    Notebook notebook = desk().notebook();
    Timeline timeline = timeline().orElseThrow();
    EffectWords words = new EffectWords(desk().phrases());
    desk()
        .background()
        .run(
            "compare-effects",
            () -> words.lines(MoveEffects.of(notebook, timeline, desk().rules()), sides),
            rows::explain,
            fault -> {});
  }
}
