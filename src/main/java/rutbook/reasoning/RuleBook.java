package rutbook.reasoning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rutbook.notebook.Feel;
import rutbook.notebook.RuleChange;
import rutbook.notebook.Setting;

/** The rules in force, with the version they were read from. */
public record RuleBook(String version, List<Rule> rules) {
  public RuleBook {
    rules = List.copyOf(rules);
    Set<String> ids = new HashSet<>();
    for (Rule rule : rules) {
      if (!ids.add(rule.id())) {
        throw new IllegalArgumentException("two rules are called " + rule.id());
      }
    }
  }

  public static RuleBook none() {
    return new RuleBook("none", List.of());
  }

  /**
   * With the notebook's own sizes; one of zero takes a rule out, an unknown name is passed over.
   */
  public RuleBook with(List<RuleChange> changes) {
    List<Rule> next = new ArrayList<>();
    for (Rule rule : rules) {
      double size =
          changes.stream()
              .filter(change -> change.rule().equals(rule.id()))
              .mapToDouble(change -> change.size().doubleValue())
              .reduce(rule.size(), (earlier, later) -> later);
      if (size != 0) {
        next.add(rule.withSize(size));
      }
    }
    return new RuleBook(version, next);
  }

  /** The greatest rule of a setting for a complaint, given what the rider answered last. */
  Optional<Rule> rule(Complaint complaint, Setting setting, Optional<Feel> answered) {
    return rules.stream()
        .filter(each -> each.role() == setting.role() && each.concerns(complaint))
        .filter(each -> Questions.share(each, answered) > 0)
        .max(
            Comparator.comparingDouble((Rule each) -> Math.abs(each.size()))
                .thenComparing(Rule::id));
  }
}
