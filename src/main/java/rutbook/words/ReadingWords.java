package rutbook.words;

import java.util.Optional;
import rutbook.notebook.Carrier;
import rutbook.notebook.Datum;
import rutbook.notebook.Range;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Side;
import rutbook.notebook.Value;
import rutbook.units.Amount;
import rutbook.units.Dimension;

/**
 * Settings and their readings: "Fork compression, each leg", "14 out", "left 12 out, right 14 out".
 */
public final class ReadingWords {
  private static final String AREA = "Readings";

  private final Phrases phrases;
  private final Optional<Range> limits;

  public ReadingWords(Phrases phrases) {
    this(phrases, Optional.empty());
  }

  private ReadingWords(Phrases phrases, Optional<Range> limits) {
    this.phrases = phrases;
    this.limits = limits;
  }

  /** The same for what is to be set: in no unit is it said to lie beyond limits that it keeps. */
  public ReadingWords within(Range binding) {
    return new ReadingWords(phrases, Optional.of(binding));
  }

  /** The same, where limits are known. */
  public ReadingWords within(Optional<Range> binding) {
    return binding.map(this::within).orElse(this);
  }

  private String said(Amount amount) {
    return limits
        .map(binding -> phrases.amounts().inside(amount, binding))
        .orElseGet(() -> phrases.amounts().amount(amount));
  }

  private Optional<String> saidOtherwise(Amount amount) {
    return limits.isPresent()
        ? phrases.amounts().otherInside(amount, limits.get())
        : phrases.amounts().other(amount);
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
    return phrases.say(AREA, counted(setting, amount), numbered(setting, amount));
  }

  /** The amount as it stands before the arrow of a change: what is counted as a number alone. */
  String bare(Setting setting, Amount amount) {
    return isCounted(amount) && setting.scale().datum() != Datum.ABSOLUTE
        ? phrases.amounts().numberOf(amount)
        : said(amount);
  }

  private String numbered(Setting setting, Amount amount) {
    return amount.dimension() == Dimension.CLICKS ? bare(setting, amount) : said(amount);
  }

  private static String counted(Setting setting, Amount amount) {
    Datum datum = setting.scale().datum();
    boolean said = isCounted(amount) || datum == Datum.FROM_MARK;
    return "counted." + (said ? datum : Datum.ABSOLUTE).name();
  }

  private static boolean isCounted(Amount amount) {
    return amount.dimension() == Dimension.CLICKS || amount.dimension() == Dimension.TURNS;
  }

  /** As it stands where there is little room, both legs where they differ: "L 12 R 14". */
  public String brief(Reading reading) {
    if (reading instanceof Reading.Pair pair && !bothSame(pair)) {
      return phrases.say(AREA, "legs.brief", brief(pair.left()), brief(pair.right()));
    }
    return brief(reading.values().get(0));
  }

  private String brief(Value value) {
    return value.known().map(this::brief).orElseGet(() -> phrases.say(AREA, "unknown"));
  }

  /** As it stands where there is little room: clicks and turns bare, the rest with its unit. */
  public String brief(Amount amount) {
    return isCounted(amount) ? phrases.amounts().numberOf(amount) : said(amount);
  }

  /** In the other system of units; empty for clicks, turns and what is not known. */
  public String other(Reading reading) {
    if (reading instanceof Reading.Pair pair && !bothSame(pair)) {
      String left = other(pair.left());
      String right = other(pair.right());
      if (left.isEmpty() || right.isEmpty()) {
        Side known = left.isEmpty() ? Side.RIGHT : Side.LEFT;
        String said = left + right;
        return said.isEmpty() ? "" : phrases.say(AREA, "leg", leg(known), said);
      }
      return phrases.say(AREA, "legs", left, right);
    }
    return other(reading.values().get(0));
  }

  private String other(Value value) {
    return value.known().flatMap(this::saidOtherwise).orElse("");
  }

  /** The leg, as a word. */
  public String leg(Side side) {
    return phrases.name(side);
  }
}
