package rutbook.rebuild;

import static org.assertj.core.api.Assertions.assertThat;
import static rutbook.notebook.Bench.clicks;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.End;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Setup;
import rutbook.notebook.Symptom;
import rutbook.reasoning.Complaint;
import rutbook.reasoning.Ledger;
import rutbook.reasoning.LedgerRow;
import rutbook.reasoning.SectionGroup;

/**
 * Which clicker goes back first. Fills, springs and heights before clickers is common practice, no
 * source; among clickers the one that is felt most tells most.
 */
class EvidenceOrderTest {
  private static final Complaint HARSH = new Complaint(End.FRONT, Symptom.HARSH, SectionGroup.CHOP);

  private static LedgerRow row(SettingId id, Complaint complaint, double perDose) {
    Setting setting = Bench.sheet().setting(id).orElseThrow();
    return new LedgerRow(
        complaint, setting, Optional.empty(), 0, perDose, 0.1, 0.5, List.of(), List.of());
  }

  private static EvidenceOrder order(LedgerRow... rows) {
    return new EvidenceOrder(new Ledger(List.of(HARSH), Bench.settings(), List.of(rows)));
  }

  private static ReturnToBaseline back(Map<SettingId, Reading> moved) {
    Setup now = Bench.setup();
    for (Map.Entry<SettingId, Reading> each : moved.entrySet()) {
      now = Jobs.with(now, each.getKey(), each.getValue());
    }
    return ReturnToBaseline.of(Bench.sheet(), Bench.setup(), now, Advisor.SILENT);
  }

  private static List<SettingReturn> settings(ReturnToBaseline back, SettingId... ids) {
    return java.util.Arrays.stream(ids).map(id -> back.of(id).orElseThrow()).toList();
  }

  private static List<SettingId> ids(List<SettingReturn> ordered) {
    return ordered.stream().map(each -> each.setting().id()).toList();
  }

  @Test
  void theClickerWhoseWayBackIsFeltMostComesFirstHoweverFarItIs() {
    ReturnToBaseline back =
        back(
            Map.of(
                Bench.FORK_COMPRESSION, Reading.bothLegs(clicks(14)),
                Bench.FORK_REBOUND, Reading.bothLegs(clicks(17)),
                Bench.SHOCK_REBOUND, Reading.of(clicks(13))));
    List<SettingReturn> all =
        settings(back, Bench.FORK_REBOUND, Bench.SHOCK_REBOUND, Bench.FORK_COMPRESSION);
    EvidenceOrder order =
        order(
            row(Bench.FORK_COMPRESSION, HARSH, -0.4),
            row(Bench.FORK_REBOUND, HARSH, 0.1),
            row(Bench.SHOCK_REBOUND, HARSH, 0.7));
    // 2 clicks of 0.4, 1 click of 0.7, 6 clicks of 0.1
    assertThat(ids(order.order(all)))
        .containsExactly(Bench.FORK_COMPRESSION, Bench.SHOCK_REBOUND, Bench.FORK_REBOUND);
  }

  @Test
  void whatSeveralComplaintsFeelIsSummed() {
    Complaint dives = new Complaint(End.FRONT, Symptom.DIVES, SectionGroup.BRAKING);
    ReturnToBaseline back =
        back(
            Map.of(
                Bench.FORK_COMPRESSION, Reading.bothLegs(clicks(14)),
                Bench.FORK_REBOUND, Reading.bothLegs(clicks(13))));
    List<SettingReturn> all = settings(back, Bench.FORK_COMPRESSION, Bench.FORK_REBOUND);
    EvidenceOrder order =
        order(
            row(Bench.FORK_COMPRESSION, HARSH, 0.3),
            row(Bench.FORK_REBOUND, HARSH, 0.2),
            row(Bench.FORK_REBOUND, dives, -0.2));
    assertThat(ids(order.order(all))).containsExactly(Bench.FORK_REBOUND, Bench.FORK_COMPRESSION);
  }

  @Test
  void fillsAndHeightsStayInTradeOrderBeforeEveryClicker() {
    ReturnToBaseline back =
        back(
            Map.of(
                Bench.FORK_OIL, Reading.bothLegs(Bench.ml("345")),
                Bench.TUBE, Reading.of(Bench.mm("7")),
                Bench.FORK_COMPRESSION, Reading.bothLegs(clicks(14))));
    List<SettingReturn> all = settings(back, Bench.FORK_OIL, Bench.FORK_COMPRESSION, Bench.TUBE);
    EvidenceOrder order = order(row(Bench.FORK_COMPRESSION, HARSH, 5), row(Bench.TUBE, HARSH, 1));
    assertThat(ids(order.order(all)))
        .containsExactly(Bench.FORK_OIL, Bench.TUBE, Bench.FORK_COMPRESSION);
  }

  @Property(tries = 100, seed = "75")
  void everySettingIsGivenBackOnceAndClickersBySizeAlone(@ForAll long seed) {
    Random random = new Random(seed);
    ReturnToBaseline back =
        back(
            Map.of(
                Bench.FORK_OIL, Reading.bothLegs(Bench.ml("345")),
                Bench.TUBE, Reading.of(Bench.mm("7")),
                Bench.FORK_COMPRESSION, Reading.bothLegs(clicks(14)),
                Bench.FORK_REBOUND, Reading.bothLegs(clicks(13)),
                Bench.LOW_SPEED, Reading.of(clicks(12)),
                Bench.SHOCK_REBOUND, Reading.of(clicks(14))));
    List<SettingReturn> all =
        new ArrayList<>(
            settings(
                back,
                Bench.FORK_OIL,
                Bench.TUBE,
                Bench.FORK_COMPRESSION,
                Bench.FORK_REBOUND,
                Bench.LOW_SPEED,
                Bench.SHOCK_REBOUND));
    List<LedgerRow> rows = new ArrayList<>();
    for (SettingReturn each : all) {
      rows.add(row(each.setting().id(), HARSH, random.nextGaussian()));
    }
    List<SettingReturn> ordered = order(rows.toArray(LedgerRow[]::new)).order(all);
    assertThat(ordered).containsExactlyInAnyOrderElementsOf(all);
    // every clicker is two clicks off, so the order is that of the effects
    List<Double> sizes =
        ordered.stream()
            .filter(each -> each.setting().role().isClicker())
            .map(each -> -Math.abs(estimate(rows, each)))
            .toList();
    assertThat(sizes).hasSize(4).isSorted();
  }

  private static double estimate(List<LedgerRow> rows, SettingReturn item) {
    return rows.stream()
        .filter(row -> row.setting().equals(item.setting()))
        .mapToDouble(LedgerRow::estimate)
        .sum();
  }
}
