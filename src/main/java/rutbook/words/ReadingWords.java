package rutbook.words;

import rutbook.notebook.Carrier;
import rutbook.notebook.Datum;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Side;
import rutbook.notebook.Value;
import rutbook.units.Amount;
import rutbook.units.Dimension;

/** Settings and their readings: "Fork compression, each leg", "14 out", "12 left, 14 right". */
public final class ReadingWords {
  private static final String AREA = "Readings";

  private final Phrases phrases;

  public ReadingWords(Phrases phrases) {
    this.phrases = phrases;
  }

  /** The name of a setting, safe to show. */
  public String setting(Setting setting) {
    return phrases.safe(setting.name());
  }

  /** The name together with the leg or legs that the setting is in. */
  public String settingWithLegs(Setting setting) {
    return setting.carrier() == Carrier.SINGLE
        ? setting(setting)
        : phrases.say(AREA, "setting." + setting.carrier().name(), setting.name());
  }

  /** The whole reading: once when both legs are the same, otherwise leg by leg. */
  public String reading(Setting setting, Reading reading) {
    if (reading instanceof Reading.Pair pair && !bothSame(pair)) {
      return phrases.say(AREA, "legs", value(setting, pair.left()), value(setting, pair.right()));
    }
    return value(setting, reading.values().get(0));
  }

  private static boolean bothSame(Reading.Pair pair) {
    return new Reading.One(pair.left()).sameAs(new Reading.One(pair.right()))
        && (pair.left().known().isPresent() || pair.left().equals(pair.right()));
  }

  /** One value with its count and unit: "14 out", "1¾ turns out", "345 mL", or why not known. */
  public String value(Setting setting, Value value) {
    return value instanceof Value.Unknown unknown
        ? phrases.name(unknown.why())
        : amount(setting, value.known().orElseThrow());
  }

  /** An amount as a reading of a setting: with the way it is counted. */
  public String amount(Setting setting, Amount amount) {
    return phrases.say(AREA, counted(setting, amount), bare(setting, amount));
  }

  /** The amount as it stands before the arrow of a change: a clicker's number alone. */
  String bare(Setting setting, Amount amount) {
    return amount.dimension() == Dimension.CLICKS && setting.scale().datum() != Datum.ABSOLUTE
        ? phrases.amounts().numberOf(amount)
        : phrases.amounts().amount(amount);
  }

  private static String counted(Setting setting, Amount amount) {
    boolean isCounted =
        amount.dimension() == Dimension.CLICKS || amount.dimension() == Dimension.TURNS;
    Datum datum = setting.scale().datum();
    return "counted." + (isCounted || datum == Datum.FROM_MARK ? datum : Datum.ABSOLUTE).name();
  }

  /** The leg, as a word. */
  public String leg(Side side) {
    return phrases.name(side);
  }
}
