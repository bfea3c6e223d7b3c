package rutbook.reasoning;

import java.util.Comparator;
import rutbook.notebook.End;
import rutbook.notebook.Feel;
import rutbook.notebook.Symptom;

/** A symptom at an end in a group of sections: the thing whose severity is reasoned about. */
public record Complaint(End end, Symptom symptom, SectionGroup group)
    implements Comparable<Complaint> {
  private static final Comparator<Complaint> ORDER =
      Comparator.comparing(Complaint::end)
          .thenComparing(Complaint::symptom)
          .thenComparing(Complaint::group);

  public static Complaint of(Feel feel) {
    return new Complaint(feel.end(), feel.symptom(), SectionGroup.of(feel.section()));
  }

  @Override
  public int compareTo(Complaint other) {
    return ORDER.compare(this, other);
  }
}
