package rutbook.ui.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.Feel;
import rutbook.notebook.Moto;
import rutbook.notebook.MotoId;
import rutbook.notebook.Notebook;
import rutbook.notebook.Section;
import rutbook.notebook.Symptom;
import rutbook.notebook.Timeline;

/** What stands ready for one touch after a moto. */
class FeelModelTest {
  private static final Feel KICKS = Feel.of(End.REAR, Section.BRAKING_BUMPS, Symptom.KICKS, 3);
  private static final Feel HARSH = Feel.of(End.FRONT, Section.BRAKING_BUMPS, Symptom.HARSH, 2);
  private static final Feel DIVES = Feel.of(End.FRONT, Section.CORNER_ENTRY, Symptom.DIVES, 4);

  /** The model of the last of so many motos, each with its feel, one session a day. */
  private static FeelModel last(List<List<Feel>> motos) {
    Notebook notebook = Bench.notebook();
    Entry.Session session = null;
    for (int i = 0; i < motos.size(); i++) {
      Moto moto = Bench.moto("m-" + i, List.of(), motos.get(i));
      session =
          Bench.session(
              "s-" + i,
              LocalDate.of(2026, 5, 1).plusDays(i),
              Bench.HOLLOW,
              Bench.setup(),
              List.of(moto));
      notebook = notebook.with(session);
    }
    return FeelModel.of(
            Timeline.of(notebook, Bench.BIKE), session, new MotoId("m-" + (motos.size() - 1)))
        .orElseThrow();
  }

  private static FeelModel.Standing standing(Feel last) {
    return new FeelModel.Standing(last, OptionalInt.empty());
  }

  @Test
  void theWorstStandsFirstWithItsLastSeverity() {
    FeelModel model =
        last(List.of(List.of(HARSH, KICKS), List.of(HARSH.withSeverity(1)), List.of()));
    assertThat(model.standing()).containsExactly(standing(KICKS), standing(HARSH.withSeverity(1)));
  }

  @Test
  void whatWasGoneLastTimeBothersNoMore() {
    FeelModel model =
        last(List.of(List.of(KICKS, HARSH), List.of(KICKS.withSeverity(0)), List.of()));
    assertThat(model.standing()).containsExactly(standing(HARSH));
  }

  @Test
  void onlyTheLastThreeMotosThatSaySomethingCount() {
    List<List<Feel>> motos =
        new ArrayList<>(
            List.of(List.of(DIVES), List.of(KICKS), List.of(), List.of(HARSH), List.of(HARSH)));
    motos.add(List.of());
    assertThat(last(motos).standing()).containsExactly(standing(KICKS), standing(HARSH));
  }

  @Test
  void whatIsSaidNowStandsBesideWhatWasAndTheRestIsNew() {
    FeelModel model = last(List.of(List.of(KICKS), List.of(KICKS.withSeverity(1), DIVES)));
    assertThat(model.standing()).containsExactly(new FeelModel.Standing(KICKS, OptionalInt.of(1)));
    assertThat(model.fresh()).containsExactly(DIVES);
  }

  @Test
  void theFirstMotoHasNothingStanding() {
    assertThat(last(List.of(List.of(KICKS))).standing()).isEmpty();
  }

  @Test
  void aMotoThatIsNotThereHasNoModel() {
    Notebook notebook = Bench.notebook();
    Entry.Session session =
        Bench.session("s-1", LocalDate.of(2026, 5, 1), Bench.HOLLOW, Bench.setup(), List.of());
    assertThat(
            FeelModel.of(
                Timeline.of(notebook.with(session), Bench.BIKE), session, new MotoId("none")))
        .isEmpty();
  }
}
