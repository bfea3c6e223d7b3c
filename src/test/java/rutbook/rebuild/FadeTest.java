package rutbook.rebuild;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.hipparchus.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Feel;
import rutbook.notebook.Head;
import rutbook.notebook.Notebook;
import rutbook.notebook.Section;
import rutbook.notebook.ServiceId;
import rutbook.notebook.ServiceItem;
import rutbook.notebook.Symptom;
import rutbook.notebook.Timeline;

/** Feel against hours since the oil: found where it is there, and nothing said of too little. */
class FadeTest {
  private static final double[] OFF = {0.2, -0.3, 0.1, 0.2, -0.2, 0.3, -0.3, 0};

  private static List<Fade.Ridden> rising(int oil, double level, double perHour, int sessions) {
    List<Fade.Ridden> all = new ArrayList<>();
    for (int i = 0; i < sessions; i++) {
      double hours = 1 + 2.5 * i;
      all.add(new Fade.Ridden(hours, oil, level + perHour * hours + OFF[i % OFF.length], 2));
    }
    return all;
  }

  private static Optional<Fade> fade(List<Fade.Ridden> ridden) {
    return Fade.clearest(End.FRONT, Map.of(Symptom.HARSH, ridden));
  }

  /** The reference is the simple regression of Hipparchus 4.0.2. */
  @Test
  void onOneOilItIsTheLineOfAnotherLibrary() {
    List<Fade.Ridden> ridden = rising(0, 1, 0.06, 8);
    SimpleRegression line = new SimpleRegression();
    ridden.forEach(each -> line.addData(each.hours(), each.severity()));
    Fade fade = fade(ridden).orElseThrow();
    assertThat(fade.perTenHours()).isCloseTo(10 * line.getSlope(), within(1e-9));
    assertThat(fade.half()).isCloseTo(10 * line.getSlopeConfidenceInterval(), within(1e-8));
    assertThat(fade.outsideChance()).isEqualTo(line.getSignificance() < 0.05).isTrue();
    assertThat(List.of(fade.motos(), fade.sessions(), fade.symptoms())).containsExactly(16, 8, 1);
  }

  @Test
  void anotherOilMayHaveAnotherLevel() {
    List<Fade.Ridden> ridden = rising(0, 1, 0.06, 8);
    ridden.addAll(rising(1, 3, 0.06, 8));
    double alone = fade(rising(0, 1, 0.06, 8)).orElseThrow().perTenHours();
    assertThat(fade(ridden).orElseThrow().perTenHours()).isCloseTo(alone, within(1e-9));
  }

  @Test
  void nothingIsSaidOfFewSessionsOrFewHours() {
    assertThat(fade(rising(0, 1, 0.06, Fade.LEAST_SESSIONS - 1))).isEmpty();
    List<Fade.Ridden> close = new ArrayList<>();
    for (int i = 0; i < 20; i++) {
      close.add(new Fade.Ridden(3 + i * 0.2, 0, 1 + i % 3, 1));
    }
    assertThat(fade(close)).isEmpty();
    assertThat(fade(List.of())).isEmpty();
  }

  @Test
  void whatGetsBetterIsNoFade() {
    assertThat(fade(rising(0, 4, -0.06, 8))).isEmpty();
  }

  /** Four symptoms of pure noise: one rise in twenty notebooks may look like more than chance. */
  @Test
  void noiseIsSeldomTakenForFade() {
    int taken = 0;
    int notebooks = 400;
    Random random = new Random(2718);
    for (int i = 0; i < notebooks; i++) {
      Map<Symptom, List<Fade.Ridden>> all = new EnumMap<>(Symptom.class);
      for (Symptom symptom : List.of(Symptom.HARSH, Symptom.DIVES, Symptom.PACKS, Symptom.TUCKS)) {
        List<Fade.Ridden> ridden = new ArrayList<>();
        for (int session = 0; session < 10; session++) {
          double severity = Math.max(0, Math.min(5, 2 + random.nextGaussian()));
          ridden.add(new Fade.Ridden(1 + 2.0 * session, 0, severity, 2));
        }
        all.put(symptom, ridden);
      }
      if (Fade.clearest(End.FRONT, all).filter(Fade::outsideChance).isPresent()) {
        taken++;
      }
    }
    assertThat(taken).isBetween(1, notebooks / 20 + 10);
  }

  @Test
  void aNotebookSaysItOfTheOilAndOfNothingElse() {
    Notebook notebook = Bench.notebook();
    for (int i = 0; i < 8; i++) {
      notebook = notebook.with(session(i, 1 + 3 * i, i / 2));
    }
    ServiceBoard board =
        ServiceBoard.of(Timeline.of(notebook, Bench.BIKE), Bench.SPRING.plusDays(60));
    for (ServiceLine line : board.lines()) {
      ServiceItem item = line.item();
      boolean forkOil = item.id().equals(new ServiceId("fork-oil"));
      assertThat(line.fade().isPresent()).as(item.name()).isEqualTo(forkOil);
    }
    Fade fade = board.lines().get(0).fade().orElseThrow();
    assertThat(fade.symptom()).isEqualTo(Symptom.HARSH);
    assertThat(fade.outsideChance()).isTrue();
  }

  private static Entry.Session session(int number, int hours, int severity) {
    Entry.Session plain =
        Bench.session(
            "s-" + number,
            Bench.SPRING.plusDays(2L + 5L * number),
            Bench.HOLLOW,
            Bench.setup(),
            List.of(
                Bench.moto(
                    "m-" + number,
                    List.of(),
                    List.of(Feel.of(End.FRONT, Section.BRAKING_BUMPS, Symptom.HARSH, severity)))));
    Head head =
        Head.of(new EntryId("s-" + number), Bench.BIKE, plain.day(), 0)
            .withMeter(Optional.of(Bench.hours(String.valueOf(hours))));
    return plain.with(head);
  }

  /** Six sessions over five hours are the least that says something. */
  @Test
  void theLeastThatSaysSomething() {
    assertThat(fade(rising(0, 1, 0.06, Fade.LEAST_SESSIONS))).isPresent();
    List<Fade.Ridden> five = new ArrayList<>();
    List<Fade.Ridden> less = new ArrayList<>();
    for (int i = 0; i < Fade.LEAST_SESSIONS; i++) {
      five.add(new Fade.Ridden(1 + i, 0, 1 + 0.5 * i + OFF[i], 1));
      less.add(new Fade.Ridden(1 + 0.99 * i, 0, 1 + 0.5 * i + OFF[i], 1));
    }
    assertThat(fade(five)).isPresent();
    assertThat(fade(less)).isEmpty();
  }

  /** Two sessions an oil: each oil's level takes one of them, the other says how it went on. */
  @Test
  void twoSessionsOfAnOilSaySomethingAndOneSaysNothing() {
    assertThat(fade(twoEach(3))).isPresent();
    List<Fade.Ridden> four = twoEach(4);
    assertThat(fade(four)).isPresent();
    List<Fade.Ridden> singles = new ArrayList<>(twoEach(2));
    for (int oil = 2; oil < 8; oil++) {
      singles.add(new Fade.Ridden(3, oil, 2, 1));
    }
    assertThat(fade(singles)).as("an oil of one session says nothing").isEmpty();
  }

  private static List<Fade.Ridden> twoEach(int oils) {
    List<Fade.Ridden> all = new ArrayList<>();
    for (int oil = 0; oil < oils; oil++) {
      all.add(new Fade.Ridden(1, oil, 1 + OFF[oil], 1));
      all.add(new Fade.Ridden(9, oil, 3 + OFF[oil + 1], 1));
    }
    return all;
  }

  /** A new oil has a level of its own, and the hours begin again. */
  @Test
  void afterANewOilTheLevelMayBeAnother() {
    Notebook notebook = Bench.notebook();
    for (int i = 0; i < 6; i++) {
      notebook = notebook.with(session(i, 1 + 3 * i, i / 2));
    }
    notebook =
        notebook.with(
            new Entry.Serviced(
                Head.of(new EntryId("oil"), Bench.BIKE, Bench.SPRING.plusDays(30), 0),
                List.of(new ServiceId("fork-oil")),
                ""));
    for (int i = 6; i < 12; i++) {
      notebook = notebook.with(session(i, 1 + 3 * i, 2 + (i - 6) / 2));
    }
    ServiceBoard board =
        ServiceBoard.of(Timeline.of(notebook, Bench.BIKE), Bench.SPRING.plusDays(90));
    Fade fade = board.lines().get(0).fade().orElseThrow();
    // 0 0 1 1 2 2 every three hours on either oil: sums of products 24, of squares 157.5, an oil
    assertThat(fade.perTenHours()).isCloseTo(10 * 24.0 / 157.5, within(1e-9));
    assertThat(fade.sessions()).isEqualTo(12);
  }

  /** The oil of the shock is judged by the rear. */
  @Test
  void theShocksOilIsJudgedByTheRear() {
    Notebook notebook = Bench.notebook();
    for (int i = 0; i < 8; i++) {
      Entry.Session front = session(i, 1 + 3 * i, i / 2);
      Feel kicks = Feel.of(End.REAR, Section.SQUARE_EDGES, Symptom.KICKS, i / 2);
      notebook =
          notebook.with(front.withMotos(List.of(Bench.moto("r-" + i, List.of(), List.of(kicks)))));
    }
    ServiceBoard board =
        ServiceBoard.of(Timeline.of(notebook, Bench.BIKE), Bench.SPRING.plusDays(60));
    assertThat(board.lines().get(0).fade()).isEmpty();
    Fade fade = board.lines().get(1).fade().orElseThrow();
    assertThat(fade.end()).isEqualTo(End.REAR);
    assertThat(fade.symptom()).isEqualTo(Symptom.KICKS);
  }
}
