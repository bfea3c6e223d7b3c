package rutbook.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.Feel;
import rutbook.notebook.Moto;
import rutbook.notebook.Notebook;
import rutbook.notebook.Section;
import rutbook.notebook.Symptom;
import rutbook.notebook.Timeline;

/** The order in which motos are the better ones, one reason at a time. */
class BestMotoTest {
  private static final LocalDate MAY = LocalDate.of(2026, 5, 3);

  private static Moto moto(String id, OptionalInt trust, boolean doubtful, int... severities) {
    List<Feel> feel = new ArrayList<>();
    for (int i = 0; i < severities.length; i++) {
      feel.add(Feel.of(End.FRONT, Section.values()[i], Symptom.HARSH, severities[i]));
    }
    Moto moto = Bench.moto(id, List.of(), feel);
    return moto.withReport(moto.report().withTrust(trust).marked(doubtful));
  }

  private static Moto trusted(String id, int trust, int... severities) {
    return moto(id, OptionalInt.of(trust), false, severities);
  }

  private static Optional<String> best(Entry.Session... sessions) {
    Notebook notebook = Bench.notebook();
    for (Entry.Session session : sessions) {
      notebook = notebook.with(session);
    }
    return BestMoto.at(Timeline.of(notebook, Bench.BIKE), Bench.HOLLOW)
        .map(best -> best.session().motos().get(best.moto()).id().text());
  }

  private static Entry.Session session(String id, LocalDate day, Moto... motos) {
    return Bench.session(id, day, Bench.HOLLOW, Bench.setup(), List.of(motos));
  }

  private static Optional<String> bestOf(Moto... motos) {
    return best(session("s1", MAY, motos));
  }

  @Test
  void theMostTrustWinsWhateverTheFeel() {
    assertThat(bestOf(trusted("a", 7, 0, 0), trusted("b", 8, 5, 5), trusted("c", 6))).contains("b");
  }

  @Test
  void atEqualTrustANotedFeelWinsOverSilence() {
    assertThat(bestOf(trusted("noted", 7, 4), trusted("silent", 7))).contains("noted");
  }

  @Test
  void atEqualTrustTheLeastDiscomfortWins() {
    assertThat(bestOf(trusted("a", 7, 2, 2), trusted("b", 7, 0, 3), trusted("c", 7, 4)))
        .contains("b");
  }

  @Test
  void atEqualTrustAndDiscomfortTheNewestWins() {
    assertThat(bestOf(trusted("a", 7, 2), trusted("b", 7, 2))).contains("b");
    assertThat(
            best(
                session("new", MAY.plusDays(1), trusted("n", 7, 2)),
                session("old", MAY, trusted("o", 7, 2))))
        .contains("n");
  }

  @Test
  void trustThatWasNotSaidComesLast() {
    assertThat(bestOf(moto("unsaid", OptionalInt.empty(), false, 0), trusted("one", 1, 5)))
        .contains("one");
  }

  @Test
  void aDoubtfulMotoCountsOnlyWhenThereIsNoOther() {
    Moto doubtful = moto("doubtful", OptionalInt.of(10), true, 0);
    assertThat(bestOf(doubtful, trusted("sure", 2, 5))).contains("sure");
    assertThat(bestOf(doubtful)).contains("doubtful");
  }

  @Test
  void aSessionWithoutMotosHasNoBest() {
    assertThat(bestOf()).isEmpty();
  }
}
