package rutbook.words;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import rutbook.compare.Explanation;
import rutbook.notebook.End;
import rutbook.units.Amount;

/**
 * What sag and conditions explain of a comparison, each with what it takes for granted; no rule of
 * the trade and nothing of the rider's motos is said in these sentences.
 */
public final class ExplainWords {
  private static final String AREA = "Compared";

  private final Phrases phrases;
  private final FigureWords figures;

  public ExplainWords(Phrases phrases) {
    this.phrases = phrases;
    this.figures = new FigureWords(phrases);
  }

  /** The heading over the sentences. */
  public String title() {
    return say("explain");
  }

  /** One sentence for each, and last what the figures among them stand on; none for none. */
  public List<String> sentences(List<Explanation> explained) {
    List<String> said = new ArrayList<>(explained.stream().map(this::sentence).toList());
    if (explained.stream().anyMatch(ExplainWords::isReckoned)) {
      said.add(say("explain.how"));
    }
    return said;
  }

  private static boolean isReckoned(Explanation explained) {
    return explained instanceof Explanation.Steers
        || explained instanceof Explanation.OilInAir
        || explained instanceof Explanation.AirBled;
  }

  /** One of them. */
  public String sentence(Explanation explained) {
    if (explained instanceof Explanation.RidesAt it) {
      return ridesAt(it);
    } else if (explained instanceof Explanation.Steers it) {
      return steers(it);
    } else if (explained instanceof Explanation.NotBySetting it) {
      return say("explain.spring", moreOrLess(it.by()));
    } else if (explained instanceof Explanation.OilInAir it) {
      return oil(it);
    } else if (explained instanceof Explanation.AirBled it) {
      return say(
          signed("explain.air", it.share()),
          figures.altitude(size(it.higher())),
          percent(it.share()),
          say(it.higher().value().signum() > 0 ? "higher" : "lower"));
    }
    return ground(explained);
  }

  private String ridesAt(Explanation.RidesAt it) {
    if (!it.beyondTape()) {
      return phrases.sentence(say("explain.tape", it.end(), phrases.amounts().size(it.by())));
    }
    String key = it.by().value().signum() > 0 ? "explain.rides.lower" : "explain.rides.higher";
    return phrases.sentence(say(key, it.end(), phrases.amounts().size(it.by())));
  }

  private String steers(Explanation.Steers it) {
    List<String> why = new ArrayList<>();
    height(why, End.FRONT, it.frontLower());
    height(why, End.REAR, it.rearLower());
    return phrases.sentence(
        say(
            it.rake().value().signum() > 0 ? "explain.slacker" : "explain.steeper",
            String.join(", ", why),
            phrases.amounts().size(it.rake()),
            moreOrLess(it.trail())));
  }

  private void height(List<String> why, End end, Amount lower) {
    if (lower.value().signum() != 0) {
      String key = lower.value().signum() > 0 ? "explain.down" : "explain.up";
      why.add(say(key, end, phrases.amounts().size(lower)));
    }
  }

  private String oil(Explanation.OilInAir it) {
    boolean same = it.before().equals(it.after());
    boolean warmer = it.air().value().signum() > 0;
    String air = say(warmer ? "warmer" : "cooler", phrases.amounts().size(it.air()));
    return phrases.sentence(
        say(
            signed(same ? "explain.oil" : "explain.oil.other", it.share()),
            air,
            percent(it.share()),
            it.ridden(),
            it.before().name(),
            it.after().name()));
  }

  private String ground(Explanation explained) {
    if (explained instanceof Explanation.OtherGround it) {
      String rough = it.rougher().isPresent() ? rougher(it.rougher()) : "";
      return rough.isEmpty()
          ? say("explain.ground", it.before(), it.after())
          : say("explain.ground.rough", it.before(), it.after(), rough);
    }
    Explanation.Rougher it = (Explanation.Rougher) explained;
    return phrases.sentence(say("explain.rough", rougher(OptionalInt.of(it.by()))));
  }

  private String rougher(OptionalInt by) {
    int number = by.getAsInt();
    return number == 0 ? "" : say(number > 0 ? "rougher" : "smoother", Math.abs(number));
  }

  private static String signed(String key, double share) {
    return key + (share > 0 ? ".more" : ".less");
  }

  private String percent(double share) {
    return figures.part(Math.abs(share));
  }

  private String moreOrLess(Amount by) {
    String size = phrases.amounts().size(by);
    return switch (by.value().signum()) {
      case 1 -> say("more", size);
      case -1 -> say("less", size);
      default -> say("as-much");
    };
  }

  private static Amount size(Amount by) {
    BigDecimal size = by.value().abs();
    return by.withValue(size);
  }

  private String say(String key, Object... facts) {
    return phrases.say(AREA, key, facts);
  }
}
