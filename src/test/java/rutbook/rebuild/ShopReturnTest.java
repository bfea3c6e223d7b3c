package rutbook.rebuild;

import static org.assertj.core.api.Assertions.assertThat;
import static rutbook.notebook.Bench.clicks;
import static rutbook.notebook.Bench.mm;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.Bounds;
import rutbook.notebook.Entered;
import rutbook.notebook.Entry;
import rutbook.notebook.Parts;
import rutbook.notebook.Range;
import rutbook.notebook.Reading;
import rutbook.notebook.Renewed;
import rutbook.notebook.Scope;
import rutbook.notebook.Sheet;
import rutbook.notebook.ShockParts;
import rutbook.notebook.StepDone;
import rutbook.notebook.StepId;
import rutbook.notebook.Timeline;
import rutbook.units.Amount;
import rutbook.units.Pressure;

/**
 * What a shop set at a shock: kept as it was found, flagged beyond a limit, and gone back from.
 * From memory: a shock's reservoir holds some 10 bar; NIST SP 811 (2008) B.8: 1 psi is 6.894757
 * kPa, so that 145 psi lies below 10 bar and 146 psi above.
 */
class ShopReturnTest {
  private static final String REBOUND = "shop-found:shock-rebound";

  private static Sheet charged(boolean reservoir) {
    Parts parts = Bench.sheet().parts();
    ShockParts shock = parts.shock();
    ShockParts next =
        new ShockParts(
            shock.wheelTravel(),
            shock.motionRatio(),
            shock.springFreeLength(),
            shock.collarPitch(),
            shock.springsAtHand(),
            reservoir,
            shock.valving(),
            Optional.of(new Range(bar("10"), bar("10.5"))));
    return Bench.sheet().withParts(new Parts(parts.fork(), next, parts.geometry(), parts.sag()));
  }

  private static Amount bar(String number) {
    return Amount.of(number, Pressure.BAR);
  }

  private static PlanFrom shock(Sheet sheet, Renewed... renewed) {
    return Jobs.from(sheet, Bench.setup(), Bench.setup(), Scope.SHOCK, renewed);
  }

  private static Step step(Plan plan, String id) {
    return plan.step(new StepId(id)).orElseThrow();
  }

  @Test
  void aClickerBeyondItsStopIsKeptFlaggedAndPutRightFirst() {
    Reading found = Reading.of(clicks(40));
    Plan plan = Jobs.plan(shock(charged(true), Renewed.OIL), Jobs.counted(REBOUND, found));
    assertThat(plan.state(step(plan, REBOUND))).isEqualTo(Plan.State.DONE);
    assertThat(plan.findings(new StepId(REBOUND)))
        .hasSize(1)
        .allMatch(each -> each instanceof Finding.OutsideLimits && !each.again());
    assertThat(plan.from().now().reading(Bench.SHOCK_REBOUND)).contains(found);
    ReturnItem first = plan.back().items().get(0);
    assertThat(first.action()).isEqualTo(ReturnItem.Action.PUT_RIGHT);
    assertThat(first.what().setting().id()).isEqualTo(Bench.SHOCK_REBOUND);
    assertThat(
            Bounds.isInside(plan.sheet(), first.what().setting(), first.what().target().reading()))
        .isTrue();
  }

  @Test
  void theWayBackBeginsWhereTheShopLeftItAndEndsWhereItIsPut() {
    Plan left = Jobs.plan(shock(charged(true)), Jobs.counted(REBOUND, Reading.of(clicks(9))));
    LegMove move = left.back().of(Bench.SHOCK_REBOUND).orElseThrow().moves().get(0);
    assertThat(move.from()).contains(clicks(9));
    assertThat(move.to()).isEqualTo(clicks(12));
    StepDone placed = Jobs.counted("place:shock-rebound", Reading.of(clicks(12)));
    for (List<StepDone> order :
        List.of(
            List.of(placed, Jobs.counted(REBOUND, Reading.of(clicks(9)))),
            List.of(Jobs.counted(REBOUND, Reading.of(clicks(9))), placed))) {
      Plan put = Jobs.plan(shock(charged(true)), order.toArray(new StepDone[0]));
      assertThat(put.from().now().reading(Bench.SHOCK_REBOUND))
          .as("whichever was entered last")
          .contains(Reading.of(clicks(12)));
    }
  }

  @Test
  void whatTheShopLeftIsOnTheBikeInTheNotebook() {
    PlanFrom from = shock(Bench.sheet(), Renewed.OIL);
    Entry.RebuildJob job =
        Jobs.entry(
            from,
            List.of(
                Jobs.measured("shop-found:shock-preload", Reading.of(mm("14"))),
                new StepDone(
                    new StepId("shop-return"), Jobs.NOON, new Entered.Ticked("2.5 wt oil"))));
    Timeline timeline = Timeline.of(Bench.notebook().with(job), Bench.BIKE);
    assertThat(timeline.now().reading(Bench.PRELOAD)).contains(Reading.of(mm("14")));
  }

  @Test
  void gasOutsideTheManualIsToldAndTheShopAskedNotTheRider() {
    for (String[] row : new String[][] {{"145", "1"}, {"146", "0"}, {"152", "0"}, {"153", "1"}}) {
      Plan plan =
          Jobs.plan(
              shock(charged(true)),
              Jobs.measured("shop-gas", Reading.of(Amount.of(row[0], Pressure.PSI))));
      assertThat(plan.findings(new StepId("shop-gas")))
          .as(row[0])
          .hasSize(Integer.parseInt(row[1]))
          .noneMatch(Finding::again);
    }
  }

  @Test
  void gasIsAskedInTheUnitOfTheManual() {
    Parts parts = Bench.sheet().parts();
    Range psi = new Range(Amount.of(145, Pressure.PSI), Amount.of(150, Pressure.PSI));
    ShockParts shock = parts.shock().withGas(Optional.of(psi));
    Sheet sheet =
        Bench.sheet().withParts(new Parts(parts.fork(), shock, parts.geometry(), parts.sag()));
    assertThat(step(Jobs.plan(shock(sheet)), "shop-gas").ask().unit()).contains(Pressure.PSI);
    assertThat(step(Jobs.plan(shock(Bench.sheet())), "shop-gas").ask().unit())
        .contains(Pressure.BAR);
  }

  @Test
  void aReservoirWithoutGasIsAskedForNoneAndANewSpringIsPutNotFound() {
    assertThat(Jobs.ids(Jobs.plan(shock(charged(false)))))
        .doesNotContain("shop-gas")
        .contains("shop-found:shock-spring")
        .doesNotContain("place:shock-spring");
    assertThat(Jobs.ids(Jobs.plan(shock(charged(true), Renewed.SPRING))))
        .contains("place:shock-spring")
        .doesNotContain("shop-found:shock-spring");
  }
}
