package rutbook.reasoning;

import java.util.Optional;
import java.util.Set;
import rutbook.notebook.Bite;
import rutbook.notebook.End;
import rutbook.notebook.Role;
import rutbook.notebook.Symptom;
import rutbook.notebook.When;

/**
 * A rule of the trade: what one dose of a setting does to a symptom.
 *
 * @param id its name in rules.json
 * @param groups where it holds; empty for everywhere
 * @param bite the answer it needs, if any
 * @param when the answer it needs, if any
 * @param size severity points per dose towards more of the setting (more damping, more oil, more
 *     tube above the clamp, more preload), -5 to 5, not 0
 * @param disputed sources disagree: a wider prior
 * @param reason the trade's reason, a word or two
 */
public record Rule(
    String id,
    End end,
    Symptom symptom,
    Set<SectionGroup> groups,
    Optional<Bite> bite,
    Optional<When> when,
    Role role,
    double size,
    boolean disputed,
    String reason) {
  public Rule {
    groups = Set.copyOf(groups);
    if (!(Math.abs(size) <= 5) || size == 0) {
      throw new IllegalArgumentException("size of rule " + id + " is " + size);
    }
    if (id.isBlank() || reason.isBlank()) {
      throw new IllegalArgumentException("rule '" + id + "' has no name or no reason");
    }
  }

  public boolean concerns(Complaint complaint) {
    return complaint.end() == end
        && complaint.symptom() == symptom
        && (groups.isEmpty() || groups.contains(complaint.group()));
  }

  public boolean asks() {
    return bite.isPresent() || when.isPresent();
  }

  Rule withSize(double newSize) {
    return new Rule(id, end, symptom, groups, bite, when, role, newSize, disputed, reason);
  }
}
