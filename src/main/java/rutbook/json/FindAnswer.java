package rutbook.json;

import java.util.List;
import rutbook.search.Hit;
import rutbook.search.Search;

/**
 * What {@code find} answers.
 *
 * @param searched notebooks that were read
 * @param unread for each that was not, why, in a sentence
 */
public record FindAnswer(Search search, int searched, List<String> unread) {
  private static final Facts<Hit> HIT =
      Facts.of(Hit.class)
          .with("notebook", Texts.TEXT, Hit::notebook)
          .with("entry", Ids.ENTRY, Hit::entry)
          .with("day", Texts.DAY, Hit::day)
          .with("rider", Texts.TEXT, Hit::rider)
          .with("bikeName", Texts.TEXT, Hit::bike)
          .note("track", Hit::track)
          .list("written", Texts.TEXT, Hit::written);

  private static final Facts<FindAnswer> FOUND =
      Facts.of(FindAnswer.class)
          .with("found", Numbers.WHOLE, answer -> answer.search().found())
          .with("searched", Numbers.WHOLE, FindAnswer::searched)
          .list("hits", HIT, answer -> answer.search().hits())
          .list("unread", Texts.TEXT, FindAnswer::unread);

  public FindAnswer {
    unread = List.copyOf(unread);
  }

  public Reply reply() {
    return Reply.of("find", FOUND, this);
  }
}
