package rutbook.samples;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import rutbook.notebook.Bench;
import rutbook.notebook.Bite;
import rutbook.notebook.End;
import rutbook.notebook.Feel;
import rutbook.notebook.Lap;
import rutbook.notebook.Reading;
import rutbook.notebook.Report;
import rutbook.notebook.Section;
import rutbook.notebook.SettingId;
import rutbook.notebook.Setup;
import rutbook.notebook.Symptom;
import rutbook.notebook.TrackId;
import rutbook.notebook.TravelUsed;
import rutbook.notebook.When;
import rutbook.units.Amount;

/**
 * How the invented rider's bike answers: each complaint has a base at each track and moves with a
 * few settings, plus tired oil, a roughening track and a rider who is not always right.
 */
final class RiddenSeason {
  private final RandomGenerator chance;
  private final Map<Feel.Key, Integer> lately = new LinkedHashMap<>();

  RiddenSeason(long seed) {
    chance = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
  }

  /** A complaint: where it sits, how bad it is at the first setup, and what moves it. */
  private record Complaint(
      Feel.Key key,
      double hollow,
      double dunes,
      double bank,
      Map<SettingId, Double> perStep,
      Optional<Bite> bite,
      Optional<When> when) {

    double base(TrackId track) {
      return track.equals(SampleSeason.QUARRY_HOLLOW)
          ? hollow
          : track.equals(SampleSeason.SALTMARSH) ? dunes : bank;
    }
  }

  private static Complaint complaint(
      End end,
      Section section,
      Symptom symptom,
      double hollow,
      double dunes,
      double bank,
      Map<SettingId, Double> perStep) {
    return new Complaint(
        new Feel.Key(end, section, symptom),
        hollow,
        dunes,
        bank,
        perStep,
        symptom == Symptom.HARSH ? Optional.of(Bite.DEFLECTS) : Optional.empty(),
        symptom == Symptom.KICKS ? Optional.of(When.LATER_BUMPS) : Optional.empty());
  }

  /** Points of severity per step of a setting away from the first setup. */
  private static final List<Complaint> COMPLAINTS =
      List.of(
          complaint(
              End.FRONT,
              Section.BRAKING_BUMPS,
              Symptom.HARSH,
              3.4,
              1.0,
              2.4,
              Map.of(Bench.FORK_COMPRESSION, -0.45, Bench.FORK_REBOUND, -0.1)),
          complaint(
              End.FRONT,
              Section.CORNER_ENTRY,
              Symptom.DIVES,
              0.2,
              1.8,
              0.8,
              Map.of(Bench.FORK_COMPRESSION, 0.3, Bench.FORK_OIL, -0.25)),
          complaint(
              End.FRONT,
              Section.MID_CORNER,
              Symptom.PUSHES,
              1.1,
              0.4,
              2.2,
              Map.of(Bench.TUBE, -0.4)),
          complaint(
              End.FRONT,
              Section.STRAIGHT,
              Symptom.HEADSHAKE,
              0.0,
              1.9,
              0.6,
              Map.of(Bench.TUBE, 0.35)),
          complaint(
              End.FRONT,
              Section.LANDING,
              Symptom.BOTTOMS,
              0.6,
              2.4,
              0.9,
              Map.of(Bench.FORK_OIL, -0.7, Bench.FORK_COMPRESSION, 0.2)),
          complaint(
              End.REAR,
              Section.BRAKING_BUMPS,
              Symptom.KICKS,
              2.6,
              0.8,
              2.2,
              Map.of(Bench.SHOCK_REBOUND, 0.4, Bench.HIGH_SPEED, -0.2)),
          complaint(
              End.REAR,
              Section.WHOOPS,
              Symptom.PACKS,
              -0.4,
              1.4,
              0.0,
              Map.of(Bench.SHOCK_REBOUND, -0.45)),
          complaint(
              End.REAR,
              Section.CORNER_EXIT,
              Symptom.SQUATS,
              0.6,
              0.8,
              1.4,
              Map.of(Bench.LOW_SPEED, 0.35, Bench.PRELOAD, -0.3)));

  /** What the rider comes back with. */
  Report report(TrackId track, Setup first, Setup setup, int order, double oilHours) {
    List<Feel> feels = new ArrayList<>();
    double sum = 0;
    for (Complaint complaint : COMPLAINTS) {
      double severity = severity(complaint, track, first, setup, order, oilHours);
      sum += Math.max(0, severity);
      int said =
          (int) Math.round(Math.max(0, Math.min(5, severity + 0.45 * chance.nextGaussian())));
      if (said >= 1 || lately.containsKey(complaint.key())) {
        feels.add(
            new Feel(
                complaint.key().end(),
                complaint.key().section(),
                complaint.key().symptom(),
                said,
                complaint.bite(),
                complaint.when()));
      }
      remember(complaint.key(), said);
    }
    int trust =
        (int) Math.max(2, Math.min(9, Math.round(9.2 - 0.62 * sum + 0.4 * chance.nextGaussian())));
    Amount used = Bench.mm(String.valueOf(Math.min(303, Math.round(268 + 6 * sum / 2))));
    return new Report(
        laps(track, sum, order),
        OptionalInt.of(trust),
        feels,
        new TravelUsed(Optional.of(used), Optional.empty()),
        false);
  }

  private void remember(Feel.Key key, int said) {
    if (said >= 1) {
      lately.put(key, 3);
    } else {
      lately.computeIfPresent(key, (same, left) -> left == 1 ? null : left - 1);
    }
  }

  private double severity(
      Complaint complaint, TrackId track, Setup first, Setup setup, int order, double oilHours) {
    double severity = complaint.base(track) + 0.15 * order;
    for (Map.Entry<SettingId, Double> effect : complaint.perStep().entrySet()) {
      severity += effect.getValue() * steps(effect.getKey(), first, setup);
    }
    if (complaint.key().end() == End.FRONT && oilHours > 20) {
      severity += 0.05 * (oilHours - 20);
    }
    return severity;
  }

  /** The mean of both legs, in steps from the first setup. */
  private static double steps(SettingId id, Setup first, Setup setup) {
    double step = Bench.sheet().setting(id).orElseThrow().scale().step().value().doubleValue();
    return (mean(setup.reading(id).orElseThrow()) - mean(first.reading(id).orElseThrow())) / step;
  }

  private static double mean(Reading reading) {
    return reading.amounts().stream()
        .mapToDouble(amount -> amount.value().doubleValue())
        .average()
        .orElseThrow();
  }

  private List<Lap> laps(TrackId track, double sum, int order) {
    double base =
        track.equals(SampleSeason.QUARRY_HOLLOW)
            ? 111.2
            : track.equals(SampleSeason.SALTMARSH) ? 128.6 : 96.9;
    double moto = base + 0.18 * sum + 0.25 * order + 0.35 * chance.nextGaussian();
    List<Lap> laps = new ArrayList<>();
    int count = 6 + chance.nextInt(4);
    for (int i = 0; i < count; i++) {
      double seconds = moto + (i == 0 ? 3.1 : 0) + 0.6 * chance.nextGaussian();
      boolean heldUp = i > 0 && chance.nextInt(22) == 0;
      laps.add(
          new Lap(
              Math.round((seconds + (heldUp ? 6.4 : 0)) * 10) * 100,
              heldUp ? Optional.of("held up") : Optional.empty()));
    }
    return laps;
  }
}
