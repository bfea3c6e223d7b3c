package rutbook.ui.bike;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import rutbook.notebook.ForkKind;
import rutbook.notebook.Range;
import rutbook.notebook.Role;
import rutbook.notebook.ServiceKind;
import rutbook.ui.controls.Ask;
import rutbook.ui.controls.AskText;
import rutbook.ui.controls.Keys;
import rutbook.units.Amount;
import rutbook.units.Dimension;
import rutbook.units.Display;
import rutbook.units.Duration;
import rutbook.units.Unit;

/** The third step: what the service manual and the hour meter say; all of it may be left out. */
final class StartManual implements StartStep {
  private static final int FORK_OIL_HOURS = 30;
  private static final int SHOCK_OIL_HOURS = 40;

  private final BikeDesk desk;
  private final Display display;
  private final Fields fields;
  private final VBox box = new VBox(12);
  private final GridPane grid = new GridPane();
  private final List<Ask<?>> asks = new ArrayList<>();
  private final Optional<AskText<Optional<Amount>>> forkSpring;
  private final AskText<Optional<Amount>> shockSpring;
  private final Role fillRole;
  private final AskText<Optional<Amount>> fillLeast;
  private final AskText<Optional<Amount>> fillMost;
  private final AskText<Optional<Amount>> fillNow;
  private final AskText<Optional<Amount>> forkHours;
  private final AskText<Optional<Amount>> shockHours;
  private final AskText<Optional<Amount>> meter;
  private final AskText<Optional<Amount>> weight;
  private List<FirstSheet.Line> lines = List.of();
  private List<FirstSheet.Interval> intervals = List.of();

  StartManual(BikeDesk desk, Display display, ForkKind fork) {
    this.desk = desk;
    this.display = display;
    this.fields = new Fields(desk);
    boolean air = fork == ForkKind.AIR;
    fillRole = air ? Role.FORK_AIR : Role.FORK_OIL;
    for (int i = 0; i < 3; i++) {
      ColumnConstraints third = new ColumnConstraints();
      third.setPercentWidth(100.0 / 3);
      grid.getColumnConstraints().add(third);
    }
    grid.setHgap(14);
    grid.setVgap(12);
    grid.setMaxWidth(860);
    Dimension fill = air ? Dimension.PRESSURE : Dimension.VOLUME;
    String what = air ? "start.air." : "start.oil.";
    fillLeast = maybe("start-fill-least", what + "least", fill, 0, 0);
    fillMost = maybe("start-fill-most", what + "most", fill, 1, 0);
    fillNow = maybe("start-fill-now", what + "now", fill, 2, 0);
    forkSpring =
        air
            ? Optional.empty()
            : Optional.of(
                maybe("start-fork-spring", "start.fork.spring", Dimension.SPRING_RATE, 0, 1));
    shockSpring = maybe("start-shock-spring", "start.shock.spring", Dimension.SPRING_RATE, 1, 1);
    weight = maybe("start-weight", "start.weight", Dimension.MASS, 2, 1);
    forkHours = hours("start-fork-hours", "start.fork.hours", FORK_OIL_HOURS, 0);
    shockHours = hours("start-shock-hours", "start.shock.hours", SHOCK_OIL_HOURS, 1);
    meter = maybe("start-meter", "start.meter", Dimension.DURATION, 2, 2);
    Label caution = Keys.prose(desk.text("start.caution"));
    caution.getStyleClass().add("caution");
    caution.setMaxWidth(860);
    box.getChildren().addAll(caution, grid);
  }

  private AskText<Optional<Amount>> maybe(
      String id, String key, Dimension dimension, int column, int row) {
    Unit unit = display.unit(dimension);
    AskText<Optional<Amount>> ask = fields.maybeIn(id, key, Optional.empty(), () -> unit);
    ask.example(unit.symbol());
    asks.add(ask);
    grid.add(ask, column, row);
    return ask;
  }

  private AskText<Optional<Amount>> hours(String id, String key, int usual, int column) {
    AskText<Optional<Amount>> ask =
        fields.maybeIn(id, key, Optional.of(Amount.of(usual, Duration.HOUR)), () -> Duration.HOUR);
    ask.hint(desk.text("start.hours.hint"));
    asks.add(ask);
    grid.add(ask, column, 2);
    return ask;
  }

  @Override
  public Node node() {
    return box;
  }

  @Override
  public void check(Answers answers) {
    asks.forEach(ask -> ask.refuse(""));
    List<FirstSheet.Line> read = new ArrayList<>();
    fill(answers).ifPresent(read::add);
    forkSpring.flatMap(ask -> spring(answers, ask, Role.FORK_SPRING)).ifPresent(read::add);
    spring(answers, shockSpring, Role.SHOCK_SPRING).ifPresent(read::add);
    List<FirstSheet.Interval> services = new ArrayList<>();
    interval(answers, forkHours, ServiceKind.FORK_OIL, FORK_OIL_HOURS).ifPresent(services::add);
    interval(answers, shockHours, ServiceKind.SHOCK_OIL, SHOCK_OIL_HOURS).ifPresent(services::add);
    answers.take(meter);
    answers.take(weight);
    lines = read;
    intervals = services;
  }

  /** A fill is bounded by the manual's least and most, or it is left to the sheet. */
  private Optional<FirstSheet.Line> fill(Answers answers) {
    Optional<Amount> least = answers.take(fillLeast);
    Optional<Amount> most = answers.take(fillMost);
    Optional<Amount> now = answers.take(fillNow);
    if (least.isEmpty() && most.isEmpty() && now.isEmpty()) {
      return Optional.empty();
    }
    if (least.isEmpty() || most.isEmpty()) {
      throw new Refused(least.isEmpty() ? fillLeast : fillMost, desk.text("start.fill.both"));
    }
    Range range = answers.blame(fillMost, () -> new Range(least.get(), most.get()));
    if (range.least().value().signum() <= 0) {
      throw new Refused(fillLeast, desk.text("start.fill.positive"));
    }
    return Optional.of(new FirstSheet.Line(fillRole, desk.words().name(fillRole), range, now));
  }

  /** The springs that usually fit, and this one. */
  private Optional<FirstSheet.Line> spring(
      Answers answers, AskText<Optional<Amount>> ask, Role role) {
    Optional<Amount> rate = answers.take(ask);
    return rate.map(
        amount -> {
          Range usual = CommonPractice.of(role, display).range().orElseThrow();
          Range wider = answers.blame(ask, () -> FirstSheet.including(usual, amount));
          return new FirstSheet.Line(role, desk.words().name(role), wider, rate);
        });
  }

  private Optional<FirstSheet.Interval> interval(
      Answers answers, AskText<Optional<Amount>> ask, ServiceKind kind, int usual) {
    return answers
        .take(ask)
        .map(
            hours ->
                new FirstSheet.Interval(
                    kind,
                    desk.words().name(kind),
                    hours,
                    hours.sameQuantity(Amount.of(usual, Duration.HOUR))));
  }

  List<FirstSheet.Line> lines() {
    return lines;
  }

  List<FirstSheet.Interval> intervals() {
    return intervals;
  }

  Optional<Amount> meter() {
    return meter.read();
  }

  Optional<Amount> weight() {
    return weight.read();
  }
}
