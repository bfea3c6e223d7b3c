package rutbook.figures;

import java.util.Optional;
import rutbook.notebook.Entry;
import rutbook.notebook.Job;
import rutbook.notebook.Oil;
import rutbook.notebook.OilId;
import rutbook.notebook.Renewed;
import rutbook.notebook.Timeline;
import rutbook.physics.IndexAnswer;
import rutbook.physics.ViscosityGrade;
import rutbook.physics.ViscosityIndex;
import rutbook.units.Amount;

/**
 * An oil of the shelf by the standards, never by a "W" label.
 *
 * @param at viscosity at the temperature asked for, or when ridden
 * @param index of ASTM D2270, or why there is none
 * @param grade of ISO 3448 by its viscosity at 40 °C; empty in a gap between grades
 */
public record OilStanding(
    Oil oil, Figure<OilFigures.At> at, Figure<IndexAnswer> index, Optional<ViscosityGrade> grade) {

  /** How an oil stands; without a temperature at {@link OilFigures#RIDING}. */
  public static OilStanding of(Oil oil, Optional<Amount> temperature) {
    Figure<IndexAnswer> index =
        OilFigures.line(oil).then(line -> index(kv(oil.kv40()), kv(oil.kv100())));
    return new OilStanding(
        oil,
        OilFigures.at(oil, temperature),
        index,
        oil.kv40()
            .map(Amount::si)
            .filter(si -> si >= 1.1e-6 && si <= 1e-3)
            .flatMap(si -> ViscosityGrade.of(si * 1e6)));
  }

  private static double kv(Optional<Amount> viscosity) {
    return viscosity.orElseThrow().si() * 1e6;
  }

  /** An index from between carried rows of the standard's table is an estimate. */
  private static Figure<IndexAnswer> index(double kv40, double kv100) {
    IndexAnswer answer = ViscosityIndex.of(kv40, kv100);
    boolean estimate = answer instanceof ViscosityIndex index && index.estimate();
    return estimate
        ? new Figure.Of<>(answer, java.util.Set.of(Assumed.INDEX_BETWEEN_ROWS))
        : Figure.of(answer);
  }

  /** The oil that the last fork rebuild put in; empty when there was none or it was not noted. */
  public static Optional<OilId> inFork(Timeline timeline) {
    return timeline.entries(Entry.RebuildJob.class).stream()
        .map(Entry.RebuildJob::job)
        .filter(job -> job.fork() && job.renewed().contains(Renewed.OIL))
        .reduce((earlier, later) -> later)
        .flatMap(Job::oil);
  }
}
