package rutbook.rebuild;

import static org.assertj.core.api.Assertions.assertThat;
import static rutbook.notebook.Bench.clicks;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.Carrier;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.EventKind;
import rutbook.notebook.Head;
import rutbook.notebook.Moto;
import rutbook.notebook.MotoKind;
import rutbook.notebook.Notebook;
import rutbook.notebook.Placed;
import rutbook.notebook.Reading;
import rutbook.notebook.Setup;
import rutbook.notebook.Timeline;
import rutbook.notebook.WhyUnknown;

/** Which motos speak for a baseline, and which confirm it. */
class BaselineMotosTest {
  private static final LocalDate APRIL = LocalDate.of(2026, 4, 4);
  private static final EntryId HERE = new EntryId("here");

  private static Moto moto(String id) {
    return Bench.moto(id, List.of(), List.of());
  }

  private static Moto test(String id) {
    Moto moto = moto(id);
    return new Moto(moto.id(), MotoKind.TEST, moto.changes(), moto.report(), moto.conditions(), "");
  }

  private static Moto doubted(String id) {
    return moto(id).withReport(moto(id).report().marked(true));
  }

  private static Entry ride(int day, Setup start, Moto... motos) {
    return Bench.session("s" + day, APRIL.plusDays(day), Bench.HOLLOW, start, List.of(motos));
  }

  private static Timeline around(Entry... entries) {
    Notebook notebook =
        Bench.notebook()
            .with(
                new Entry.Event(
                    Head.of(HERE, Bench.BIKE, APRIL.plusDays(5), 0),
                    EventKind.CRASH,
                    Optional.empty(),
                    Optional.empty(),
                    ""));
    for (Entry entry : entries) {
      notebook = notebook.with(entry);
    }
    return Timeline.of(notebook, Bench.BIKE);
  }

  private static List<String> ids(List<Moto> motos) {
    return motos.stream().map(moto -> moto.id().text()).toList();
  }

  @Test
  void testRidesAndDoubtedMotosSpeakForNothing() {
    Timeline timeline =
        around(
            ride(1, Bench.setup(), moto("a"), test("b"), doubted("c"), moto("d")),
            ride(6, Bench.setup(), test("e"), moto("f"), doubted("g"), moto("h"), moto("i")));
    assertThat(ids(BaselineMotos.before(timeline, HERE, Bench.setup()))).containsExactly("a", "d");
    assertThat(ids(BaselineMotos.after(timeline, HERE)))
        .as("one, and a repeat")
        .containsExactly("f", "h");
  }

  @Test
  void motosOfTheNextDayConfirmAsLongAsNothingWasChanged() {
    Setup other = Bench.setup().with(Placed.set(Bench.FORK_REBOUND, Reading.bothLegs(clicks(5))));
    assertThat(
            ids(
                BaselineMotos.after(
                    around(ride(6, Bench.setup(), moto("a")), ride(7, Bench.setup(), moto("b"))),
                    HERE)))
        .containsExactly("a", "b");
    assertThat(
            ids(
                BaselineMotos.after(
                    around(ride(6, other, moto("a")), ride(7, Bench.setup(), moto("b"))), HERE)))
        .isEmpty();
    assertThat(BaselineMotos.after(around(), HERE)).isEmpty();
  }

  /** What the baseline does not know cannot differ from it. */
  @Test
  void aMotoAgreesInWhatTheBaselineKnows() {
    Setup partly =
        Bench.setup()
            .with(
                Placed.found(
                    Bench.FORK_REBOUND, Reading.unknown(Carrier.PAIR, WhyUnknown.NOT_NOTED)));
    Setup other = Bench.setup().with(Placed.set(Bench.FORK_REBOUND, Reading.bothLegs(clicks(5))));
    Timeline timeline = around(ride(1, other, moto("a")));
    assertThat(ids(BaselineMotos.before(timeline, HERE, partly))).containsExactly("a");
    assertThat(BaselineMotos.before(timeline, HERE, Bench.setup())).isEmpty();
  }
}
