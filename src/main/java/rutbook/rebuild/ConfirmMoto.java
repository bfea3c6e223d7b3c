package rutbook.rebuild;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rutbook.notebook.End;
import rutbook.notebook.Feel;
import rutbook.notebook.Moto;
import rutbook.notebook.Role;
import rutbook.notebook.Setting;

/**
 * Whether the bike is back on its baseline: what the confirm moto felt like against the last motos
 * on the baseline. Ratings scatter: a stricter test fails a truly restored bike half the time, so
 * one repeat comes before any search for a cause, and its ratings are averaged with the first.
 *
 * @param symptoms those that both sides rated, the worst rise first
 * @param unrated those that the baseline's motos rated and the confirm motos did not mention
 * @param suspects causes in order of likelihood; only when it is not back
 */
public record ConfirmMoto(
    Verdict verdict, List<SymptomRise> symptoms, List<Feel.Key> unrated, List<Suspect> suspects) {
  /** Below this mean rise it is back, unless one symptom is much worse. */
  public static final double MEAN_RISE = 0.5;

  /** One symptom worse by this is not back, whatever the mean. */
  public static final double WORST_RISE = 2;

  /** Trim comes after every cause is looked at: one click at a time, two at most. */
  public static final int TRIM_CLICKS = 2;

  private static final Set<StepKind> SAG_KINDS =
      Set.of(StepKind.RACE_SAG, StepKind.FREE_SAG, StepKind.FRONT_RACE_SAG, StepKind.PLACE_PRELOAD);

  /** What the ratings say. */
  public enum Verdict {
    /** Nothing that the baseline's motos rated has been rated again. */
    NOTHING_TO_COMPARE,
    BACK,
    /** One repeat moto before anything else. */
    REPEAT,
    NOT_BACK
  }

  public ConfirmMoto {
    symptoms = List.copyOf(symptoms);
    unrated = List.copyOf(unrated);
    suspects = List.copyOf(suspects);
  }

  /** The mean rise over the symptoms that both sides rated; 0 when there are none. */
  public double meanRise() {
    return symptoms.stream().mapToDouble(SymptomRise::rise).average().orElse(0);
  }

  /** The greatest rise; 0 when nothing was rated on both sides. */
  public double worstRise() {
    return symptoms.stream().mapToDouble(SymptomRise::rise).max().orElse(0);
  }

  /**
   * Judges the confirm motos (one, or two after a repeat) against the last motos on the baseline.
   *
   * @param plan the job, whose findings move the causes they point to forward
   */
  public static ConfirmMoto judge(List<Moto> onBaseline, List<Moto> confirming, Plan plan) {
    Map<Feel.Key, Double> before = means(onBaseline);
    Map<Feel.Key, Double> after = means(confirming);
    List<SymptomRise> symptoms = new ArrayList<>();
    List<Feel.Key> unrated = new ArrayList<>();
    before.forEach(
        (symptom, severity) -> {
          if (after.containsKey(symptom)) {
            symptoms.add(new SymptomRise(symptom, severity, after.get(symptom)));
          } else {
            unrated.add(symptom);
          }
        });
    symptoms.sort(Comparator.comparingDouble(SymptomRise::rise).reversed());
    Verdict verdict = verdict(symptoms, confirming.size());
    List<Suspect> suspects = verdict == Verdict.NOT_BACK ? suspects(symptoms, plan) : List.of();
    return new ConfirmMoto(verdict, symptoms, unrated, suspects);
  }

  private static Map<Feel.Key, Double> means(List<Moto> motos) {
    return motos.stream()
        .flatMap(moto -> moto.report().feel().stream())
        .collect(
            Collectors.groupingBy(
                Feel::key, LinkedHashMap::new, Collectors.averagingDouble(Feel::severity)));
  }

  private static Verdict verdict(List<SymptomRise> symptoms, int motos) {
    if (symptoms.isEmpty()) {
      return Verdict.NOTHING_TO_COMPARE;
    }
    double mean = symptoms.stream().mapToDouble(SymptomRise::rise).average().orElseThrow();
    if (mean < MEAN_RISE && symptoms.get(0).rise() < WORST_RISE) {
      return Verdict.BACK;
    }
    return motos < 2 ? Verdict.REPEAT : Verdict.NOT_BACK;
  }

  /** Causes that can show where it got worse and lie in what was rebuilt; pointed-to ones first. */
  private static List<Suspect> suspects(List<SymptomRise> symptoms, Plan plan) {
    Set<End> worse =
        symptoms.stream()
            .filter(each -> each.rise() > 0)
            .map(each -> each.symptom().end())
            .collect(Collectors.toSet());
    Map<Cause, List<Finding>> because = new EnumMap<>(Cause.class);
    for (Cause cause : Cause.values()) {
      if (worse.stream().anyMatch(cause::shows) && touched(cause, plan)) {
        because.put(cause, new ArrayList<>());
      }
    }
    for (Finding finding : plan.findings()) {
      pointsTo(finding).map(because::get).ifPresent(list -> list.add(finding));
    }
    List<Suspect> suspects = new ArrayList<>();
    because.forEach((cause, findings) -> suspects.add(new Suspect(cause, findings)));
    // A stable sort: likelihood decides among those with and among those without a finding.
    suspects.sort(Comparator.comparing(each -> each.because().isEmpty()));
    return suspects;
  }

  private static boolean touched(Cause cause, Plan plan) {
    return switch (cause) {
      case AIR_IN_CARTRIDGE, LEG_MISMATCH, FILL, PINCHED_AXLE -> plan.job().fork();
      case COUNT_FROM_WRONG_END, SAG, TYRE_PRESSURE -> true;
    };
  }

  private static Optional<Cause> pointsTo(Finding finding) {
    if (finding instanceof Finding.Skipped skipped) {
      return skippedKind(skipped.kind());
    }
    if (finding instanceof Finding.LegsDiffer) {
      return Optional.of(Cause.LEG_MISMATCH);
    }
    if (finding instanceof Finding.TotalOff) {
      return Optional.of(Cause.COUNT_FROM_WRONG_END);
    }
    if (finding instanceof Finding.OutsideWish) {
      return Optional.of(Cause.SAG);
    }
    if (finding instanceof Finding.OutsideLimits outside) {
      return role(outside.setting());
    }
    if (finding instanceof Finding.OffTarget off) {
      return off.setting().isPresent() ? role(off.setting().get()) : skippedKind(off.kind());
    }
    return Optional.empty();
  }

  /** What may be wrong when a step of this kind was left out, or came out otherwise. */
  private static Optional<Cause> skippedKind(StepKind kind) {
    if (Set.of(StepKind.PUMP_CARTRIDGE, StepKind.ROD_RETURNS, StepKind.ROD_EVEN).contains(kind)) {
      return Optional.of(Cause.AIR_IN_CARTRIDGE);
    }
    if (Set.of(StepKind.FILL, StepKind.CARTRIDGE_FILL, StepKind.PLACE_FILL, StepKind.POUR)
        .contains(kind)) {
      return Optional.of(Cause.FILL);
    }
    if (Set.of(StepKind.TOTAL, StepKind.PLACE_CLICKER).contains(kind)) {
      return Optional.of(Cause.COUNT_FROM_WRONG_END);
    }
    if (Set.of(StepKind.SPIN, StepKind.COMPRESS, StepKind.PINCH_LAST).contains(kind)) {
      return Optional.of(Cause.PINCHED_AXLE);
    }
    if (SAG_KINDS.contains(kind)) {
      return Optional.of(Cause.SAG);
    }
    return kind == StepKind.PLACE_TYRE ? Optional.of(Cause.TYRE_PRESSURE) : Optional.empty();
  }

  private static Optional<Cause> role(Setting setting) {
    Role role = setting.role();
    if (role.isClicker()) {
      return Optional.of(Cause.COUNT_FROM_WRONG_END);
    }
    return switch (role) {
      case FORK_OIL, FORK_CARTRIDGE_OIL -> Optional.of(Cause.FILL);
      case FORK_PRELOAD, SHOCK_PRELOAD, FORK_AIR, FORK_SPRING, SHOCK_SPRING ->
          Optional.of(Cause.SAG);
      case TYRE_FRONT, TYRE_REAR -> Optional.of(Cause.TYRE_PRESSURE);
      case TUBE_ABOVE_CLAMP,
          AXLE_POSITION,
          OTHER,
          FORK_COMPRESSION,
          FORK_HIGH_SPEED_COMPRESSION,
          FORK_REBOUND,
          SHOCK_LOW_SPEED,
          SHOCK_HIGH_SPEED,
          SHOCK_REBOUND ->
          Optional.empty();
    };
  }
}
