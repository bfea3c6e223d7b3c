package rutbook.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rutbook.notebook.Bench;
import rutbook.notebook.Carrier;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Head;
import rutbook.notebook.Notebook;
import rutbook.notebook.Placed;
import rutbook.notebook.Range;
import rutbook.notebook.Reading;
import rutbook.notebook.Role;
import rutbook.notebook.Sense;
import rutbook.notebook.ServiceId;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Setup;
import rutbook.notebook.Timeline;
import rutbook.notebook.WhyUnknown;
import rutbook.units.Amount;

class BikeCheckTest {
  private static final LocalDate MAY = LocalDate.of(2026, 5, 3);
  private static final Optional<Amount> NONE = Optional.empty();

  private static Notebook notebook(Entry... entries) {
    Notebook notebook = Bench.notebook();
    for (Entry entry : entries) {
      notebook = notebook.with(entry);
    }
    return notebook;
  }

  private static <T extends Finding> List<T> found(Class<T> kind, Notebook notebook) {
    return BikeCheck.of(Timeline.of(notebook, Bench.BIKE)).stream()
        .filter(kind::isInstance)
        .map(kind::cast)
        .toList();
  }

  private static Entry.SagMeasured sag(
      int day, End end, Optional<Amount> race, Optional<Amount> free) {
    Head head = Head.of(new EntryId("sag-" + end + day), Bench.BIKE, MAY.plusDays(day), 0);
    return new Entry.SagMeasured(head, end, race, free, Optional.empty(), NONE, NONE);
  }

  private static Optional<Amount> mm(String number) {
    return Optional.of(Bench.mm(number));
  }

  @Test
  void sagThatHasAWindowAndWasNeverMeasuredIsSaidForEachEndAndKind() {
    assertThat(found(Finding.SagNotMeasured.class, notebook()))
        .containsExactly(
            new Finding.SagNotMeasured(End.REAR, SagKind.RACE),
            new Finding.SagNotMeasured(End.REAR, SagKind.FREE),
            new Finding.SagNotMeasured(End.FRONT, SagKind.RACE));
  }

  @Test
  void theNewestMeasurementOfEachSagDecides() {
    Notebook notebook =
        notebook(
            sag(2, End.REAR, mm("112"), NONE),
            sag(1, End.REAR, mm("104"), mm("33")),
            sag(0, End.REAR, mm("90"), mm("20")),
            sag(0, End.FRONT, mm("80"), NONE));

    assertThat(found(Finding.SagOut.class, notebook))
        .containsExactly(
            new Finding.SagOut(
                End.REAR,
                SagKind.RACE,
                Bench.mm("112"),
                Bench.sheet().parts().sag().rearRace().orElseThrow(),
                MAY.plusDays(2)));
    assertThat(found(Finding.SagNotMeasured.class, notebook)).isEmpty();
  }

  @Test
  void theEdgeOfAWindowIsInsideIt() {
    Notebook notebook =
        notebook(sag(0, End.REAR, mm("108"), mm("28")), sag(0, End.FRONT, mm("65"), NONE));
    assertThat(found(Finding.SagOut.class, notebook)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"26.9, 0, 0", "27, 1, 0", "29.9, 1, 0", "30, 0, 1", "90, 0, 2"})
  void serviceIsNearlyDueInTheLastTenthAndDueAtItsInterval(String hours, int near, int due) {
    Head head =
        Head.of(new EntryId("read"), Bench.BIKE, MAY, 0).withMeter(Optional.of(Bench.hours(hours)));
    Notebook notebook = notebook(new Entry.Adjusted(head, List.of()));
    assertThat(found(Finding.ServiceNear.class, notebook)).hasSize(near);
    assertThat(found(Finding.ServiceDue.class, notebook)).hasSize(due);
  }

  @Test
  void aServiceThatIsDueSaysWhetherItWasEverDone() {
    Head done =
        Head.of(new EntryId("done"), Bench.BIKE, MAY, 0).withMeter(Optional.of(Bench.hours("10")));
    Head later =
        Head.of(new EntryId("later"), Bench.BIKE, MAY.plusDays(40), 0)
            .withMeter(Optional.of(Bench.hours("60")));
    Notebook notebook =
        notebook(
            new Entry.Serviced(done, List.of(new ServiceId("fork-oil")), ""),
            new Entry.Adjusted(later, List.of()));
    assertThat(found(Finding.ServiceDue.class, notebook))
        .extracting(
            each -> each.item().id().text(), Finding.ServiceDue::hours, each -> each.everDone())
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("fork-oil", 50.0, true),
            org.assertj.core.groups.Tuple.tuple("shock-oil", 60.0, false));
  }

  @Test
  void onlyNearlyDueIsNoProblem() {
    Head head =
        Head.of(new EntryId("read"), Bench.BIKE, MAY, 0).withMeter(Optional.of(Bench.hours("28")));
    assertThat(BikeCheck.of(Timeline.of(notebook(new Entry.Adjusted(head, List.of())), Bench.BIKE)))
        .filteredOn(finding -> !finding.isProblem())
        .hasOnlyElementsOfType(Finding.ServiceNear.class)
        .hasSize(1);
  }

  private static Reading compression(long left, long right) {
    return Reading.of(Bench.clicks(left), Bench.clicks(right));
  }

  private static Setup with(Placed placed) {
    return Bench.setup().with(placed);
  }

  private static Notebook ridden(Setup baseline, Setup start) {
    return Bench.notebook()
        .with(Bench.baseline(baseline))
        .with(Bench.session("s1", MAY, Bench.HOLLOW, start, List.of()));
  }

  @Test
  void legsSetApartOnPurposeInTheBaselineAreNotUnequal() {
    Setup apart = with(Placed.set(Bench.FORK_COMPRESSION, compression(12, 14)));
    Setup both = with(Placed.set(Bench.FORK_COMPRESSION, compression(10, 12)));
    Setup alike = with(Placed.set(Bench.FORK_COMPRESSION, compression(12, 12)));

    assertThat(found(Finding.LegsApart.class, ridden(apart, apart))).isEmpty();
    assertThat(found(Finding.LegsApart.class, ridden(apart, both))).isEmpty();
    assertThat(found(Finding.LegsApart.class, ridden(apart, alike))).hasSize(1);
    assertThat(found(Finding.LegsApart.class, ridden(alike, apart))).hasSize(1);
  }

  @Test
  void legsFoundApartInTheBaselineWereNotMeantToBe() {
    Setup found = with(Placed.found(Bench.FORK_COMPRESSION, compression(12, 14)));
    assertThat(found(Finding.LegsApart.class, ridden(found, found))).hasSize(1);
  }

  /** Beyond a limit first, then legs, what is not known, sag, service and the chain. */
  @Test
  void whatIsPutRightFirstIsSaidFirst() {
    Reading unknown = Reading.unknown(Carrier.SINGLE, WhyUnknown.NOT_NOTED);
    Setup start =
        with(Placed.found(Bench.FORK_COMPRESSION, compression(30, 31)))
            .with(Placed.found(Bench.TUBE, unknown));
    Entry.Session ride = Bench.session("s1", MAY, Bench.HOLLOW, start, List.of());
    Notebook notebook =
        Bench.notebook().with(ride.with(ride.head().withMeter(Optional.of(Bench.hours("36")))));
    assertThat(BikeCheck.of(Timeline.of(notebook, Bench.BIKE)))
        .extracting(each -> each.getClass().getSimpleName())
        .containsExactly(
            "OutsideLimits",
            "LegsApart",
            "NotKnown",
            "SagNotMeasured",
            "SagNotMeasured",
            "SagNotMeasured",
            "ServiceDue",
            "ServiceNear",
            "BrokenChain");
    assertThat(found(Finding.OutsideLimits.class, notebook))
        .containsExactly(
            new Finding.OutsideLimits(
                Bench.sheet().setting(Bench.FORK_COMPRESSION).orElseThrow(),
                compression(30, 31),
                new Range(Bench.clicks(0), Bench.clicks(22))));
    assertThat(found(Finding.NotKnown.class, notebook))
        .containsExactly(
            new Finding.NotKnown(Bench.sheet().setting(Bench.TUBE).orElseThrow(), unknown));
  }

  @Test
  void aSettingThatNothingIsNotedOfHasNoReading() {
    Setting added = Bench.clicker(new SettingId("new"), "New", Role.OTHER, 10, Sense.FIRMER);
    List<Setting> more = new ArrayList<>(Bench.settings());
    more.add(added);
    Notebook notebook =
        Bench.notebook().with(Bench.bike().with(Bench.sheet().with(MAY, "new").withSettings(more)));
    assertThat(found(Finding.NoReading.class, notebook))
        .containsExactly(new Finding.NoReading(added));
    assertThat(found(Finding.NoReading.class, notebook())).isEmpty();
    assertThat(found(Finding.NotKnown.class, notebook())).isEmpty();
  }
}
