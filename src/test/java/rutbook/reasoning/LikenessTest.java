package rutbook.reasoning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rutbook.json.RulesJson;
import rutbook.notebook.Bench;
import rutbook.notebook.Carrier;
import rutbook.notebook.Change;
import rutbook.notebook.Conditions;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Feel;
import rutbook.notebook.Ground;
import rutbook.notebook.Lap;
import rutbook.notebook.Moisture;
import rutbook.notebook.Moto;
import rutbook.notebook.Notebook;
import rutbook.notebook.Placed;
import rutbook.notebook.Reading;
import rutbook.notebook.Section;
import rutbook.notebook.SettingId;
import rutbook.notebook.Setup;
import rutbook.notebook.Shelf;
import rutbook.notebook.Symptom;
import rutbook.notebook.Track;
import rutbook.notebook.TrackId;
import rutbook.notebook.WhyUnknown;
import rutbook.units.Amount;
import rutbook.units.Length;

/** How unlike two days are: soil, moisture, roughness and height, each a quarter. */
class LikenessTest {
  private static final TrackId HIGH = new TrackId("high");
  private static final Shelf SHELF =
      Bench.shelf()
          .with(track(Bench.HOLLOW, Ground.LOAM, Optional.of("0")))
          .with(track(Bench.DUNE, Ground.SAND, Optional.empty()))
          .with(track(HIGH, Ground.LOAM, Optional.of("1000")));
  private static final Likeness LIKENESS = new Likeness(SHELF);

  private static Track track(TrackId id, Ground ground, Optional<String> altitude) {
    return new Track(
        id,
        id.text(),
        Optional.of(ground),
        altitude.map(metres -> Amount.of(metres, Length.METRE)),
        "");
  }

  private static Entry.Session ride(TrackId track, Conditions conditions) {
    return Bench.session("s", Bench.SPRING, track, Bench.setup(), List.of())
        .withConditions(conditions);
  }

  private static Conditions conditions(Moisture moisture, int roughness) {
    return new Conditions(
        Optional.empty(),
        Optional.of(moisture),
        OptionalInt.of(roughness),
        Optional.empty(),
        Set.of());
  }

  private static double apart(Entry.Session one, Entry.Session other) {
    assertThat(LIKENESS.distance(other, one)).isEqualTo(LIKENESS.distance(one, other));
    return LIKENESS.distance(one, other);
  }

  private static final Moisture[] MOISTURES = Moisture.values();
  private static final Moisture DRIEST = MOISTURES[0];
  private static final Moisture WETTEST = MOISTURES[MOISTURES.length - 1];

  @Test
  void eachOfTheFourCountsAQuarter() {
    Conditions dry = conditions(DRIEST, 0);
    Entry.Session here = ride(Bench.HOLLOW, dry);
    assertThat(apart(here, here)).isZero();
    assertThat(apart(here, ride(Bench.HOLLOW, conditions(WETTEST, 0)))).isEqualTo(0.25);
    assertThat(apart(here, ride(Bench.HOLLOW, conditions(DRIEST, 5)))).isEqualTo(0.25);
    assertThat(apart(here, ride(Bench.HOLLOW, conditions(DRIEST, 2))))
        .isCloseTo(0.1, within(1e-12));
    assertThat(
            apart(
                ride(Bench.HOLLOW, conditions(WETTEST, 2)),
                ride(Bench.HOLLOW, conditions(WETTEST, 4))))
        .isCloseTo(0.1, within(1e-12));
    assertThat(apart(ride(HIGH, conditions(WETTEST, 3)), ride(HIGH, conditions(WETTEST, 3))))
        .isZero();
    assertThat(apart(here, ride(HIGH, dry))).as("1,000 of 2,000 m").isEqualTo(0.125);
    assertThat(apart(here, ride(Bench.DUNE, dry))).as("other soil").isEqualTo(0.25);
    assertThat(apart(here, ride(Bench.HOLLOW, conditions(MOISTURES[1], 0))))
        .isCloseTo(0.25 / (MOISTURES.length - 1), within(1e-12));
  }

  @Test
  void whatIsNotKnownOfADayThatWasRiddenIsTakenNotToDiffer() {
    assertThat(
            apart(
                ride(Bench.HOLLOW, conditions(DRIEST, 0)),
                ride(Bench.HOLLOW, Conditions.NOT_NOTED)))
        .isZero();
  }

  /** Of a day ahead, what is not known counts half; the same track without a word is the same. */
  @Test
  void whatIsNotKnownOfADayAheadCountsHalf() {
    Entry.Session here = ride(Bench.HOLLOW, conditions(DRIEST, 0));
    Track hollow = SHELF.track(Bench.HOLLOW).orElseThrow();
    Track dune = SHELF.track(Bench.DUNE).orElseThrow();
    assertThat(LIKENESS.distance(here, hollow, Conditions.NOT_NOTED)).isZero();
    assertThat(LIKENESS.distance(here, dune, Conditions.NOT_NOTED))
        .as("other soil, the rest unknown")
        .isEqualTo((1 + 3 * 0.5) / 4);
    assertThat(LIKENESS.distance(here, hollow, conditions(WETTEST, 0))).isEqualTo(0.25);
    Conditions sand =
        new Conditions(
            Optional.of(Ground.SAND),
            Optional.of(DRIEST),
            OptionalInt.of(0),
            Optional.empty(),
            Set.of());
    assertThat(LIKENESS.distance(here, hollow, sand))
        .as("what the day says of the soil counts before what the track says")
        .isEqualTo(0.25);
  }

  private static Moto trusted(String id, int trust) {
    Moto moto = Bench.moto(id, List.of(), List.of());
    return moto.withReport(
        moto.report().withTrust(OptionalInt.of(trust)).withLaps(List.of(Lap.of(60_000))));
  }

  private static StartAtTrack start(Notebook notebook, TrackId track) {
    return StartAtTrack.of(
        notebook,
        Bench.BIKE,
        notebook.shelf().track(track).orElseThrow(),
        Conditions.NOT_NOTED,
        RulesJson.ofTheTrade());
  }

  @Test
  void withNothingRiddenTheBaselineIsTheStart() {
    StartAtTrack start = start(Bench.notebook(), Bench.DUNE);
    assertThat(start.like()).isEmpty();
    assertThat(start.distance()).isEqualTo(1);
    assertThat(start.settings()).allMatch(each -> each.basis() == StartAtTrack.Basis.BASELINE);
    assertThat(start.on(Setup.EMPTY)).isEqualTo(Bench.setup());
    Setup other =
        Bench.setup().with(Placed.set(Bench.FORK_REBOUND, Reading.bothLegs(Bench.clicks(5))));
    assertThat(start.on(other)).isEqualTo(Bench.setup());
  }

  /** Of the rides most like it the one with the most trust, then the newest. */
  @Test
  void theStartGoesByTheRideThatIsMostLikeItAndWentBest() {
    Notebook notebook =
        Bench.notebook()
            .with(
                Bench.session(
                    "best", Bench.SPRING, Bench.DUNE, Bench.setup(), List.of(trusted("a", 10))))
            .with(
                Bench.session(
                    "here",
                    Bench.SPRING.plusDays(1),
                    Bench.HOLLOW,
                    Bench.setup(),
                    List.of(trusted("b", 4), trusted("c", 8), trusted("d", 6))))
            .with(
                Bench.session(
                    "again",
                    Bench.SPRING.plusDays(2),
                    Bench.HOLLOW,
                    Bench.setup(),
                    List.of(trusted("e", 8))));
    StartAtTrack start = start(notebook, Bench.HOLLOW);
    assertThat(start.like().map(each -> each.id().text())).contains("again");
    assertThat(start.moto()).isZero();
    assertThat(start.distance()).isZero();
    Notebook earlier = notebook.without(new EntryId("again"));
    assertThat(start(earlier, Bench.HOLLOW).like().map(each -> each.id().text())).contains("here");
    assertThat(start(earlier, Bench.HOLLOW).moto()).isEqualTo(1);
    assertThat(start(earlier, Bench.DUNE).like().map(each -> each.id().text())).contains("best");
  }

  private static Moto rated(String id, int severity, Change... changes) {
    Moto moto =
        Bench.moto(
            id,
            List.of(changes),
            List.of(Feel.of(End.FRONT, Section.SQUARE_EDGES, Symptom.HARSH, severity)));
    return moto.withReport(moto.report().withTrust(OptionalInt.of(7)));
  }

  private static StartAtTrack.From from(StartAtTrack start, SettingId id) {
    return start.settings().stream()
        .filter(each -> each.setting().id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  /** At equal trust the moto with the fewest complaints, and of equals the last. */
  @Test
  void whatWasTriedStandsAsInThatMotoAndTheRestAsInTheBaseline() {
    Change softer = Change.of(Bench.FORK_COMPRESSION, Reading.bothLegs(Bench.clicks(15)));
    Reading other = Reading.of(Bench.clicks(7));
    Setup ridden = Bench.setup().with(Placed.set(Bench.SHOCK_REBOUND, other));
    Notebook notebook =
        Bench.notebook()
            .with(
                Bench.session(
                    "s",
                    Bench.SPRING,
                    Bench.HOLLOW,
                    ridden,
                    List.of(rated("a", 4), rated("b", 1, softer), rated("c", 1), rated("d", 3))));
    StartAtTrack start = start(notebook, Bench.HOLLOW);
    assertThat(start.moto()).isEqualTo(2);
    assertThat(from(start, Bench.FORK_COMPRESSION).reading()).isEqualTo(softer.to());
    assertThat(from(start, Bench.FORK_COMPRESSION).basis()).isEqualTo(StartAtTrack.Basis.OWN_MOTOS);
    assertThat(from(start, Bench.SHOCK_REBOUND).reading())
        .as("ridden so, but never tried against anything")
        .isEqualTo(Reading.of(Bench.clicks(12)));
    Notebook unknown =
        notebook.with(
            Bench.baseline(
                Bench.setup()
                    .with(
                        Placed.found(
                            Bench.SHOCK_REBOUND,
                            Reading.unknown(Carrier.SINGLE, WhyUnknown.NOT_NOTED)))));
    assertThat(from(start(unknown, Bench.HOLLOW), Bench.SHOCK_REBOUND))
        .as("the baseline does not know it")
        .isEqualTo(
            new StartAtTrack.From(
                Bench.sheet().setting(Bench.SHOCK_REBOUND).orElseThrow(),
                other,
                StartAtTrack.Basis.OWN_MOTOS));
  }
}
