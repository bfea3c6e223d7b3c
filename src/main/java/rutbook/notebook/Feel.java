package rutbook.notebook;

import java.util.Optional;

/**
 * What the bike did, at which end, where on the lap and how badly: 0 is "looked for, not there", a
 * feel that is not mentioned is unknown.
 */
public record Feel(
    End end,
    Section section,
    Symptom symptom,
    int severity,
    Optional<Bite> bite,
    Optional<When> when) {
  public Feel {
    Checks.range("severity", severity, 0, 5);
  }

  public static Feel of(End end, Section section, Symptom symptom, int severity) {
    return new Feel(end, section, symptom, severity, Optional.empty(), Optional.empty());
  }

  /** What makes a feel of a moto unique. */
  public record Key(End end, Section section, Symptom symptom) {}

  public Key key() {
    return new Key(end, section, symptom);
  }

  public Feel withSeverity(int newSeverity) {
    return new Feel(end, section, symptom, newSeverity, bite, when);
  }
}
