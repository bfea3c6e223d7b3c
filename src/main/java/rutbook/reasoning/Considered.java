package rutbook.reasoning;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import rutbook.notebook.Role;

/**
 * The complaints that are reckoned with: those written in recent motos, then those that a change
 * could bring. A rider who writes only what bothers says by silence that the rest was small; what a
 * change costs there would go unseen otherwise.
 *
 * @param all mentioned first, each part in order
 * @param mentioned how many were
 */
record Considered(List<Complaint> all, int mentioned) {
  Considered {
    all = List.copyOf(all);
  }

  /**
   * After some rides.
   *
   * @param roles of the bike's settings
   */
  static Considered of(List<Ride> recent, RatingHabit habit, RuleBook book, List<Role> roles) {
    TreeSet<Complaint> seen = new TreeSet<>();
    recent.forEach(ride -> seen.addAll(ride.feel().keySet()));
    List<Complaint> all = new ArrayList<>(seen);
    if (!habit.thorough() && !seen.isEmpty()) {
      all.addAll(unmentioned(seen, book, roles));
    }
    return new Considered(all, seen.size());
  }

  private static TreeSet<Complaint> unmentioned(
      TreeSet<Complaint> seen, RuleBook book, List<Role> roles) {
    TreeSet<Complaint> found = new TreeSet<>();
    for (Rule rule : book.rules()) {
      boolean written =
          seen.stream()
              .anyMatch(each -> each.end() == rule.end() && each.symptom() == rule.symptom());
      if (!written && roles.contains(rule.role())) {
        found.add(new Complaint(rule.end(), rule.symptom(), SectionGroup.where(rule.symptom())));
      }
    }
    return found;
  }
}
