package rutbook.ui.bike;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import rutbook.notebook.Sheet;
import rutbook.ui.controls.AskText;
import rutbook.ui.controls.Keys;
import rutbook.ui.controls.Scrolling;

/** Asks whether a sheet was wrong or the bike changed, and tells what would fall outside. */
final class WhichSheet extends VBox {
  private static final int MOST_TOLD = 3;

  private final BikeDesk desk;
  private final Sheet next;
  private final AskText<LocalDate> from;
  private final AskText<String> reason;

  /**
   * @param renewed the sheet as it stands where a new one begins
   * @param done gets the sentence of what stood in the way, if anything
   */
  WhichSheet(
      BikeDesk desk,
      Sheet next,
      Set<SheetChange> changes,
      UnaryOperator<Sheet> renewed,
      Consumer<Optional<String>> done,
      Runnable back) {
    super(10);
    this.desk = desk;
    this.next = next;
    setId("which-sheet");
    Fields fields = new Fields(desk);
    from = fields.day("which-from", "which.from", desk.desk().today());
    reason = fields.line("which-reason", "which.reason", reason(changes));
    FlowPane keys =
        new FlowPane(
            8,
            8,
            Keys.mainKey("which-new", desk.text("which.new"), () -> begin(renewed, done)),
            Keys.key(
                "which-correct", desk.text("which.correct"), () -> done.accept(desk.put(next))),
            Keys.key("which-back", desk.text("which.back"), back));
    VBox box =
        new VBox(
            10,
            Keys.prose(desk.text("which.title"), "strong"),
            Keys.prose(desk.text("which.text"), "condensed"),
            from,
            reason);
    box.getStyleClass().add("caution");
    List<Outside> outside = Outside.of(desk.model().timeline(), next);
    if (!outside.isEmpty()) {
      box.getChildren().add(told(outside));
    }
    ScrollPane scroll = Scrolling.withStop(box);
    setVgrow(scroll, Priority.ALWAYS);
    setMinHeight(0);
    getChildren().addAll(scroll, keys);
  }

  private String reason(Set<SheetChange> changes) {
    return desk.text("which.reason." + changes.iterator().next().name());
  }

  private Label told(List<Outside> outside) {
    OutsideWords words = new OutsideWords(desk);
    List<String> lines = outside.stream().limit(MOST_TOLD).map(words::line).toList();
    String rest =
        outside.size() > MOST_TOLD
            ? "\n" + desk.text("outside.more", outside.size() - MOST_TOLD)
            : "";
    Label label =
        Keys.prose(desk.text("which.outside") + "\n" + String.join("\n", lines) + rest, "strong");
    label.setId("which-outside");
    return label;
  }

  /** A new sheet begins after the one it changes, on a day that has none yet. */
  private void begin(UnaryOperator<Sheet> renewed, Consumer<Optional<String>> done) {
    from.refuse("");
    LocalDate day;
    try {
      day = from.read();
    } catch (DateTimeException none) {
      from.refuse(desk.text("bad.day", desk.desk().today().toString()));
      from.requestFocus();
      return;
    }
    Optional<String> refused = desk.refusalOfNewSheet(day);
    if (refused.isPresent()) {
      from.refuse(refused.get());
      from.requestFocus();
    } else {
      done.accept(desk.put(renewed.apply(next).with(day, reason.read())));
    }
  }

  @Override
  public void requestFocus() {
    from.requestFocus();
  }
}
