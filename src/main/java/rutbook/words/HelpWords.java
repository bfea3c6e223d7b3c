package rutbook.words;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Help for a page, written for a rider: what it is for, how it is used, what it does not know. */
public final class HelpWords {
  private static final String AREA = "Help";
  private static final int MOST_STEPS = 5;

  private final Phrases phrases;

  public HelpWords(Phrases phrases) {
    this.phrases = phrases;
  }

  /** "Log: help". */
  public String title(String page) {
    return phrases.say(AREA, "title.of", phrases.say(AREA, page + ".title"));
  }

  public String purpose(String page) {
    return phrases.say(AREA, page + ".purpose");
  }

  public String howHeading() {
    return phrases.say(AREA, "heading.how");
  }

  /** At most {@value #MOST_STEPS} steps. */
  public List<String> how(String page) {
    return IntStream.rangeClosed(1, MOST_STEPS)
        .mapToObj(step -> phrases.sayIfKnown(AREA, page + ".how." + step))
        .flatMap(Optional::stream)
        .toList();
  }

  public String limitsHeading() {
    return phrases.say(AREA, "heading.limits");
  }

  public String limits(String page) {
    return phrases.say(AREA, page + ".limits");
  }

  /** The key that leads to the sheet of all keys. */
  public String keys() {
    return phrases.say(AREA, "keys");
  }
}
