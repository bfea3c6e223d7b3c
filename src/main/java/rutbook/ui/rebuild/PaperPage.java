package rutbook.ui.rebuild;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
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
import rutbook.notebook.Notebook;
import rutbook.notebook.StepDone;
import rutbook.rebuild.Place;
import rutbook.rebuild.Plan;
import rutbook.rebuild.Step;
import rutbook.ui.Desk;
import rutbook.ui.Page;
import rutbook.ui.controls.AskText;
import rutbook.ui.controls.Keys;
import rutbook.ui.fx.InView;
import rutbook.words.BenchWords;

/** A work sheet that was written on at the bench: a row for every step, taken with one touch. */
public final class PaperPage extends Page {
  private final EntryId id;
  private final Label title = Keys.label("", "page-title");
  private final VBox list = new VBox(6);
  private final List<PaperRow> rows = new ArrayList<>();
  private final AskText<LocalDate> day;
  private final ToggleButton staysOpen;
  private final ToggleButton leftOut;
  private final TextField why = new TextField();
  private final Label said = Keys.prose("", "error");
  private final Button take;
  private boolean taking;

  public PaperPage(Desk desk, EntryId id) {
    super(desk);
    this.id = id;
    setId("paper-page");
    setSpacing(10);
    day =
        new AskText<>(
            "paper-day", desk.text("sheet.day"), desk.today().toString(), PaperPage::parsed);
    day.field().setPrefColumnCount(11);
    staysOpen = Keys.choice("paper-open", desk.text("sheet.open"), () -> blank(false));
    leftOut = Keys.choice("paper-out", desk.text("sheet.out"), () -> blank(true));
    take = Keys.mainKey("paper-take", "", this::take);
    ScrollPane scroll = new ScrollPane(list);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.setMinHeight(0);
    scroll.setFocusTraversable(false);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().addAll(head(), scroll, foot());
    blank(false);
  }

  private HBox head() {
    VBox text = new VBox(2, title, Keys.prose(desk().text("sheet.how"), "soft"));
    text.setMinWidth(0);
    HBox.setHgrow(text, Priority.ALWAYS);
    Button back = Keys.key("paper-back", "← " + desk().text("bench.plan"), () -> desk().go(job()));
    Button ticks = Keys.key("paper-ticks", desk().text("sheet.ticks"), this::tickAll);
    HBox head = new HBox(12, back, text, day, ticks);
    head.setAlignment(Pos.BOTTOM_LEFT);
    return head;
  }

  private FlowPane foot() {
    why.setId("paper-why");
    why.getStyleClass().add("large-target");
    why.setPromptText(desk().text("sheet.why"));
    why.setAccessibleText(desk().text("sheet.why"));
    why.setPrefColumnCount(14);
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

  private rutbook.ui.Place job() {
    return new rutbook.ui.Place.Job(id);
  }

  private static LocalDate parsed(String text) {
    return LocalDate.parse(text);
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

  /** Rows are made once: what is typed in them is in no notebook until it is taken. */
  @Override
  protected void show(Notebook notebook) {
    Optional<Entry.RebuildJob> job = Jobs.job(notebook, id);
    Optional<Plan> plan =
        job.flatMap(each -> Jobs.plan(notebook, each, desk().advisor(each.bike())));
    if (plan.isEmpty()) {
      desk().go(new rutbook.ui.Place.Rebuild());
    } else if (!taking) {
      BenchWords words = new BenchWords(desk().phrases());
      title.setText(desk().text("sheet.title", words.job(plan.get().job())));
      fill(plan.get(), words);
      count();
    }
  }

  private void fill(Plan plan, BenchWords words) {
    rows.clear();
    list.getChildren().clear();
    Optional<Place> place = Optional.empty();
    for (Step step : plan.steps()) {
      if (!place.equals(Optional.of(step.place()))) {
        place = Optional.of(step.place());
        list.getChildren().add(Keys.label(words.place(step.place()), "group-title"));
      }
      PaperRow row = new PaperRow(desk(), plan, step, rows.size() + 1, this::count);
      rows.add(row);
      list.getChildren().add(row);
    }
  }

  /** The key says how many steps a touch would enter. */
  private void count() {
    long steps = rows.stream().filter(this::isTaken).count();
    take.setText(desk().text("sheet.take", steps));
    take.setDisable(rows.stream().allMatch(row -> row.isBlank() && !isTaken(row)));
    said.setText("");
  }

  private boolean isTaken(PaperRow row) {
    return row.isNew() || row.isOpen() && leftOut.isSelected();
  }

  private void take() {
    Optional<LocalDate> on = day();
    List<PaperRow> wrong = rows.stream().filter(row -> row.fault().isPresent()).toList();
    rows.forEach(row -> row.refuse(row.fault().orElse("")));
    if (!wrong.isEmpty()) {
      said.setText(desk().text("sheet.faults", wrong.size()));
      InView.bring(wrong.get(0));
    } else if (leftOut.isSelected() && why.getText().isBlank()) {
      said.setText(desk().text("sheet.no.why"));
      why.requestFocus();
    } else if (on.isPresent()) {
      enter(on.get());
    }
  }

  private Optional<LocalDate> day() {
    day.refuse("");
    try {
      LocalDate on = day.read();
      if (on.isAfter(desk().today())) {
        day.refuse(desk().text("sheet.late"));
        return Optional.empty();
      }
      return Optional.of(on);
    } catch (DateTimeException noDay) {
      day.refuse(desk().text("sheet.no.day", desk().today().toString()));
      return Optional.empty();
    }
  }

  /** All of it is one edit, taken back with one undo. */
  private void enter(LocalDate on) {
    List<Edit> edits = new ArrayList<>();
    for (PaperRow row : rows) {
      if (isTaken(row)) {
        Entered entered =
            row.isBlank() ? new Entered.Skipped(why.getText().strip()) : row.entered();
        StepDone done = new StepDone(row.step().id(), desk().now(), entered, Optional.of(on));
        edits.add(new RebuildEdit.Enter(id, done));
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
            refused -> said.setText(desk().settingWords().refusal(refused)),
            () -> desk().go(job()));
    taking = false;
  }
}
