package rutbook.compare;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import rutbook.figures.GasFigures;
import rutbook.figures.OilFigures;
import rutbook.figures.SteeringFigures;
import rutbook.notebook.Conditions;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.ForkKind;
import rutbook.notebook.Oil;
import rutbook.notebook.Renewed;
import rutbook.notebook.Role;
import rutbook.notebook.Sheet;
import rutbook.notebook.Shelf;
import rutbook.notebook.Timeline;
import rutbook.notebook.Track;
import rutbook.units.Amount;
import rutbook.units.Angle;
import rutbook.units.Length;

/** What sag and conditions explain of a comparison; what cannot be said is left out. */
public final class Explaining {
  /** A tape is out by as much on either measurement: common practice, no source. */
  private static final double TAPE_MM = 2;

  /** Less air is no more than one day's morning and noon; our own choice, as those below. */
  private static final double LEAST_KELVIN = 3;

  private static final double LEAST_METRES = 300;
  private static final double LEAST_SHARE = 0.02;
  private static final double LEAST_DEGREES = 0.05;
  private static final Amount NONE = Amount.of(0, Length.MILLIMETRE);

  private final Comparison sides;
  private final List<Explanation> found = new ArrayList<>();

  private Explaining(Comparison sides) {
    this.sides = sides;
  }

  /** In the order in which a bike is looked at: how it stands, its oil and air, the ground. */
  public static List<Explanation> of(Shelf shelf, Timeline timeline, Comparison sides) {
    Explaining explaining = new Explaining(sides);
    explaining.heights();
    explaining.steering();
    explaining.springAlike();
    explaining.oil(shelf, timeline);
    explaining.altitude();
    explaining.ground();
    return List.copyOf(explaining.found);
  }

  private Optional<Amount> raceSagMore(End end) {
    return sides.sag().stream()
        .filter(row -> row.end() == end && row.kind() == SagKind.RACE)
        .flatMap(row -> row.by().stream())
        .findFirst();
  }

  private static boolean beyondTape(Amount by) {
    return Math.abs(by.doubleIn(Length.MILLIMETRE)) > TAPE_MM;
  }

  private void heights() {
    for (End end : List.of(End.FRONT, End.REAR)) {
      raceSagMore(end)
          .filter(by -> by.value().signum() != 0)
          .ifPresent(by -> found.add(new Explanation.RidesAt(end, by, beyondTape(by))));
    }
  }

  /** Sag within what a tape may be out moves nothing. */
  private void steering() {
    Sheet sheet = sides.to().sheet();
    if (!sheet.parts().geometry().equals(sides.from().sheet().parts().geometry())) {
      return;
    }
    Amount front =
        tubeMore()
            .orElse(NONE)
            .plus(raceSagMore(End.FRONT).filter(Explaining::beyondTape).orElse(NONE));
    Amount rear = raceSagMore(End.REAR).filter(Explaining::beyondTape).orElse(NONE);
    SteeringFigures.of(sheet)
        .then(
            before ->
                SteeringFigures.after(sheet, front, rear)
                    .map(after -> steers(front, rear, before, after)))
        .found()
        .filter(it -> Math.abs(it.rake().doubleIn(Angle.DEGREE)) >= LEAST_DEGREES)
        .ifPresent(found::add);
  }

  private static Explanation.Steers steers(
      Amount front, Amount rear, SteeringFigures before, SteeringFigures after) {
    return new Explanation.Steers(
        front, rear, after.rake().minus(before.rake()), after.trail().minus(before.trail()));
  }

  private Optional<Amount> tubeMore() {
    return sides.settings().rows().stream()
        .filter(row -> row.setting().role() == Role.TUBE_ABOVE_CLAMP)
        .filter(row -> row.from().isPresent() && row.to().isPresent())
        .findFirst()
        .flatMap(
            row ->
                first(row.to().get())
                    .flatMap(to -> first(row.from().get()).map(from -> to.minus(from))));
  }

  private static Optional<Amount> first(Standing standing) {
    return standing.reading().amounts().stream()
        .filter(amount -> amount.dimension() == NONE.dimension())
        .findFirst();
  }

  /** Where the sheet has both and neither was moved, they cannot have moved the sag. */
  private void springAlike() {
    boolean alike = isSame(Role.SHOCK_SPRING) && isSame(Role.SHOCK_PRELOAD);
    raceSagMore(End.REAR)
        .filter(by -> alike && beyondTape(by))
        .ifPresent(by -> found.add(new Explanation.NotBySetting(by)));
  }

  private boolean isSame(Role role) {
    List<SettingDifference> rows =
        sides.settings().rows().stream().filter(row -> row.setting().role() == role).toList();
    return !rows.isEmpty()
        && rows.stream()
            .allMatch(row -> row.isSame() && row.to().orElseThrow().reading().isKnown());
  }

  private void oil(Shelf shelf, Timeline timeline) {
    Optional<Amount> before = sides.from().conditions().air();
    Optional<Amount> after = sides.to().conditions().air();
    Optional<Oil> old = oilOn(shelf, timeline, sides.from().day());
    Optional<Oil> now = oilOn(shelf, timeline, sides.to().day());
    if (before.isEmpty() || after.isEmpty() || old.isEmpty() || now.isEmpty()) {
      return;
    }
    if (Math.abs(after.get().si() - before.get().si()) < LEAST_KELVIN) {
      return;
    }
    OilFigures.inAir(old.get(), now.get(), before.get(), after.get())
        .found()
        .filter(ratio -> Math.abs(ratio.ratio() - 1) >= LEAST_SHARE)
        .map(
            ratio ->
                new Explanation.OilInAir(
                    after.get().minus(before.get()),
                    old.get(),
                    now.get(),
                    ratio.ratio() - 1,
                    OilFigures.RIDING))
        .ifPresent(found::add);
  }

  /** The oil that the last fork rebuild up to a day put in. */
  private static Optional<Oil> oilOn(Shelf shelf, Timeline timeline, LocalDate day) {
    return timeline.entries(Entry.RebuildJob.class).stream()
        .filter(entry -> !entry.day().isAfter(day))
        .map(Entry.RebuildJob::job)
        .filter(job -> job.fork() && job.renewed().contains(Renewed.OIL))
        .reduce((earlier, later) -> later)
        .flatMap(job -> job.oil())
        .flatMap(id -> shelf.oils().stream().filter(oil -> oil.id().equals(id)).findFirst());
  }

  private void altitude() {
    Optional<Amount> before = track(sides.from().choice()).flatMap(Track::altitude);
    Optional<Amount> after = track(sides.to().choice()).flatMap(Track::altitude);
    boolean bled = sides.to().sheet().parts().fork().kind() != ForkKind.AIR;
    if (!bled || before.isEmpty() || after.isEmpty()) {
      return;
    }
    if (Math.abs(after.get().si() - before.get().si()) < LEAST_METRES) {
      return;
    }
    GasFigures.bledAt(before.get(), after.get())
        .found()
        .map(share -> new Explanation.AirBled(after.get().minus(before.get()), share))
        .ifPresent(found::add);
  }

  /** Only sides that were ridden have a track that they were bled at. */
  private static Optional<Track> track(Choice choice) {
    if (choice instanceof Choice.OfSession it) {
      return Optional.of(it.track());
    } else if (choice instanceof Choice.OfMoto it) {
      return Optional.of(it.track());
    }
    return choice instanceof Choice.BestOf it ? Optional.of(it.track()) : Optional.empty();
  }

  private void ground() {
    if (sides.feel().isEmpty()) {
      return;
    }
    Conditions before = sides.from().conditions();
    Conditions after = sides.to().conditions();
    OptionalInt rougher =
        before.roughness().isPresent() && after.roughness().isPresent()
            ? OptionalInt.of(after.roughness().getAsInt() - before.roughness().getAsInt())
            : OptionalInt.empty();
    if (before.ground().isPresent()
        && after.ground().isPresent()
        && !before.ground().equals(after.ground())) {
      found.add(new Explanation.OtherGround(before.ground().get(), after.ground().get(), rougher));
    } else if (rougher.isPresent() && rougher.getAsInt() != 0) {
      found.add(new Explanation.Rougher(rougher.getAsInt()));
    }
  }
}
