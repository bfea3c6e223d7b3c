package rutbook.notebook;

import java.util.List;
import java.util.Optional;
import rutbook.units.Dimension;

/** The sag wished for; windows are wishes, they do not bind. */
public record SagWindows(
    Optional<Range> rearRace, Optional<Range> rearFree, Optional<Range> frontRace) {
  public SagWindows {
    for (Optional<Range> window : List.of(rearRace, rearFree, frontRace)) {
      window.ifPresent(range -> Checks.dimension("sag", range.least(), Dimension.LENGTH));
    }
  }

  public static SagWindows none() {
    return new SagWindows(Optional.empty(), Optional.empty(), Optional.empty());
  }

  public Optional<Range> race(End end) {
    return end == End.REAR ? rearRace : frontRace;
  }
}
