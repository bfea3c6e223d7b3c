package rutbook.reasoning;

import static org.assertj.core.api.Assertions.assertThat;
import static rutbook.notebook.Bench.clicks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rutbook.json.RulesJson;
import rutbook.notebook.Bench;
import rutbook.notebook.Carrier;
import rutbook.notebook.Change;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Feel;
import rutbook.notebook.Moto;
import rutbook.notebook.MotoId;
import rutbook.notebook.Notebook;
import rutbook.notebook.Placed;
import rutbook.notebook.Reading;
import rutbook.notebook.Section;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Setup;
import rutbook.notebook.Symptom;
import rutbook.notebook.Timeline;
import rutbook.notebook.WhyUnknown;

/** What counts as a comparison of two motos, and what the ledger has of it. */
class LedgerTest {
  private static final RuleBook RULES = RulesJson.ofTheTrade();

  private static Feel harsh(int severity) {
    return Feel.of(End.FRONT, Section.SQUARE_EDGES, Symptom.HARSH, severity);
  }

  private static Feel dives(int severity) {
    return Feel.of(End.FRONT, Section.CORNER_ENTRY, Symptom.DIVES, severity);
  }

  private static final Complaint HARSH = Complaint.of(harsh(1));

  private static Change compression(long clicks) {
    return Change.of(Bench.FORK_COMPRESSION, Reading.bothLegs(clicks(clicks)));
  }

  private static Change rebound(long clicks) {
    return Change.of(Bench.FORK_REBOUND, Reading.bothLegs(clicks(clicks)));
  }

  private static Moto moto(String id, int severity, Change... changes) {
    return Bench.moto(id, List.of(changes), List.of(harsh(severity)));
  }

  private static Notebook days(Setup start, Moto[]... days) {
    Notebook notebook = Bench.notebook();
    for (int i = 0; i < days.length; i++) {
      notebook =
          notebook.with(
              Bench.session(
                  "s" + i, Bench.SPRING.plusDays(i), Bench.HOLLOW, start, List.of(days[i])));
    }
    return notebook;
  }

  private static Notebook day(Moto... motos) {
    return days(Bench.setup(), motos);
  }

  private static List<Trial> trials(Notebook notebook, Complaint complaint, SettingId id) {
    List<Ride> rides = Ride.of(Timeline.of(notebook, Bench.BIKE));
    return Trials.of(rides, Bench.settings()).of(complaint, id);
  }

  private static List<Trial> trials(Notebook notebook) {
    return trials(notebook, HARSH, Bench.FORK_COMPRESSION);
  }

  @Test
  void aChangeBetweenTwoMotosOfADayIsATrial() {
    assertThat(trials(day(moto("a", 4), moto("b", 3, compression(14)), moto("c", 5))))
        .containsExactly(
            new Trial(
                new EntryId("s0"), Bench.SPRING, new MotoId("a"), new MotoId("b"), -2, 4, 3, true));
    assertThat(trials(day(moto("a", 4), moto("b", 3, compression(14)), moto("c", 5))))
        .isEqualTo(trials(day(moto("a", 4), moto("b", 3, compression(14)))));
  }

  @Test
  void twoThingsMovedAtOnceAreATrialOfBothAndCleanOfNeither() {
    Notebook both = day(moto("a", 4), moto("b", 3, compression(14), rebound(9)));
    assertThat(trials(both)).singleElement().satisfies(each -> assertThat(each.clean()).isFalse());
    assertThat(trials(both, HARSH, Bench.FORK_REBOUND))
        .singleElement()
        .satisfies(each -> assertThat(each.doses()).isEqualTo(2));
    Notebook noted = day(moto("a", 4), moto("b", 3, compression(14), rebound(11)));
    assertThat(trials(noted))
        .as("a change to where it stood moves nothing")
        .singleElement()
        .satisfies(each -> assertThat(each.clean()).isTrue());
    assertThat(trials(noted, HARSH, Bench.FORK_REBOUND)).isEmpty();
  }

  @Test
  void onlyWhatWasRatedOnBothSidesOfAChangeIsCompared() {
    Moto other = Bench.moto("b", List.of(compression(14)), List.of(dives(2)));
    assertThat(trials(day(moto("a", 4), other))).isEmpty();
    assertThat(trials(day(moto("a", 4), other), Complaint.of(dives(1)), Bench.FORK_COMPRESSION))
        .isEmpty();
    Moto silent = Bench.moto("b", List.of(), List.of());
    assertThat(trials(day(moto("a", 4), silent, moto("c", 3, compression(14)))))
        .as("a moto between them that says nothing")
        .isEmpty();
  }

  @Test
  void anotherDayIsAnotherTrack() {
    Moto[] first = {moto("a", 4)};
    Moto[] second = {moto("b", 3, compression(14))};
    assertThat(trials(days(Bench.setup(), first, second))).isEmpty();
  }

  @Test
  void fromWhereNobodyKnowsNoDosesAreCounted() {
    Setup unknown =
        Bench.setup()
            .with(
                Placed.found(
                    Bench.FORK_COMPRESSION, Reading.unknown(Carrier.PAIR, WhyUnknown.NOT_NOTED)));
    Moto[] motos = {moto("a", 4), moto("b", 3, compression(14))};
    assertThat(trials(days(unknown, motos))).isEmpty();
  }

  @Test
  void ofSeveralRatingsOfOneThingTheGreatestCounts() {
    Feel rocks = Feel.of(End.FRONT, Section.ROCKS_AND_ROOTS, Symptom.HARSH, 5);
    Moto twice = Bench.moto("a", List.of(), List.of(harsh(2), rocks, dives(1)));
    assertThat(Ride.greatest(twice)).containsOnlyKeys(HARSH, Complaint.of(dives(1)));
    assertThat(Ride.greatest(twice).get(HARSH)).isEqualTo(rocks);
    Moto turned = Bench.moto("a", List.of(), List.of(rocks, harsh(2)));
    assertThat(Ride.greatest(turned).get(HARSH)).isEqualTo(rocks);
  }

  @Test
  void withNothingRiddenTheLedgerIsEmpty() {
    Ledger empty = Ledger.of(Bench.notebook(), Bench.BIKE, RULES);
    assertThat(empty).isEqualTo(new Ledger(List.of(), List.of(), List.of()));
  }

  @Test
  void theLedgerHasWhatRulesOrMotosSpeakOf() {
    Ledger ledger = Ledger.of(day(moto("a", 4), moto("b", 3, compression(14))), Bench.BIKE, RULES);
    assertThat(ledger.complaints()).containsExactly(HARSH);
    assertThat(ledger.settings()).isEqualTo(Bench.settings());
    assertThat(ledger.rows()).allMatch(row -> row.byRule() != 0 || !row.trials().isEmpty());
    Setting compression = Bench.sheet().setting(Bench.FORK_COMPRESSION).orElseThrow();
    LedgerRow row = ledger.row(HARSH, compression).orElseThrow();
    assertThat(row.trials()).hasSize(1);
    assertThat(row.rule()).isPresent();
    Setting tyre = Bench.sheet().setting(Bench.SHOCK_SPRING).orElseThrow();
    assertThat(ledger.row(HARSH, tyre)).as("no rule and no moto").isEmpty();
    assertThat(ledger.row(Complaint.of(dives(1)), compression)).isEmpty();
    Ledger silent =
        Ledger.of(day(moto("a", 4), moto("b", 3, compression(14))), Bench.BIKE, RuleBook.none());
    assertThat(silent.rows()).extracting(LedgerRow::setting).containsExactly(compression);
    assertThat(silent.rows().get(0).own()).as("all own").isGreaterThan(0);
    assertThat(silent.rows().get(0).rule()).isEmpty();
  }

  /** Two settings that always moved together cannot be told apart until one was tried alone. */
  @Test
  void whatMovedTogetherIsNamedUntilItWasTriedAlone() {
    List<Moto> together = new ArrayList<>();
    for (int i = 0; i < 24; i++) {
      boolean out = i % 2 == 1;
      Change[] changes = {compression(out ? 16 : 12), rebound(out ? 15 : 11)};
      together.add(moto("t" + i, out ? 2 : 4, i == 0 ? new Change[0] : changes));
    }
    Setting compression = Bench.sheet().setting(Bench.FORK_COMPRESSION).orElseThrow();
    Setting rebound = Bench.sheet().setting(Bench.FORK_REBOUND).orElseThrow();
    LedgerRow row =
        Ledger.of(day(together.toArray(Moto[]::new)), Bench.BIKE, RULES)
            .row(HARSH, compression)
            .orElseThrow();
    assertThat(row.cleanTrials()).isZero();
    assertThat(row.mixedTrials()).isEqualTo(23);
    assertThat(row.alike()).containsExactly(rebound);
    List<Moto> alone = new ArrayList<>(together);
    for (int i = 0; i < 3; i++) {
      alone.add(moto("a" + i, 3, compression(i % 2 == 0 ? 12 : 16)));
    }
    LedgerRow known =
        Ledger.of(day(alone.toArray(Moto[]::new)), Bench.BIKE, RULES)
            .row(HARSH, compression)
            .orElseThrow();
    assertThat(known.cleanTrials()).isEqualTo(LedgerRow.MANY_CLEAN);
    assertThat(known.alike()).isEmpty();
  }

  /** One-sided 90 % of the normal distribution: 1.2816 standard deviations. */
  @Test
  void anEstimateIsSureWhenItsSignIs() {
    assertThat(row(-0.5, 0.39).isSure()).isTrue();
    assertThat(row(0.5, 0.39).isSure()).isTrue();
    assertThat(row(-0.5, 0.391).isSure()).isFalse();
    assertThat(row(0, 0).isSure()).isFalse();
  }

  private static LedgerRow row(double estimate, double sd) {
    Setting compression = Bench.sheet().setting(Bench.FORK_COMPRESSION).orElseThrow();
    return new LedgerRow(
        HARSH, compression, Optional.empty(), 0, estimate, sd, 0, List.of(), List.of());
  }

  /** A notebook as it was after a moto knows nothing of what came later. */
  @Test
  void thePastEndsWithItsMoto() {
    Moto[] first = {moto("a", 4), moto("b", 3, compression(14))};
    Moto[] second = {moto("c", 3)};
    Notebook notebook = days(Bench.setup(), first, second);
    Entry.Session day = (Entry.Session) notebook.entry(new EntryId("s0")).orElseThrow();
    assertThat(Past.upTo(notebook, day, 1).entry(day.id()))
        .contains(day.withMotos(List.of(first[0])));
    assertThat(Past.upTo(notebook, day, 2)).isEqualTo(days(Bench.setup(), first));
    assertThat(Past.before(notebook, day)).isEqualTo(Bench.notebook());
    Entry last = notebook.entry(new EntryId("s1")).orElseThrow();
    assertThat(Past.before(notebook, last)).isEqualTo(days(Bench.setup(), first));
  }

  private static boolean reverted(long target, Moto... motos) {
    Setting compression = Bench.sheet().setting(Bench.FORK_COMPRESSION).orElseThrow();
    Entry.Session session =
        Bench.session("s", Bench.SPRING, Bench.HOLLOW, Bench.setup(), List.of(motos));
    return Tried.andReverted(
        session,
        compression,
        session.end().reading(compression.id()).orElseThrow(),
        Reading.bothLegs(clicks(target)));
  }

  @Test
  void whatWasTriedAndGoneBackFromIsNotNew() {
    Moto there = moto("b", 3, compression(14));
    Moto back = moto("c", 3, compression(12));
    assertThat(reverted(14, moto("a", 4), there, back)).isTrue();
    assertThat(reverted(14, moto("a", 4), there)).as("not gone back from").isFalse();
    assertThat(reverted(15, moto("a", 4), there, back)).as("another target").isFalse();
    assertThat(reverted(14, moto("a", 4), there, back, moto("d", 3, rebound(9))))
        .as("something else changed since")
        .isFalse();
    assertThat(reverted(14, moto("a", 4), moto("r", 3, rebound(9)), there, back))
        .as("something else changed before, not since")
        .isTrue();
    assertThat(reverted(14, moto("a", 4), there, moto("c", 3, compression(10))))
        .as("gone on, not back")
        .isFalse();
  }
}
