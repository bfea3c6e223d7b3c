package rutbook.rebuild;

import static org.assertj.core.api.Assertions.assertThat;
import static rutbook.notebook.Bench.hours;
import static rutbook.notebook.Bench.mm;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Feel;
import rutbook.notebook.Head;
import rutbook.notebook.Moto;
import rutbook.notebook.Notebook;
import rutbook.notebook.Renewed;
import rutbook.notebook.Scope;
import rutbook.notebook.Section;
import rutbook.notebook.ServiceId;
import rutbook.notebook.Symptom;
import rutbook.notebook.Timeline;
import rutbook.units.Amount;
import rutbook.units.Mass;

/** What a shop is told of a shock. */
class ShopSheetTest {
  private static final LocalDate APRIL = LocalDate.of(2026, 4, 4);

  private static Feel rear(Symptom symptom, int severity) {
    return Feel.of(End.REAR, Section.WHOOPS, symptom, severity);
  }

  private static Entry.Session ride(int day, Moto... motos) {
    return Bench.session(
        "s-" + day, APRIL.plusDays(day), Bench.HOLLOW, Bench.setup(), List.of(motos));
  }

  private static Moto moto(String id, Feel... feel) {
    return Bench.moto(id, List.of(), List.of(feel));
  }

  private static ShopSheet sheet(Notebook notebook) {
    return ShopSheet.of(
        notebook.shelf(),
        Timeline.of(notebook, Bench.BIKE),
        Jobs.from(Scope.SHOCK, Renewed.OIL, Renewed.SEALS));
  }

  @Test
  void aBikeThatWasNeverRiddenHasNoWeightAndNoComplaints() {
    ShopSheet sheet = sheet(Bench.notebook());
    assertThat(sheet.weightInGear()).isEmpty();
    assertThat(sheet.complaints()).isEmpty();
    assertThat(sheet.hoursSinceOil()).isEqualTo(OptionalDouble.of(0));
    assertThat(sheet.raceSag()).contains(mm("104"));
    assertThat(sheet.freeSag()).contains(mm("33"));
    assertThat(sheet.wanted()).isEqualTo(Set.of(Renewed.OIL, Renewed.SEALS));
  }

  @Test
  void theBaselineIsThatOfTheRear() {
    assertThat(sheet(Bench.notebook()).baseline())
        .extracting(placed -> placed.setting())
        .containsExactly(
            Bench.SHOCK_SPRING,
            Bench.PRELOAD,
            Bench.LOW_SPEED,
            Bench.HIGH_SPEED,
            Bench.SHOCK_REBOUND,
            Bench.TYRE_REAR);
  }

  /**
   * The worst rating of each, worst first; nothing of the front, and nothing that was not there.
   */
  @Test
  void complaintsOfTheRearAreSaidOnceAtTheirWorst() {
    Notebook notebook =
        Bench.notebook()
            .with(
                ride(
                    0,
                    moto(
                        "a",
                        rear(Symptom.KICKS, 2),
                        rear(Symptom.SWAPS, 0),
                        Feel.of(End.FRONT, Section.WHOOPS, Symptom.HARSH, 5)),
                    moto("b", rear(Symptom.KICKS, 4), rear(Symptom.PACKS, 3)),
                    moto("c", rear(Symptom.KICKS, 1), rear(Symptom.BOTTOMS, 5))));
    assertThat(sheet(notebook).complaints())
        .containsExactly(rear(Symptom.BOTTOMS, 5), rear(Symptom.KICKS, 4), rear(Symptom.PACKS, 3));
    assertThat(sheet(notebook).weightInGear()).contains(Amount.of("82", Mass.KILOGRAM));
  }

  @Test
  void onlyTheLastMotosComplain() {
    Notebook notebook = Bench.notebook().with(ride(0, moto("old", rear(Symptom.SWAPS, 5))));
    for (int day = 1; day <= 3; day++) {
      notebook =
          notebook.with(ride(day, moto("a" + day, rear(Symptom.KICKS, day)), moto("b" + day)));
    }
    assertThat(ShopSheet.MOTOS).isEqualTo(6);
    assertThat(sheet(notebook).complaints()).containsExactly(rear(Symptom.KICKS, 3));
  }

  @Test
  void hoursRunFromTheLastOilOfTheShock() {
    Notebook notebook =
        Bench.notebook()
            .with(serviced("shock", 0, "10", "shock-oil"))
            .with(serviced("fork", 1, "14", "fork-oil"));
    assertThat(sheet(notebook).hoursSinceOil()).isEqualTo(OptionalDouble.of(4));
  }

  private static Entry serviced(String id, int day, String meter, String item) {
    Head head =
        Head.of(new EntryId(id), Bench.BIKE, APRIL.plusDays(day), 0)
            .withMeter(Optional.of(hours(meter)));
    return new Entry.Serviced(head, List.of(new ServiceId(item)), "");
  }
}
