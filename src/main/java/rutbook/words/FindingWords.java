package rutbook.words;

import java.util.Optional;
import rutbook.notebook.Feel;
import rutbook.notebook.Setting;
import rutbook.notebook.Side;
import rutbook.rebuild.ConfirmMoto;
import rutbook.rebuild.Finding;
import rutbook.rebuild.StepKind;
import rutbook.rebuild.Suspect;
import rutbook.rebuild.SymptomRise;

/** What the entries of a rebuild and its confirm moto show: doubts, the verdict, causes. */
public final class FindingWords {
  private static final String AREA = "Bench";

  private final Phrases phrases;
  private final ReadingWords readings;

  public FindingWords(Phrases phrases) {
    this.phrases = phrases;
    this.readings = new ReadingWords(phrases);
  }

  /** What an entry shows to be wrong or in doubt. */
  public String finding(Finding finding) {
    if (finding instanceof Finding.Skipped skipped) {
      return phrases.say(AREA, "found.skipped", skipped.why());
    }
    if (finding instanceof Finding.CountDiffers off) {
      return phrases.say(
          AREA, "found.count", about(off.setting(), off.leg()), off.noted(), off.counted());
    }
    if (finding instanceof Finding.OutsideLimits outside) {
      return phrases.say(
          AREA,
          "found.outside",
          about(outside.setting(), outside.leg()),
          phrases.amounts().both(outside.amount()),
          phrases.amounts().limits(outside.limits()));
    }
    if (finding instanceof Finding.TotalOff total) {
      return phrases.say(
          AREA,
          "found.total",
          about(total.setting(), total.leg()),
          total.counted(),
          total.expected());
    }
    if (finding instanceof Finding.LegsDiffer legs) {
      return phrases.say(
          AREA,
          "found.legs",
          phrases.sentence(readings.setting(legs.setting())),
          legs.left(),
          legs.right(),
          legs.mayDiffer());
    }
    if (finding instanceof Finding.OutsideWish gas && gas.kind() == StepKind.SHOP_GAS) {
      return phrases.say(
          AREA,
          "found.gas",
          phrases.amounts().both(gas.measured()),
          phrases.amounts().limits(gas.wish()));
    }
    if (finding instanceof Finding.OutsideWish out) {
      return phrases.say(
          AREA,
          "found.wish",
          phrases.say("Plan", "Kind." + out.kind().name()),
          out.measured(),
          out.wish());
    }
    if (finding instanceof Finding.OffTarget off) {
      String about =
          off.setting()
              .map(setting -> about(setting, off.leg()))
              .orElseGet(() -> phrases.say("Plan", "Kind." + off.kind().name()));
      return phrases.say(AREA, "found.off", about, off.wanted(), off.entered());
    }
    if (finding instanceof Finding.NoRoom tight) {
      return new ForkWords(phrases).warning(tight.room()).orElseThrow();
    }
    return phrases.say(AREA, "found.incomplete");
  }

  private String about(Setting setting, Optional<Side> leg) {
    String name = phrases.sentence(readings.setting(setting));
    return leg.map(side -> phrases.say(AREA, "setting-leg", name, phrases.name(side))).orElse(name);
  }

  public String verdict(ConfirmMoto.Verdict verdict) {
    return phrases.say(AREA, "Verdict." + verdict.name());
  }

  public String rise(SymptomRise rise) {
    return phrases.say(AREA, "rise", symptom(rise.symptom()), rise.before(), rise.after());
  }

  private String symptom(Feel.Key key) {
    return phrases.sentence(new CompareWords(phrases).feel(key));
  }

  /**
   * A cause with its check.
   *
   * @param place in the order of likelihood, from 1
   */
  public String suspect(int place, Suspect suspect) {
    return phrases.say(
        AREA,
        "cause",
        place,
        phrases.say(AREA, "Cause." + suspect.cause().name()),
        phrases.say(AREA, "Check." + suspect.cause().check().name()));
  }

  public String trim() {
    return phrases.say(AREA, "trim", ConfirmMoto.TRIM_CLICKS);
  }
}
