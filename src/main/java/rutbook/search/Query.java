package rutbook.search;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What is looked for: every word must be there, beginning a word of the text or not; what stands in
 * double quotes must be there as it is. A day is {@code 2026-05-02}, a month {@code 2026-05}.
 *
 * @param words folded, none empty
 */
public record Query(List<String> words) {
  /** More words than anyone types. */
  private static final int MOST_WORDS = 32;

  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|([^\\s\\h\"]+)");

  public Query {
    words = List.copyOf(words);
  }

  /** Of what was typed; nothing typed finds nothing. */
  public static Query of(String typed) {
    List<String> words = new ArrayList<>();
    Matcher matcher = WORD.matcher(typed);
    while (matcher.find() && words.size() < MOST_WORDS) {
      String word = Folded.of(matcher.group(1) == null ? matcher.group(2) : matcher.group(1));
      if (!word.isEmpty()) {
        words.add(word);
      }
    }
    return new Query(words);
  }

  /** Whether a folded text has every word. */
  boolean isIn(String folded) {
    for (String word : words) {
      if (!folded.contains(word)) {
        return false;
      }
    }
    return !words.isEmpty();
  }

  /** Whether a folded text has any of the words. */
  boolean touches(String folded) {
    return words.stream().anyMatch(folded::contains);
  }
}
