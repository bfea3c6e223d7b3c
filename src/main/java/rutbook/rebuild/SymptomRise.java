package rutbook.rebuild;

import rutbook.notebook.Feel;

/** A symptom before and after a rebuild: mean severities from 0 to 5. */
public record SymptomRise(Feel.Key symptom, double before, double after) {
  public double rise() {
    return after - before;
  }
}
