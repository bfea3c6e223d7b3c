package rutbook.rebuild;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rutbook.notebook.Bench.clicks;
import static rutbook.notebook.Bench.ml;
import static rutbook.notebook.Bench.mm;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.Carrier;
import rutbook.notebook.Job;
import rutbook.notebook.Reading;
import rutbook.notebook.Sense;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Side;
import rutbook.notebook.WhyUnknown;
import rutbook.units.Amount;

class ReturnToBaselineTest {
  private static final Setup BASELINE = Bench.setup();

  private static ReturnToBaseline from(Setup now) {
    return ReturnToBaseline.of(Bench.sheet(), BASELINE, now, Advisor.SILENT);
  }

  private static List<String> items(ReturnToBaseline back) {
    return items(back.items());
  }

  private static List<String> items(List<ReturnItem> items) {
    return items.stream().map(item -> item.action() + " " + item.what().setting().id()).toList();
  }

  @Test
  void aBikeOnItsBaselineHasNothingToDo() {
    assertThat(from(BASELINE).items()).isEmpty();
    assertThat(from(BASELINE).allAtOnce()).isEmpty();
    assertThat(from(BASELINE).oneAtATime(ReturnOrder.TRADE)).isEmpty();
  }

  @Test
  void theDifferenceIsSaidPerSettingAndLegWithItsSense() {
    Setup now = Jobs.with(BASELINE, Bench.FORK_REBOUND, Reading.of(clicks(13), clicks(11)));
    SettingReturn rebound = from(now).of(Bench.FORK_REBOUND).orElseThrow();
    assertThat(rebound.moves())
        .extracting(LegMove::leg, LegMove::change, LegMove::sense)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple(
                Optional.of(Side.LEFT), Optional.of(clicks(-2)), Optional.of(Sense.SLOWER)),
            org.assertj.core.groups.Tuple.tuple(
                Optional.of(Side.RIGHT), Optional.of(clicks(0)), Optional.empty()));
  }

  @Test
  void foundOutsideComesFirstThenTheOrderOfTheTrade() {
    Setup now =
        Jobs.with(
            Jobs.with(
                Jobs.with(
                    Jobs.with(
                        Jobs.with(
                            Jobs.with(BASELINE, Bench.SHOCK_REBOUND, Reading.of(clicks(25))),
                            Bench.FORK_COMPRESSION,
                            Reading.bothLegs(clicks(10))),
                        Bench.TYRE_FRONT,
                        Reading.of(Jobs.bar("1.0"))),
                    Bench.TUBE,
                    Reading.of(mm("3"))),
                Bench.FORK_OIL,
                Reading.bothLegs(ml("345"))),
            Bench.LOW_SPEED,
            Reading.unknown(Carrier.SINGLE, WhyUnknown.STRIPPED));
    assertThat(items(from(now)))
        .containsExactly(
            "PUT_RIGHT shock-rebound",
            "MOVE fork-oil",
            "RE_REFERENCE shock-low-speed",
            "MOVE tyre-front",
            "MOVE tube-above-clamp",
            "MOVE fork-compression",
            "MOVE shock-low-speed");
    assertThat(from(now).allAtOnce()).containsExactly(new Stage(from(now).items()));
    List<Stage> stages = from(now).oneAtATime(ReturnOrder.TRADE);
    assertThat(items(stages.get(0).items()))
        .containsExactly(
            "PUT_RIGHT shock-rebound", "RE_REFERENCE shock-low-speed", "MOVE shock-low-speed");
    assertThat(stages.subList(1, stages.size()))
        .extracting(stage -> items(stage.items()))
        .containsExactly(
            List.of("MOVE fork-oil"),
            List.of("MOVE tyre-front"),
            List.of("MOVE tube-above-clamp"),
            List.of("MOVE fork-compression"));
  }

  @Test
  void theOrderOfAWalkCanBeChosenButNothingMayBeLost() {
    Setup now =
        Jobs.with(
            Jobs.with(BASELINE, Bench.FORK_COMPRESSION, Reading.bothLegs(clicks(10))),
            Bench.LOW_SPEED,
            Reading.of(clicks(8)));
    List<Stage> reversed =
        from(now)
            .oneAtATime(
                settings -> {
                  List<SettingReturn> order = new ArrayList<>(settings);
                  Collections.reverse(order);
                  return order;
                });
    assertThat(reversed)
        .extracting(stage -> items(stage.items()))
        .containsExactly(List.of("MOVE shock-low-speed"), List.of("MOVE fork-compression"));
    assertThatThrownBy(() -> from(now).oneAtATime(settings -> settings.subList(0, 1)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("2");
  }

  @Test
  void whatMakesUpForAShortfallIsItselfHeldInsideItsLimits() {
    Sheet sheet = Bench.sheet();
    Setup wanted = Jobs.with(BASELINE, Bench.FORK_OIL, Reading.bothLegs(ml("390")));
    Setting compression = sheet.setting(Bench.FORK_COMPRESSION).orElseThrow();
    Advisor bold =
        new Advisor() {
          @Override
          public List<Remark> onShortfall(Sheet on, Setup reached, Setting held, Reading wish) {
            return List.of(
                new Remark.Curve(-0.04, -0.006, true),
                new Remark.MakesUp(
                    compression,
                    Reading.bothLegs(clicks(12)),
                    Reading.bothLegs(clicks(-3)),
                    Remark.Basis.RULE,
                    OptionalDouble.empty(),
                    Optional.empty()),
                new Remark.MakesUp(
                    compression,
                    Reading.bothLegs(clicks(0)),
                    Reading.bothLegs(clicks(-3)),
                    Remark.Basis.RULE,
                    OptionalDouble.empty(),
                    Optional.empty()));
          }

          @Override
          public List<Remark> onRenewed(Sheet on, Setup baseline, Job job) {
            return List.of();
          }
        };
    SettingReturn oil =
        ReturnToBaseline.of(sheet, wanted, BASELINE, bold).of(Bench.FORK_OIL).orElseThrow();
    assertThat(oil.shortfalls()).extracting(Shortfall::missing).containsExactly(ml("10"), ml("10"));
    assertThat(ReturnToBaseline.of(sheet, wanted, BASELINE, bold).shortfalls())
        .isEqualTo(oil.shortfalls());
    assertThat(oil.remarks())
        .as("what stands at its limit already makes up for nothing")
        .containsExactly(
            new Remark.Curve(-0.04, -0.006, true),
            new Remark.MakesUp(
                compression,
                Reading.bothLegs(clicks(12)),
                Reading.bothLegs(clicks(0)),
                Remark.Basis.RULE,
                OptionalDouble.empty(),
                Optional.empty()));
  }

  @Test
  void aTargetOutsideItsLimitsCannotBeMade() {
    Amount beyond = ml("381");
    assertThatThrownBy(
            () ->
                new Target(
                    Reading.of(beyond),
                    Optional.of(Bench.chambers().get(1).limits()),
                    ml("2"),
                    List.of()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("381 mL")
        .hasMessageContaining("380 mL");
  }

  @Test
  void aSettingTheBaselineDoesNotKnowHasNoTargetAndIsNamed() {
    Setup partial =
        new Setup(
            BASELINE.placed().stream()
                .filter(placed -> !placed.setting().equals(Bench.TUBE))
                .toList());
    ReturnToBaseline back = ReturnToBaseline.of(Bench.sheet(), partial, BASELINE, Advisor.SILENT);
    assertThat(back.noTarget()).extracting(setting -> setting.id()).containsExactly(Bench.TUBE);
    assertThat(back.of(Bench.TUBE)).isEmpty();
    assertThat(back.reached(BASELINE)).isEqualTo(BASELINE);
  }

  @Test
  void whatWasFoundOutsideIsPutRightEvenWhereTheBaselineDoesNotKnow() {
    Setup unknown =
        Jobs.with(
            Bench.setup(),
            Bench.TUBE,
            Reading.unknown(
                rutbook.notebook.Carrier.SINGLE, rutbook.notebook.WhyUnknown.NOT_NOTED));
    Setup outside = Jobs.with(Bench.setup(), Bench.TUBE, Reading.of(Bench.mm("12")));
    ReturnToBaseline back = ReturnToBaseline.of(Bench.sheet(), unknown, outside, Advisor.SILENT);
    assertThat(back.items())
        .singleElement()
        .satisfies(
            item -> {
              assertThat(item.action()).isEqualTo(ReturnItem.Action.PUT_RIGHT);
              assertThat(item.what().target().reading()).isEqualTo(Reading.of(Bench.mm("10")));
            });
    assertThat(back.shortfalls()).isEmpty();
    assertThat(back.noTarget()).isEmpty();
  }
}
