package rutbook.ui.bike;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import rutbook.notebook.Bike;
import rutbook.notebook.BikeId;
import rutbook.notebook.Bounds;
import rutbook.notebook.Carrier;
import rutbook.notebook.Chamber;
import rutbook.notebook.ChamberId;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.ForkKind;
import rutbook.notebook.ForkParts;
import rutbook.notebook.Geometry;
import rutbook.notebook.Head;
import rutbook.notebook.Limits;
import rutbook.notebook.Measure;
import rutbook.notebook.Parts;
import rutbook.notebook.Placed;
import rutbook.notebook.Range;
import rutbook.notebook.Reading;
import rutbook.notebook.Role;
import rutbook.notebook.SagWindows;
import rutbook.notebook.Scale;
import rutbook.notebook.ServiceId;
import rutbook.notebook.ServiceItem;
import rutbook.notebook.ServiceKind;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.ShockParts;
import rutbook.notebook.WhyUnknown;
import rutbook.units.Amount;
import rutbook.units.Display;

/** What the guided start was told of a new bike, and the bike and first baseline made of it. */
record FirstSheet(
    String name,
    LocalDate from,
    ForkKind fork,
    Legs legs,
    Display display,
    List<Line> lines,
    List<Interval> intervals) {

  /** Whether both legs of the fork do the same work. */
  enum Legs {
    ALIKE,
    COMPRESSION_LEFT,
    COMPRESSION_RIGHT;

    /** Where an adjuster of the fork sits. */
    Carrier carrier(Role role, Carrier usual) {
      boolean compression =
          role == Role.FORK_COMPRESSION || role == Role.FORK_HIGH_SPEED_COMPRESSION;
      if (this == ALIKE || !(compression || role == Role.FORK_REBOUND)) {
        return usual;
      }
      return compression == (this == COMPRESSION_LEFT) ? Carrier.LEFT : Carrier.RIGHT;
    }
  }

  /** A setting with its limits and what is on the bike now, if it was noted. */
  record Line(Role role, String name, Range limits, Optional<Amount> now) {}

  /** A service by hours. */
  record Interval(ServiceKind kind, String name, Amount hours, boolean commonPractice) {}

  /** The bike and its first baseline. */
  record Made(Bike bike, Entry.Baseline baseline) {}

  FirstSheet {
    lines = List.copyOf(lines);
    intervals = List.copyOf(intervals);
  }

  /**
   * @param why what the baseline is called
   * @throws rutbook.notebook.NotebookException when an answer cannot be in a notebook
   */
  Made made(Supplier<String> ids, LocalDate today, Optional<Amount> meter, String why) {
    List<Setting> settings = new ArrayList<>();
    List<Chamber> chambers = new ArrayList<>();
    for (Line line : lines) {
      settings.add(setting(line, ids, chambers));
    }
    ForkParts forkParts = ForkParts.of(fork);
    Sheet sheet =
        new Sheet(
            from,
            "",
            settings,
            chambers,
            new Parts(forkParts, ShockParts.unknown(), Geometry.unknown(), SagWindows.none()),
            List.of(),
            intervals.stream().map(each -> service(each, ids)).toList(),
            Optional.empty());
    Bike bike = new Bike(new BikeId(ids.get()), name, List.of(sheet));
    LocalDate day = today.isBefore(from) ? from : today;
    Head head = Head.of(new EntryId(ids.get()), bike.id(), day, 0).withMeter(meter);
    return new Made(
        bike,
        new Entry.Baseline(
            head, setup(sheet), Optional.empty(), Optional.empty(), why, Optional.empty()));
  }

  /**
   * A bike that has nothing yet but its name, to see whether the name will do.
   *
   * @throws rutbook.notebook.NotebookException when it will not
   */
  static Bike named(String name, LocalDate from) {
    FirstSheet bare =
        new FirstSheet(
            name, from, ForkKind.OPEN_BATH, Legs.ALIKE, Display.METRIC, List.of(), List.of());
    return bare.made(() -> "new", from, Optional.empty(), "").bike();
  }

  /** The range made as wide as it takes for an amount that is fitted. */
  static Range including(Range range, Amount fitted) {
    if (fitted.compareQuantity(range.least()) < 0) {
      return new Range(fitted, range.most());
    }
    return fitted.compareQuantity(range.most()) > 0 ? new Range(range.least(), fitted) : range;
  }

  private Setting setting(Line line, Supplier<String> ids, List<Chamber> chambers) {
    CommonPractice usual = CommonPractice.of(line.role(), display);
    Carrier carrier = legs.carrier(line.role(), usual.carrier());
    Limits limits = new Limits.Stops(line.limits());
    if (CommonPractice.isFill(line.role())) {
      ChamberId id = new ChamberId(ids.get());
      chambers.add(
          new Chamber(
              id,
              line.name(),
              carrier,
              Measure.VOLUME,
              line.limits(),
              Optional.empty(),
              Optional.empty()));
      limits = new Limits.Fill(id);
    }
    Scale scale =
        new Scale(
            limits,
            Optional.empty(),
            usual.step(),
            usual.datum(),
            usual.greater(),
            OptionalInt.empty());
    return new Setting(
        new SettingId(ids.get()), line.name(), line.role(), carrier, scale, usual.work());
  }

  private static ServiceItem service(Interval interval, Supplier<String> ids) {
    return new ServiceItem(
        new ServiceId(ids.get()),
        interval.name(),
        interval.kind() == ServiceKind.SHOCK_OIL
            ? rutbook.notebook.End.REAR
            : rutbook.notebook.End.FRONT,
        interval.kind(),
        interval.hours(),
        interval.commonPractice());
  }

  /** What is beyond its limits was found there; what was not noted is unknown. */
  private Setup setup(Sheet sheet) {
    List<Placed> placed = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      Setting setting = sheet.settings().get(i);
      Optional<Amount> now = lines.get(i).now();
      if (now.isEmpty()) {
        placed.add(
            Placed.found(setting.id(), Reading.unknown(setting.carrier(), WhyUnknown.NOT_NOTED)));
        continue;
      }
      Reading reading =
          setting.carrier() == Carrier.PAIR ? Reading.bothLegs(now.get()) : Reading.of(now.get());
      boolean inside = Bounds.refusal(sheet, setting, now.get()).isEmpty();
      placed.add(inside ? Placed.set(setting.id(), reading) : Placed.found(setting.id(), reading));
    }
    return new Setup(placed);
  }
}
