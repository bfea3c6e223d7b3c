package rutbook.rebuild;

import java.util.List;

/** A cause that may be to blame, with the findings of the job that point to it, if any. */
public record Suspect(Cause cause, List<Finding> because) {
  public Suspect {
    because = List.copyOf(because);
  }
}
