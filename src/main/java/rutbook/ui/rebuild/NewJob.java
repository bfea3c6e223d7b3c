package rutbook.ui.rebuild;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import rutbook.edit.Edit;
import rutbook.edit.EntryEdit;
import rutbook.notebook.Bike;
import rutbook.notebook.Entry;
import rutbook.notebook.Head;
import rutbook.notebook.Job;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Oil;
import rutbook.notebook.OilId;
import rutbook.notebook.Outcome;
import rutbook.notebook.Renewed;
import rutbook.notebook.Scope;
import rutbook.rebuild.Plan;
import rutbook.rebuild.PlanFrom;
import rutbook.rebuild.Planner;
import rutbook.ui.Desk;
import rutbook.ui.Place;
import rutbook.ui.controls.Keys;
import rutbook.words.BenchWords;

/** The few questions that a rebuild starts with, and how long it will take. */
final class NewJob extends VBox {
  private final Desk desk;
  private final Bike bike;
  private final Map<Scope, ToggleButton> scopes = new EnumMap<>(Scope.class);
  private final Map<Renewed, ToggleButton> renewed = new EnumMap<>(Renewed.class);
  private final ComboBox<String> oil = new ComboBox<>();
  private final Label says = Keys.prose("", "soft");
  private final Label error = Keys.prose("", "error");
  private final Button begin;
  private final Button baseline;
  private Scope scope = Scope.FORK;

  NewJob(Desk desk, Bike bike, Runnable close) {
    super(12);
    this.desk = desk;
    this.bike = bike;
    setId("new-job");
    getStyleClass().add("wash");
    FlowPane what = new FlowPane(8, 8);
    for (Scope each : Scope.values()) {
      ToggleButton key =
          Keys.choice("job-" + each, new BenchWords(desk.phrases()).scope(each), () -> take(each));
      scopes.put(each, key);
      what.getChildren().add(key);
    }
    FlowPane parts = new FlowPane(8, 8);
    for (Renewed each : Renewed.values()) {
      ToggleButton key = Keys.choice("job-" + each, desk.phrases().name(each), this::tell);
      key.setSelected(each == Renewed.OIL);
      renewed.put(each, key);
      parts.getChildren().add(key);
    }
    parts.getChildren().add(oils());
    begin = Keys.mainKey("job-start", desk.text("job.start"), this::start);
    baseline = Keys.mainKey("job-baseline", desk.text("baseline.keep"), this::keepBaseline);
    begin.managedProperty().bind(begin.visibleProperty());
    baseline.managedProperty().bind(baseline.visibleProperty());
    HBox keys =
        new HBox(10, begin, baseline, Keys.key("job-cancel", desk.text("job.cancel"), close));
    keys.setAlignment(Pos.CENTER_LEFT);
    getChildren()
        .addAll(
            Keys.label(desk.text("job.what"), "card-title"),
            what,
            Keys.label(desk.text("job.renewed"), "group-title"),
            parts,
            says,
            error,
            keys);
    error.managedProperty().bind(error.textProperty().isNotEmpty());
    take(Scope.FORK);
  }

  private ComboBox<String> oils() {
    oil.setId("job-oil");
    oil.getStyleClass().add("large-target");
    oil.setAccessibleText(desk.text("job.oil"));
    List<String> names = new ArrayList<>(List.of(desk.text("job.oil.unsaid")));
    desk.notebook().shelf().oils().forEach(each -> names.add(each.name()));
    oil.getItems().setAll(names);
    oil.getSelectionModel().select(0);
    return oil;
  }

  private void take(Scope chosen) {
    scope = chosen;
    scopes.forEach((each, key) -> key.setSelected(each == chosen));
    tell();
  }

  private Set<Renewed> chosen() {
    Set<Renewed> all = new TreeSet<>();
    renewed.forEach(
        (each, key) -> {
          if (key.isSelected()) {
            all.add(each);
          }
        });
    return all;
  }

  private Optional<OilId> chosenOil() {
    int place = oil.getSelectionModel().getSelectedIndex() - 1;
    List<Oil> oils = desk.notebook().shelf().oils();
    return place < 0 || place >= oils.size() || !chosen().contains(Renewed.OIL)
        ? Optional.empty()
        : Optional.of(oils.get(place).id());
  }

  private Optional<PlanFrom> from() {
    return PlanFrom.beginning(desk.timeline(bike.id()), scope, chosen());
  }

  private void tell() {
    oil.setDisable(!chosen().contains(Renewed.OIL));
    Optional<Plan> plan = from().map(from -> Planner.plan(from, desk.advisor(bike.id())));
    begin.setVisible(plan.isPresent());
    baseline.setVisible(plan.isEmpty());
    BenchWords words = new BenchWords(desk.phrases());
    says.setText(
        plan.map(
                each ->
                    desk.text(
                        "job.says",
                        each.steps().size(),
                        words.time(each.minutesLeft()),
                        words.tools(each.tools())))
            .orElseGet(() -> desk.text("job.no.baseline")));
  }

  private void start() {
    from().ifPresent(this::start);
  }

  /** Nothing can be gone back to before something is the baseline. */
  private void keepBaseline() {
    desk.make(KeepBaseline.first(desk, bike))
        .ifPresentOrElse(
            refused -> error.setText(desk.settingWords().refusal(refused)),
            () -> {
              tell();
              begin.requestFocus();
            });
  }

  /** Where the cursor begins. */
  void focusFirst() {
    (begin.isVisible() ? begin : baseline).requestFocus();
  }

  private void start(PlanFrom from) {
    Job job = from.job();
    Job named =
        new Job(
            job.scope(), job.renewed(), job.baseline(), job.before(), job.sheetFrom(), chosenOil());
    Head head = desk.headToday(bike);
    Edit edit = new EntryEdit.Add(new Entry.RebuildJob(head, named, List.of(), Outcome.UNDER_WAY));
    Optional<NotebookException> refused = desk.make(edit);
    if (refused.isPresent()) {
      error.setText(desk.settingWords().refusal(refused.get()));
    } else {
      desk.go(new Place.Job(head.id()));
    }
  }
}
