package rutbook.words;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rutbook.notebook.Carrier;
import rutbook.notebook.Fault;
import rutbook.notebook.NotebookException;
import rutbook.units.Amount;
import rutbook.units.AmountException;
import rutbook.units.Dimension;

/** Faults of values as sentences: what is wrong, where, and what would be right. */
public final class FaultWords {
  private static final String AREA = "Faults";

  /** Letters of the longest name that a notebook takes. */
  private static final int LONGEST_QUOTE = 120;

  private final Phrases phrases;

  public FaultWords(Phrases phrases) {
    this.phrases = phrases;
  }

  /** The sentence with its place: "entries/e12/start: Fork oil cannot be …". */
  public String sentence(NotebookException thrown) {
    String what = what(thrown);
    return thrown.where().isEmpty()
        ? what
        : phrases.say(AREA, "at", phrases.safe(thrown.where()), what);
  }

  /** The sentence without its place, for under the field where it was typed. */
  public String what(NotebookException thrown) {
    List<Object> facts = thrown.facts();
    Object[] worded = new Object[facts.size()];
    for (int i = 0; i < worded.length; i++) {
      worded[i] = fact(thrown.fault(), i, facts.get(i));
    }
    return phrases.sentence(phrases.say(AREA, key(thrown), worded));
  }

  /** Some faults need another sentence for some facts: what must be more than nothing, legs. */
  private static String key(NotebookException thrown) {
    String key = "Fault." + thrown.fault().name();
    if (thrown.facts().contains("> 0")) {
      return key + ".positive";
    }
    if (thrown.fault() == Fault.WRONG_LEGS) {
      return key + (thrown.facts().contains(Carrier.PAIR) ? ".pair" : ".one");
    }
    return key;
  }

  public String sentence(AmountException thrown) {
    return phrases.say(AREA, "Amount." + thrown.fault().name(), thrown.written());
  }

  /** A limit is said in the rider's unit, rounded inwards, and as the sheet has it. */
  private Object fact(Fault fault, int place, Object fact) {
    if (fact instanceof Amount amount) {
      return limitOrValue(fault, place, amount);
    }
    if (fact instanceof Double number) {
      return phrases.amounts().number(number, 3);
    }
    if (fact instanceof String text) {
      return dimension(text).map(phrases::name).orElseGet(() -> thing(text));
    }
    return fact;
  }

  private String limitOrValue(Fault fault, int place, Amount amount) {
    if (place == 2 && fault == Fault.BELOW_LEAST) {
      return phrases.amounts().leastBoth(amount);
    }
    if (place == 2 && fault == Fault.ABOVE_MOST) {
      return phrases.amounts().mostBoth(amount);
    }
    return phrases.amounts().both(amount);
  }

  private static Optional<Dimension> dimension(String text) {
    return List.of(Dimension.values()).stream()
        .filter(dimension -> dimension.name().equals(text))
        .findFirst();
  }

  /** The word for a field of the notebook, or the text itself when it is somebody's name for it. */
  private String thing(String text) {
    return phrases.sayIfKnown(AREA, key(text)).orElseGet(() -> phrases.safe(quoted(text)));
  }

  /** Whole where it could be a name, cut where a damaged file makes it longer than any. */
  private static String quoted(String text) {
    return text.codePointCount(0, text.length()) <= LONGEST_QUOTE
        ? text
        : text.substring(0, text.offsetByCodePoints(0, LONGEST_QUOTE)) + "…";
  }

  static String key(String field) {
    return "field." + field.toLowerCase(Locale.ROOT).replace(' ', '-');
  }
}
