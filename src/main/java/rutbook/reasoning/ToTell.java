package rutbook.reasoning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Which change tells two explanations apart: one that is suggested anyhow, or one small test. */
final class ToTell {
  private final Outlook outlook;
  private final List<Candidate> small;
  private final Optional<Explanations> two;

  /**
   * @param small changes of a few doses each way, of which each may be a remedy or a test
   */
  ToTell(Outlook outlook, List<Candidate> small) {
    this.outlook = outlook;
    this.small = small;
    two =
        Explanations.of(
            outlook.bikes(), small.stream().map(Candidate::move).toList(), outlook::drop);
  }

  /** A candidate and what it tells. */
  private record Test(Candidate candidate, Telling telling) {}

  /**
   * The candidates as suggestions, the first that tells with what it tells. Where none does but a
   * small change would, and is expected to cost less than anybody feels, that one comes last.
   *
   * @param shown not more than a page shows
   */
  List<Suggestion> with(List<Candidate> shown, Function<Candidate, Suggestion> suggested) {
    Optional<Test> test = shown.stream().flatMap(this::test).findFirst();
    List<Candidate> all = new ArrayList<>(shown);
    if (test.isEmpty() && !shown.isEmpty()) {
      test =
          small.stream()
              .filter(each -> each.net() > -Choosing.LEAST_GAIN && !each.prospect().isRisky())
              .flatMap(this::test)
              .min(Comparator.comparingDouble(each -> each.telling().mistaken()));
      test.ifPresent(
          each -> {
            all.subList(Math.min(all.size(), Choosing.MOST_SHOWN - 1), all.size()).clear();
            all.add(each.candidate());
          });
    }
    Optional<Test> told = test;
    return all.stream().map(each -> told(suggested.apply(each), each, told)).toList();
  }

  private static Suggestion told(Suggestion suggestion, Candidate candidate, Optional<Test> told) {
    return told.filter(test -> test.candidate().equals(candidate))
        .map(test -> suggestion.telling(test.telling()))
        .orElse(suggestion);
  }

  private Stream<Test> test(Candidate candidate) {
    return two
        .flatMap(
            which ->
                which
                    .sign(candidate.move(), outlook.now().size())
                    .map(sign -> telling(which, sign)))
        .map(telling -> new Test(candidate, telling))
        .stream();
  }

  private Telling telling(Explanations which, Explanations.Sign sign) {
    Telling.Explanation first = explained(which.first());
    Telling.Explanation second = explained(which.second());
    return new Telling(
        outlook.complaint(sign.complaint()),
        sign.firstUnder() ? first : second,
        sign.firstUnder() ? second : first,
        sign.limit(),
        sign.mistaken());
  }

  private Telling.Explanation explained(Explanations.Explanation which) {
    return small.stream()
        .filter(each -> each.move().isLike(which.move()))
        .findFirst()
        .orElseThrow()
        .explains(which.chance());
  }
}
