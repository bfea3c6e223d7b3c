package rutbook.compare;

import java.util.Optional;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.units.Amount;

/** The sag that goes with a setup, as last measured by its day. */
public record SagSeen(
    Optional<Amount> frontRace,
    Optional<Amount> frontFree,
    Optional<Amount> rearRace,
    Optional<Amount> rearFree) {

  static SagSeen measured(Optional<Entry.SagMeasured> front, Optional<Entry.SagMeasured> rear) {
    return new SagSeen(
        front.flatMap(Entry.SagMeasured::race),
        front.flatMap(Entry.SagMeasured::free),
        rear.flatMap(Entry.SagMeasured::race),
        rear.flatMap(Entry.SagMeasured::free));
  }

  /** With the sag that a baseline names, which is the rear's. */
  SagSeen withRear(Optional<Amount> race, Optional<Amount> free) {
    return new SagSeen(
        frontRace,
        frontFree,
        race.isPresent() ? race : rearRace,
        free.isPresent() ? free : rearFree);
  }

  public Optional<Amount> of(End end, SagKind kind) {
    if (end == End.WHOLE_BIKE) {
      return Optional.empty();
    }
    boolean race = kind == SagKind.RACE;
    return end == End.FRONT ? (race ? frontRace : frontFree) : (race ? rearRace : rearFree);
  }
}
