package rutbook.notebook;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import rutbook.units.Amount;
import rutbook.units.Dimension;
import rutbook.units.Length;

/** Entries of every kind for the bikes of a shelf, many of them on the same days. */
public final class RandomEntries {
  private static final int DAYS = 200;

  private final Dice dice;
  private final Shelf shelf;

  public RandomEntries(Dice dice, Shelf shelf) {
    this.dice = dice;
    this.shelf = shelf;
  }

  public Head head(Bike bike) {
    LocalDate first = bike.sheets().get(0).from();
    LocalDate day = first.plusDays(dice.once(3) ? dice.below(3) : dice.below(DAYS));
    return new Head(
        new EntryId(dice.id("e")),
        bike.id(),
        day,
        dice.below(3),
        dice.maybe(() -> LocalTime.of(dice.below(24), dice.below(60))),
        dice.maybe(this::meter),
        dice.note());
  }

  public Amount meter() {
    return Bench.hours(dice.below(300) + "." + dice.below(10));
  }

  public Entry.Baseline baseline(Head head) {
    return new Entry.Baseline(
        head,
        dice.setup(sheet(head)),
        dice.maybe(this::length),
        dice.maybe(this::length),
        dice.note(),
        Optional.empty());
  }

  private Sheet sheet(Head head) {
    return shelf.bike(head.bike()).orElseThrow().sheetOn(head.day());
  }

  /** An entry of any kind; one of another kind instead where the bike has nothing for it. */
  public Entry any(Head head, Entry.Baseline baseline) {
    Sheet sheet = sheet(head);
    return switch (dice.below(12)) {
      case 0 -> new Entry.Adjusted(head, dice.changes(sheet));
      case 1 -> sag(head);
      case 2 -> job(head, baseline);
      case 3 -> baseline(head);
      case 4 -> new Entry.MeterChange(head, meter(), meter());
      case 5 ->
          new Entry.Event(
              head,
              dice.any(EventKind.class),
              dice.maybe(() -> dice.any(End.class)),
              dice.maybe(() -> dice.any(FaultSeen.class)),
              dice.note());
      case 6 ->
          new Entry.Serviced(
              head,
              sheet.services().stream().filter(each -> dice.once(2)).map(ServiceItem::id).toList(),
              dice.note());
      case 7 -> new Entry.GateDismissed(head, dice.any(Gate.class), dice.name());
      case 8 -> handedOver(head);
      case 9 -> advice(head);
      default -> session(head);
    };
  }

  public Entry.Session session(Head head) {
    Sheet sheet = sheet(head);
    Optional<EndOfDayCheck> check = dice.maybe(() -> check(sheet));
    return new Entry.Session(
        head,
        dice.any(shelf.tracks()).id(),
        dice.any(shelf.riders()).id(),
        conditions(),
        dice.setup(sheet),
        dice.times(4, () -> moto(sheet)),
        check);
  }

  public EndOfDayCheck check(Sheet sheet) {
    return new EndOfDayCheck(
        sheet.settings().stream()
            .filter(setting -> dice.once(2))
            .map(setting -> new EndOfDayCheck.Found(setting.id(), dice.found(setting)))
            .toList());
  }

  public Moto moto(Sheet sheet) {
    return new Moto(
        new MotoId(dice.id("m")),
        dice.any(MotoKind.class),
        dice.changes(sheet),
        dice.once(5) ? Report.EMPTY : report(),
        dice.maybe(this::conditions),
        dice.note());
  }

  private Report report() {
    Map<Feel.Key, Feel> feel = new LinkedHashMap<>();
    dice.times(5, this::feel).forEach(each -> feel.put(each.key(), each));
    OptionalInt trust = dice.once(3) ? OptionalInt.empty() : OptionalInt.of(dice.between(1, 10));
    return new Report(laps(), trust, List.copyOf(feel.values()), travel(), dice.once(4));
  }

  public List<Lap> laps() {
    return dice.times(
        6, () -> new Lap(dice.between(1, 300_000), dice.once(4) ? dice.maybe(dice::note) : none()));
  }

  private static Optional<String> none() {
    return Optional.empty();
  }

  public Feel feel() {
    return new Feel(
        dice.any(End.class),
        dice.any(Section.class),
        dice.any(Symptom.class),
        dice.below(6),
        dice.maybe(() -> dice.any(Bite.class)),
        dice.maybe(() -> dice.any(When.class)));
  }

  public TravelUsed travel() {
    return new TravelUsed(dice.maybe(this::length), dice.maybe(this::length));
  }

  public Conditions conditions() {
    return new Conditions(
        dice.maybe(() -> dice.any(Ground.class)),
        dice.maybe(() -> dice.any(Moisture.class)),
        dice.once(2) ? OptionalInt.empty() : OptionalInt.of(dice.below(6)),
        dice.maybe(() -> dice.of(Dimension.TEMPERATURE, -20, 45)),
        dice.some(Ready.class));
  }

  private Entry.SagMeasured sag(Head head) {
    boolean race = dice.once(2);
    return new Entry.SagMeasured(
        head,
        dice.any(End.class),
        race ? Optional.of(length()) : Optional.empty(),
        race ? dice.maybe(this::length) : Optional.of(length()),
        dice.maybe(() -> new SagLengths(Bench.mm("600"), Bench.mm("560"), length())),
        dice.maybe(() -> dice.of(Dimension.MASS, 40, 140)),
        dice.maybe(() -> dice.of(Dimension.VOLUME, 0, 9)));
  }

  private Amount length() {
    return Amount.of(dice.between(1, 120), dice.any(Length.class));
  }

  private Entry.RebuildJob job(Head head, Entry.Baseline baseline) {
    Bike bike = shelf.bike(head.bike()).orElseThrow();
    Sheet sheet = dice.any(bike.sheets());
    Map<StepId, StepDone> done = new LinkedHashMap<>();
    dice.times(8, () -> step(sheet)).forEach(each -> done.put(each.step(), each));
    Job job =
        new Job(
            dice.any(Scope.class),
            dice.some(Renewed.class),
            baseline.id(),
            dice.setup(sheet),
            sheet.from(),
            shelf.oils().isEmpty()
                ? Optional.empty()
                : dice.maybe(() -> dice.any(shelf.oils()).id()));
    return new Entry.RebuildJob(head, job, List.copyOf(done.values()), dice.any(Outcome.class));
  }

  public StepDone step(Sheet sheet) {
    Instant at = Instant.ofEpochSecond(1_780_000_000L + dice.below(9_000_000));
    if (sheet.settings().isEmpty() || dice.once(3)) {
      String step = dice.any(List.of("hours", "stand", "drain:left", "count:gone", "unheard-of"));
      return new StepDone(new StepId(step), at, entered(dice.any(List.of(length(), meter()))));
    }
    Setting setting = dice.any(sheet.settings());
    Entered entered =
        dice.once(2)
            ? new Entered.Counted(dice.found(setting))
            : new Entered.Measured(
                dice.chosen(sheet, setting), dice.maybe(() -> dice.any(Instrument.class)));
    return new StepDone(
        StepId.placing(setting.id()),
        at,
        dice.once(5) ? skipped() : entered,
        dice.maybe(() -> java.time.LocalDate.of(2026, 5, 1 + dice.below(28))));
  }

  private Entered entered(Amount amount) {
    return switch (dice.below(3)) {
      case 0 -> dice.once(3) ? new Entered.Ticked(dice.name()) : new Entered.Ticked();
      case 1 -> skipped();
      default -> new Entered.Measured(Reading.of(amount), Optional.empty());
    };
  }

  private Entered skipped() {
    return new Entered.Skipped(dice.name());
  }

  public Entry.HandedOver handedOver(Head head) {
    Sheet sheet = sheet(head);
    return new Entry.HandedOver(
        head,
        new HandOverId(dice.id("h")),
        new Snapshot(dice.setup(sheet), sheet.from(), dice.some(Shared.class)),
        "ab".repeat(32));
  }

  public Entry.Advice advice(Head head) {
    Sheet sheet = sheet(head);
    List<Proposal> proposals = new ArrayList<>();
    for (Setting setting : sheet.settings()) {
      if (dice.once(4)) {
        proposals.add(proposal(sheet, setting));
      }
    }
    Source source =
        dice.once(2)
            ? new Source.Own(dice.name())
            : new Source.Coach(new HandOverId(dice.id("h")), dice.name());
    return new Entry.Advice(head, source, proposals, dice.note());
  }

  private Proposal proposal(Sheet sheet, Setting setting) {
    Answer answer = answer();
    boolean anywhere = answer instanceof Answer.Held || answer instanceof Answer.Declined;
    return new Proposal(
        new ProposalId(dice.id("p")),
        setting.id(),
        dice.found(setting),
        anywhere ? dice.found(setting) : dice.chosen(sheet, setting),
        dice.note(),
        dice.once(2) ? OptionalDouble.empty() : OptionalDouble.of(dice.below(101) / 100.0),
        answer);
  }

  public Answer answer() {
    return switch (dice.below(6)) {
      case 0 -> new Answer.Open();
      case 1 -> new Answer.Accepted(new MotoId(dice.id("m")));
      case 2 -> new Answer.Declined(dice.note());
      case 3 -> new Answer.Kept(new MotoId(dice.id("m")));
      case 4 -> new Answer.PutBack(new MotoId(dice.id("m")));
      default -> new Answer.Held(length());
    };
  }
}
