package rutbook.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rutbook.compare.Comparison;
import rutbook.compare.SettingDifference;
import rutbook.notebook.SettingId;
import rutbook.reasoning.MoveEffect;
import rutbook.reasoning.MoveEffects;
import rutbook.reasoning.Rule;
import rutbook.reasoning.SectionGroup;

/** What a difference of a setting does: a line of the trade and a line of the rider's own motos. */
public final class EffectWords {
  private static final String AREA = "Compared";

  private final Phrases phrases;

  public EffectWords(Phrases phrases) {
    this.phrases = phrases;
  }

  /** The lines of every setting that differs, the trade's first; empty for one of one side only. */
  public Map<SettingId, List<String>> lines(MoveEffects effects, Comparison sides) {
    Map<SettingId, List<String>> lines = new LinkedHashMap<>();
    for (SettingDifference row : sides.settings().differing()) {
      lines.put(row.setting().id(), lines(effects, sides, row));
    }
    return lines;
  }

  private List<String> lines(MoveEffects effects, Comparison sides, SettingDifference row) {
    if (row.onlyBefore() || row.onlyAfter()) {
      return List.of();
    }
    return effects
        .of(
            row.setting(),
            row.from().orElseThrow().reading(),
            row.to().orElseThrow().reading(),
            sides.felt())
        .map(effect -> List.of(trade(effect), own(effect)))
        .orElseGet(() -> List.of(say("effect.unknown")));
  }

  /** What the rules expect to get less, then what to get more. */
  public String trade(MoveEffect effect) {
    List<String> said = new ArrayList<>();
    for (MoveEffect.ByRule each : told(effect)) {
      String points = phrases.amounts().number(Math.abs(each.points()), 1);
      String key = each.points() < 0 ? "effect.less" : "effect.more";
      String line = say(key, complaint(each.rule()), points);
      said.add(each.rule().disputed() ? say("effect.disputed", line) : line);
    }
    return said.isEmpty() ? say("effect.trade.none") : say("effect.trade", listed(said));
  }

  /** One rule each way: one whose complaint the motos know too, else the first. */
  private static List<MoveEffect.ByRule> told(MoveEffect effect) {
    List<MoveEffect.ByRule> told = new ArrayList<>();
    for (int way : new int[] {-1, 1}) {
      List<MoveEffect.ByRule> there =
          effect.trade().stream().filter(each -> Math.signum(each.points()) == way).toList();
      there.stream()
          .filter(each -> known(effect, each.rule()).isPresent())
          .findFirst()
          .or(() -> there.stream().findFirst())
          .ifPresent(told::add);
    }
    return told;
  }

  /** What clean comparisons say of a rule's complaint. */
  private static Optional<MoveEffect.ByMotos> known(MoveEffect effect, Rule rule) {
    return effect.own().stream()
        .filter(each -> each.clean() > 0 && rule.concerns(each.complaint()))
        .findFirst();
  }

  /** "front harsh (hits and deflects)". */
  private String complaint(Rule rule) {
    List<String> where = new ArrayList<>();
    rule.bite().ifPresent(it -> where.add(phrases.name(it)));
    rule.when().ifPresent(it -> where.add(phrases.name(it)));
    for (SectionGroup group : rule.groups().stream().sorted().toList()) {
      where.add(phrases.say("Reasoning", "group." + group.name()));
    }
    return where.isEmpty()
        ? say("effect.complaint", rule.end(), rule.symptom())
        : say("effect.complaint.where", rule.end(), rule.symptom(), listed(where));
  }

  /**
   * What the motos know of the complaints that the trade's line names, and plainly of which they
   * know nothing; where they know none of them, what they know best.
   */
  public String own(MoveEffect effect) {
    if (effect.own().isEmpty()) {
      return say("effect.own.none");
    }
    MoveEffect.ByMotos best = effect.own().get(0);
    if (best.clean() == 0) {
      return say("effect.own.mixed", complaint(best), best.mixed());
    }
    Set<String> said = new LinkedHashSet<>();
    Set<String> nothing = new LinkedHashSet<>();
    for (MoveEffect.ByRule each : told(effect)) {
      known(effect, each.rule())
          .ifPresentOrElse(known -> said.add(counted(known)), () -> nothing.add(bare(each.rule())));
    }
    if (said.isEmpty()) {
      said.addAll(bestKnown(effect, best));
    }
    if (!nothing.isEmpty()) {
      said.add(say("effect.own.nothing", listed(List.copyOf(nothing))));
    }
    return say("effect.own", String.join("; ", said));
  }

  /** The complaint that the motos know best, and the best known that went the other way. */
  private List<String> bestKnown(MoveEffect effect, MoveEffect.ByMotos best) {
    List<String> said = new ArrayList<>(List.of(counted(best)));
    effect.own().stream()
        .filter(each -> Math.signum(net(each)) == -Math.signum(net(best)) && net(each) != 0)
        .findFirst()
        .ifPresent(other -> said.add(counted(other)));
    return said;
  }

  private String bare(Rule rule) {
    return say("effect.complaint", rule.end(), rule.symptom());
  }

  private static int net(MoveEffect.ByMotos motos) {
    return motos.better() - motos.worse();
  }

  private String counted(MoveEffect.ByMotos motos) {
    return say("effect.own.counted", complaint(motos), motos.better(), motos.same(), motos.worse());
  }

  private String complaint(MoveEffect.ByMotos motos) {
    return say("effect.complaint", motos.complaint().end(), motos.complaint().symptom());
  }

  private String say(String key, Object... facts) {
    return phrases.say(AREA, key, facts);
  }

  private static String listed(List<String> said) {
    return String.join(", ", said);
  }
}
