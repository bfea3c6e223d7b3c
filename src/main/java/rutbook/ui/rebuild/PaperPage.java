package rutbook.ui.rebuild;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import rutbook.edit.Edit;
import rutbook.edit.RebuildEdit;
import rutbook.notebook.Entered;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.NotebookException;
import rutbook.notebook.StepDone;
import rutbook.rebuild.Plan;
import rutbook.rebuild.Step;
import rutbook.ui.Desk;
import rutbook.ui.controls.AskText;
import rutbook.ui.controls.Keys;
import rutbook.ui.controls.Scrolling;
import rutbook.ui.fx.InView;

/** A work sheet that was written on at the bench: a row for every step, taken with one touch. */
public final class PaperPage extends OneJob {
  private final Label title = Keys.label("", "page-title");
  private final VBox list = new VBox(6);
  private final List<PaperRow> rows = new ArrayList<>();
  private final PaperDay days;
  private final AskText<String> day;
  private final ToggleButton several;
  private final ToggleButton staysOpen;
  private final ToggleButton leftOut;
  private final TextField why = new TextField();
  private final Label said = Keys.prose("", "error");
  private final Button take;
  private boolean taking;

  public PaperPage(Desk desk, EntryId id) {
    super(desk, id);
    setId("paper-page");
    setSpacing(10);
    days = new PaperDay(desk.today(), desk.words());
    day = new AskText<>("paper-day", desk.text("sheet.day"), desk.today().toString(), text -> text);
    day.field().setPrefColumnCount(9);
    day.setMinWidth(USE_PREF_SIZE);
    several = Keys.choice("paper-days", desk.text("sheet.days"), this::askDays);
    staysOpen = Keys.choice("paper-open", desk.text("sheet.open"), () -> blank(false));
    leftOut = Keys.choice("paper-out", desk.text("sheet.out"), () -> blank(true));
    take = Keys.mainKey("paper-take", "", this::take);
    day.field().textProperty().addListener((text, was, now) -> count());
    ScrollPane scroll = Scrolling.of(list);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().addAll(head(), days(), scroll, foot());
    blank(false);
  }

  private HBox head() {
    VBox text = new VBox(2, title, Keys.prose(desk().text("sheet.how"), "soft"));
    text.setMinWidth(0);
    HBox.setHgrow(text, Priority.ALWAYS);
    Button back = Keys.key("paper-back", "← " + desk().text("bench.plan"), this::toThePlan);
    HBox head = new HBox(12, back, text);
    head.setAlignment(Pos.CENTER_LEFT);
    return head;
  }

  private HBox days() {
    Button ticks = Keys.key("paper-ticks", desk().text("sheet.ticks"), this::tickAll);
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    HBox row = new HBox(12, day, several, gap, ticks);
    row.setAlignment(Pos.BOTTOM_LEFT);
    return row;
  }

  private FlowPane foot() {
    why.setId("paper-why");
    why.getStyleClass().add("large-target");
    why.setPromptText(desk().text("sheet.why"));
    why.setAccessibleText(desk().text("sheet.why"));
    why.setPrefColumnCount(18);
    why.visibleProperty().bind(leftOut.selectedProperty());
    why.managedProperty().bind(leftOut.selectedProperty());
    said.setId("paper-faults");
    said.managedProperty().bind(said.textProperty().isNotEmpty());
    Region gap = new Region();
    gap.setPrefWidth(12);
    FlowPane foot =
        new FlowPane(
            8,
            8,
            Keys.label(desk().text("sheet.blank"), "soft"),
            staysOpen,
            leftOut,
            why,
            gap,
            take,
            said);
    foot.setAlignment(Pos.CENTER_LEFT);
    return foot;
  }

  private void blank(boolean out) {
    staysOpen.setSelected(!out);
    leftOut.setSelected(out);
    count();
  }

  private void tickAll() {
    rows.stream().filter(PaperRow::isTick).forEach(PaperRow::tick);
    count();
  }

  private void askDays() {
    rows.forEach(row -> row.askDay(several.isSelected()));
    count();
  }

  /** Rows are made once: what is typed in them is in no notebook until it is taken. */
  @Override
  void show(Entry.RebuildJob job, Plan plan) {
    if (!taking) {
      title.setText(desk().text("sheet.title", bench().job(plan.job())));
      rows.clear();
      list(list, plan, step -> row(plan, step));
      askDays();
    }
  }

  private Node row(Plan plan, Step step) {
    PaperRow row = new PaperRow(desk(), plan, step, rows.size() + 1, this::count);
    rows.add(row);
    return row;
  }

  /** The key says how many steps a touch would enter; each row shows the day that holds for it. */
  private void count() {
    long steps = rows.stream().filter(this::isTaken).count();
    take.setText(desk().text("sheet.take", steps));
    take.setDisable(rows.stream().allMatch(row -> row.isBlank() && !isTaken(row)));
    said.setText("");
    dayOfEach();
  }

  /** A day holds from its row on, until another is written. */
  private List<Optional<LocalDate>> dayOfEach() {
    List<Optional<LocalDate>> each = new ArrayList<>();
    Optional<LocalDate> above = days.read(day.field().getText());
    for (PaperRow row : rows) {
      above = row.day(above);
      each.add(above);
    }
    return each;
  }

  private boolean isTaken(PaperRow row) {
    return row.isNew() || row.isOpen() && leftOut.isSelected();
  }

  private void take() {
    Optional<String> noDay = days.fault(day.field().getText());
    day.refuse(noDay.orElse(""));
    List<PaperRow> wrong = rows.stream().filter(row -> row.fault().isPresent()).toList();
    rows.forEach(row -> row.refuse(row.fault().orElse("")));
    if (!wrong.isEmpty()) {
      said.setText(desk().text("sheet.faults", wrong.size()));
      InView.bring(wrong.get(0));
    } else if (leftOut.isSelected() && why.getText().isBlank()) {
      said.setText(desk().text("sheet.no.why"));
      why.requestFocus();
    } else if (noDay.isEmpty()) {
      try {
        enter(dayOfEach());
      } catch (NotebookException tooLong) {
        said.setText(desk().settingWords().refusal(tooLong));
      }
    }
  }

  /** All of it is one edit, taken back with one undo. */
  private void enter(List<Optional<LocalDate>> on) {
    List<Edit> edits = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      PaperRow row = rows.get(i);
      if (isTaken(row)) {
        Entered entered =
            row.isBlank() ? new Entered.Skipped(why.getText().strip()) : row.entered();
        StepDone done = new StepDone(row.step().id(), desk().now(), entered, on.get(i));
        edits.add(new RebuildEdit.Enter(id(), done));
      }
    }
    if (edits.isEmpty()) {
      said.setText(desk().text("sheet.nothing"));
      return;
    }
    taking = true;
    desk()
        .make(new Edit.Together(edits))
        .ifPresentOrElse(
            refused -> said.setText(desk().settingWords().refusal(refused)), this::toThePlan);
    taking = false;
  }
}
