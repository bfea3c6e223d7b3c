package rutbook.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
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
  private static final int MOST_A_WAY = 1;

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
    said.addAll(expected(effect, each -> each.points() < 0, "effect.less"));
    said.addAll(expected(effect, each -> each.points() > 0, "effect.more"));
    return said.isEmpty() ? say("effect.trade.none") : say("effect.trade", listed(said));
  }

  private List<String> expected(
      MoveEffect effect, Predicate<MoveEffect.ByRule> wanted, String key) {
    Map<String, String> said = new LinkedHashMap<>();
    for (MoveEffect.ByRule each : effect.trade()) {
      String what = complaint(each.rule());
      if (wanted.test(each) && said.size() < MOST_A_WAY && !said.containsKey(what)) {
        String points = phrases.amounts().number(Math.abs(each.points()), 1);
        String line = say(key, what, points);
        said.put(what, each.rule().disputed() ? say("effect.disputed", line) : line);
      }
    }
    return List.copyOf(said.values());
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
   * The complaint that the motos know best, and the best known that went the other way; what only
   * mixed comparisons know is said to be that.
   */
  public String own(MoveEffect effect) {
    if (effect.own().isEmpty()) {
      return say("effect.own.none");
    }
    MoveEffect.ByMotos best = effect.own().get(0);
    if (best.clean() == 0) {
      return say("effect.own.mixed", complaint(best), best.mixed());
    }
    List<String> said = new ArrayList<>(List.of(counted(best)));
    effect.own().stream()
        .filter(each -> Math.signum(net(each)) == -Math.signum(net(best)) && net(each) != 0)
        .findFirst()
        .ifPresent(other -> said.add(counted(other)));
    return say("effect.own", String.join("; ", said));
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
