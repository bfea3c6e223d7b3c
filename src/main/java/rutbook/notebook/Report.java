package rutbook.notebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What the rider came back with after a moto: laps, trust from 1 to 10, feel, travel used, and
 * whether the rider marked the moto as one to weigh less.
 */
public record Report(
    List<Lap> laps, OptionalInt trust, List<Feel> feel, TravelUsed travel, boolean doubtful) {
  public static final int MOST_LAPS = 1000;
  public static final Report EMPTY =
      new Report(List.of(), OptionalInt.empty(), List.of(), TravelUsed.NOT_NOTED, false);

  public Report {
    laps = Checks.list("laps", laps, MOST_LAPS);
    trust.ifPresent(number -> Checks.range("trust", number, 1, 10));
    feel = Checks.unique("feel", feel, Feel::key);
  }

  public Optional<Feel> feel(Feel.Key key) {
    return feel.stream().filter(each -> each.key().equals(key)).findFirst();
  }

  /** With a feel replaced where it stood, or added. */
  public Report with(Feel changed) {
    List<Feel> next = new ArrayList<>(feel);
    for (int i = 0; i < next.size(); i++) {
      if (next.get(i).key().equals(changed.key())) {
        next.set(i, changed);
        return new Report(laps, trust, next, travel, doubtful);
      }
    }
    next.add(changed);
    return new Report(laps, trust, next, travel, doubtful);
  }

  public Report without(Feel.Key key) {
    List<Feel> next = feel.stream().filter(each -> !each.key().equals(key)).toList();
    return new Report(laps, trust, next, travel, doubtful);
  }

  public Report withLaps(List<Lap> newLaps) {
    return new Report(newLaps, trust, feel, travel, doubtful);
  }

  public Report withTrust(OptionalInt newTrust) {
    return new Report(laps, newTrust, feel, travel, doubtful);
  }

  public Report withTravel(TravelUsed newTravel) {
    return new Report(laps, trust, feel, newTravel, doubtful);
  }

  public Report marked(boolean nowDoubtful) {
    return new Report(laps, trust, feel, travel, nowDoubtful);
  }
}
