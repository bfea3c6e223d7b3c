package rutbook.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.Change;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.Feel;
import rutbook.notebook.Legs;
import rutbook.notebook.Moto;
import rutbook.notebook.Notebook;
import rutbook.notebook.Placed;
import rutbook.notebook.Reading;
import rutbook.notebook.Section;
import rutbook.notebook.Sense;
import rutbook.notebook.Setup;
import rutbook.notebook.Side;
import rutbook.notebook.Symptom;
import rutbook.notebook.Timeline;

class ComparisonTest {
  private static final LocalDate MAY = LocalDate.of(2026, 5, 3);

  private static SetupComparison compared(Setup from, Setup to) {
    return SetupComparison.of(Bench.sheet(), from, Bench.sheet(), to);
  }

  private static Setup with(Setup setup, Placed placed) {
    return setup.with(placed);
  }

  private static Moto moto(String id, int trust, int severity) {
    List<Feel> feel = List.of(Feel.of(End.FRONT, Section.BRAKING_BUMPS, Symptom.HARSH, severity));
    Moto moto = Bench.moto(id, List.of(), feel);
    return moto.withReport(moto.report().withTrust(OptionalInt.of(trust)));
  }

  private static Timeline timeline(Entry... entries) {
    Notebook notebook = Bench.notebook();
    for (Entry entry : entries) {
      notebook = notebook.with(entry);
    }
    return Timeline.of(notebook, Bench.BIKE);
  }

  @Test
  void aSetupComparedWithItselfDiffersInNothing() {
    assertThat(compared(Bench.setup(), Bench.setup()).isSame()).isTrue();
    assertThat(compared(Bench.setup(), Bench.setup()).rows()).hasSize(13);
  }

  @Test
  void eachLegHasItsOwnDifferenceAndSense() {
    Reading apart = Reading.of(Bench.clicks(14), Bench.clicks(11));
    Setup to = with(Bench.setup(), Placed.set(Bench.FORK_COMPRESSION, apart));

    SettingDifference row = compared(Bench.setup(), to).differing().get(0);

    assertThat(row.setting().id()).isEqualTo(Bench.FORK_COMPRESSION);
    assertThat(row.group()).isEqualTo(Group.FORK);
    assertThat(row.legs())
        .extracting(LegDifference::leg)
        .containsExactly(Optional.of(Side.LEFT), Optional.of(Side.RIGHT));
    assertThat(row.legs())
        .extracting(LegDifference::by)
        .containsExactly(Optional.of(Bench.clicks(2)), Optional.of(Bench.clicks(-1)));
    assertThat(row.legs())
        .extracting(LegDifference::sense)
        .containsExactly(Optional.of(Sense.SOFTER), Optional.of(Sense.FIRMER));
    assertThat(row.legsMoveAlike()).isFalse();
    assertThat(row.to().orElseThrow().legsDiffer()).isTrue();
  }

  @Test
  void whatOnlyOneSideHasIsSaidSo() {
    List<Placed> fewer = new ArrayList<>(Bench.setup().placed());
    fewer.removeIf(placed -> placed.setting().equals(Bench.TUBE));

    SettingDifference row = compared(Bench.setup(), new Setup(fewer)).differing().get(0);

    assertThat(row.onlyBefore()).isTrue();
    assertThat(row.legs()).isEmpty();
  }

  @Test
  void aFoundReadingOutsideAndAnAdjusterAtItsStopAreFlagged() {
    Setup to =
        Bench.setup()
            .with(Placed.found(Bench.FORK_OIL, Reading.bothLegs(Bench.ml("390"))))
            .with(Placed.set(Bench.SHOCK_REBOUND, Reading.of(Bench.clicks(22))))
            .with(Placed.set(Bench.LOW_SPEED, Reading.of(Bench.clicks(2))));
    SetupComparison compared = compared(Bench.setup(), to);

    Standing oil = compared.row(Bench.FORK_OIL).orElseThrow().to().orElseThrow();
    assertThat(oil.outside()).isTrue();
    assertThat(oil.found()).isTrue();
    assertThat(compared.row(Bench.SHOCK_REBOUND).orElseThrow().to().orElseThrow().room())
        .isEqualTo(Room.AT_STOP);
    assertThat(compared.row(Bench.LOW_SPEED).orElseThrow().to().orElseThrow().room())
        .isEqualTo(Room.NEAR_STOP);
    assertThat(compared.row(Bench.LOW_SPEED).orElseThrow().from().orElseThrow().room())
        .isEqualTo(Room.ENOUGH);
  }

  @Test
  void fillsAreAlikeWithinWhatCanBeMeasured() {
    var oil = Bench.sheet().setting(Bench.FORK_OIL).orElseThrow();

    assertThat(Legs.differ(oil, Reading.of(Bench.ml("335"), Bench.ml("337")))).isFalse();
    assertThat(Legs.differ(oil, Reading.of(Bench.ml("335"), Bench.ml("337.5")))).isTrue();
  }

  @Test
  void theBestOfATrackHasTheMostTrustAndThenTheLeastDiscomfort() {
    Entry.Session session =
        Bench.session(
            "s1",
            MAY,
            Bench.HOLLOW,
            Bench.setup(),
            List.of(moto("m1", 7, 1), moto("m2", 8, 3), moto("m3", 8, 2), moto("m4", 6, 0)));

    assertThat(BestMoto.at(timeline(session), Bench.HOLLOW)).contains(new BestMoto(session, 2));
    assertThat(BestMoto.at(timeline(session), Bench.DUNE)).isEmpty();
  }

  @Test
  void feelStandsSideBySideAndSilenceIsNotZero() {
    List<Feel> from = List.of(Feel.of(End.REAR, Section.WHOOPS, Symptom.KICKS, 0));
    List<Feel> to = List.of(Feel.of(End.FRONT, Section.SAND, Symptom.TUCKS, 3));

    assertThat(FeelRow.of(from, to))
        .containsExactly(
            new FeelRow(from.get(0).key(), OptionalInt.of(0), OptionalInt.empty()),
            new FeelRow(to.get(0).key(), OptionalInt.empty(), OptionalInt.of(3)));
  }

  @Test
  void aDayThatStartsOtherwiseThanTheBikeWasLeftIsABreak() {
    Change softer = Change.of(Bench.FORK_COMPRESSION, Reading.bothLegs(Bench.clicks(14)));
    Entry.Session first =
        Bench.session(
            "s1",
            MAY,
            Bench.HOLLOW,
            Bench.setup(),
            List.of(Bench.moto("m1", List.of(softer), List.of())));
    Entry.Session second =
        Bench.session("s2", MAY.plusDays(7), Bench.DUNE, Bench.setup(), List.of());

    List<Break> breaks = Break.in(timeline(first, second));

    assertThat(breaks).hasSize(1);
    assertThat(breaks.get(0).session()).isEqualTo(second);
    assertThat(breaks.get(0).rows())
        .extracting(row -> row.setting().id())
        .containsExactly(Bench.FORK_COMPRESSION);
    assertThat(BikeCheck.of(timeline(first, second)))
        .contains(new Finding.BrokenChain(breaks.get(0)))
        .contains(new Finding.SagNotMeasured(End.REAR, SagKind.RACE));
  }
}
