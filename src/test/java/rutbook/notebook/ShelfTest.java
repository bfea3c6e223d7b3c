package rutbook.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rutbook.units.Amount;
import rutbook.units.Mass;

/** What is known besides what happened: found by its id, replaced where it stood. */
class ShelfTest {
  private static final LocalDate APRIL = LocalDate.of(2026, 4, 4);
  private static final Oil THIN = oil("thin", "Thin");
  private static final Oil THICK = oil("thick", "Thick");

  private static Oil oil(String id, String name) {
    return new Oil(new OilId(id), name, Optional.empty(), Optional.empty());
  }

  @Test
  void eachIsFoundByItsOwnId() {
    Shelf shelf = Bench.shelf().with(THIN).with(THICK);
    assertThat(shelf.oil(THICK.id())).contains(THICK);
    assertThat(shelf.oil(new OilId("none"))).isEmpty();
    assertThat(shelf.track(Bench.DUNE).map(Track::name)).contains("Test Dune");
    assertThat(shelf.rider(new RiderId("none"))).isEmpty();
    assertThat(shelf.bike(new BikeId("none"))).isEmpty();
  }

  @Test
  void whatHasTheSameIdTakesItsPlace() {
    Shelf shelf = Bench.shelf().with(THIN).with(THICK);
    Oil renamed = oil("thin", "Light");
    assertThat(shelf.with(renamed))
        .isEqualTo(
            new Shelf(shelf.riders(), shelf.bikes(), shelf.tracks(), List.of(renamed, THICK)));
    Track dune = new Track(Bench.DUNE, "Dune", Optional.empty(), Optional.empty(), "");
    assertThat(shelf.with(dune).tracks()).containsExactly(shelf.tracks().get(0), dune);
    Rider rider = new Rider(Bench.RIDER, "Renamed", List.of());
    assertThat(shelf.with(rider).riders()).containsExactly(rider);
    assertThat(shelf.with(Bench.bike().named("Renamed")).bikes())
        .containsExactly(Bench.bike().named("Renamed"));
  }

  @Test
  void aSheetOfTheSameDayTakesThePlaceOfTheOther() {
    Sheet april = Bench.sheet().with(APRIL, "spring");
    Sheet again = Bench.sheet().with(APRIL, "spring and valving");
    Bike bike = Bench.bike().with(april);
    assertThat(bike.sheets()).containsExactly(Bench.sheet(), april);
    assertThat(bike.latestSheet()).isEqualTo(april);
    assertThat(bike.with(again).sheets()).containsExactly(Bench.sheet(), again);
    assertThat(bike.withoutSheet(APRIL)).isEqualTo(Bench.bike());
    assertThat(bike.withoutSheet(Bench.SPRING).sheets()).containsExactly(april);
  }

  @Test
  void sheetsAreInOrderOfTheirDays() {
    Sheet april = Bench.sheet().with(APRIL, "spring");
    assertThat(new Bike(Bench.BIKE, "Bike", List.of(april, Bench.sheet())).sheets())
        .containsExactly(Bench.sheet(), april);
  }

  @Test
  void aSheetFindsSettingsByRoleAndTorquesByFastener() {
    Sheet sheet = Bench.sheet();
    assertThat(sheet.settings(Role.FORK_REBOUND))
        .extracting(Setting::id)
        .containsExactly(Bench.FORK_REBOUND);
    assertThat(sheet.settings(Role.FORK_AIR)).isEmpty();
    assertThat(sheet.torques(Fastener.FORK_CAP))
        .extracting(Tightening::name)
        .containsExactly("Fork cap");
    assertThat(sheet.withTorques(List.of()).torques(Fastener.FORK_CAP)).isEmpty();
  }

  /** A fill has the limits of its own chamber, not of the first there is. */
  @Test
  void aFillNamesAChamberThatThereIs() {
    List<Chamber> inner = List.of(Bench.chambers().get(0));
    assertThatThrownBy(() -> Bench.sheet().withChambers(inner))
        .hasMessageContaining("UNKNOWN_ID [chamber, outer]");
    Sheet turned =
        Bench.sheet().withChambers(List.of(Bench.chambers().get(1), Bench.chambers().get(0)));
    Setting oil = turned.setting(Bench.FORK_OIL).orElseThrow();
    assertThat(turned.limits(oil)).isEqualTo(Bench.chambers().get(1).limits());
  }

  @Test
  void aRiderWeighsWhatWasLastWrittenByThatDay() {
    Amount light = Amount.of(80, Mass.KILOGRAM);
    Amount heavy = Amount.of(84, Mass.KILOGRAM);
    Rider rider =
        new Rider(
            Bench.RIDER,
            "Rider",
            List.of(new Rider.Weight(APRIL, heavy), new Rider.Weight(Bench.SPRING, light)));
    assertThat(rider.weightOn(Bench.SPRING.minusDays(1))).isEmpty();
    assertThat(rider.weightOn(Bench.SPRING)).contains(light);
    assertThat(rider.weightOn(APRIL.minusDays(1))).contains(light);
    assertThat(rider.weightOn(APRIL)).contains(heavy);
  }

  @Test
  void theWishForAnEndIsItsOwn() {
    SagWindows sag = Bench.sheet().parts().sag();
    assertThat(sag.race(End.REAR)).isEqualTo(sag.rearRace()).isPresent();
    assertThat(sag.race(End.FRONT)).isEqualTo(sag.frontRace()).isPresent();
    assertThat(SagWindows.none().race(End.REAR)).isEmpty();
  }

  /** Turned with a screwdriver or by hand; common practice, no source. */
  @Test
  void clickersAreTheDampingAdjusters() {
    EnumSet<Role> clickers = EnumSet.noneOf(Role.class);
    for (Role role : Role.values()) {
      if (role.isClicker()) {
        clickers.add(role);
      }
    }
    assertThat(clickers)
        .isEqualTo(
            Set.of(
                Role.FORK_COMPRESSION,
                Role.FORK_HIGH_SPEED_COMPRESSION,
                Role.FORK_REBOUND,
                Role.SHOCK_LOW_SPEED,
                Role.SHOCK_HIGH_SPEED,
                Role.SHOCK_REBOUND));
  }

  @Test
  void goingTheOtherWayDoesTheOpposite() {
    for (Sense sense : Sense.values()) {
      assertThat(sense.opposite()).isNotEqualTo(sense);
      assertThat(sense.opposite().opposite()).isEqualTo(sense);
    }
    Setting compression = Bench.sheet().setting(Bench.FORK_COMPRESSION).orElseThrow();
    assertThat(compression.sense(Bench.clicks(10), Bench.clicks(12))).contains(Sense.SOFTER);
    assertThat(compression.sense(Bench.clicks(12), Bench.clicks(10))).contains(Sense.FIRMER);
    assertThat(compression.sense(Bench.clicks(12), Bench.clicks(12))).isEmpty();
    assertThat(List.of(Sense.SOFTER, Sense.FASTER, Sense.HIGHER))
        .extracting(Sense::opposite)
        .containsExactly(Sense.FIRMER, Sense.SLOWER, Sense.LOWER);
  }

  @Test
  void ofABikeThatNobodyMeasuredNothingIsKnown() {
    Optional<Amount> none = Optional.empty();
    assertThat(Geometry.unknown()).isEqualTo(new Geometry(none, none, none, none, none));
    assertThat(ForkParts.of(ForkKind.OPEN_BATH))
        .isEqualTo(
            new ForkParts(ForkKind.OPEN_BATH, none, none, none, none, none, Optional.empty(), ""));
    assertThat(ShockParts.unknown())
        .isEqualTo(
            new ShockParts(
                none, Optional.empty(), none, none, List.of(), true, "", Optional.empty()));
  }
}
