package rutbook.rebuild;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rutbook.figures.Figure;
import rutbook.figures.ForkFigures;
import rutbook.figures.OilFigures;
import rutbook.figures.ReserveMatch;
import rutbook.figures.Riding;
import rutbook.figures.SpringInstead;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.Job;
import rutbook.notebook.Notebook;
import rutbook.notebook.Oil;
import rutbook.notebook.OilId;
import rutbook.notebook.Placed;
import rutbook.notebook.Reading;
import rutbook.notebook.Renewed;
import rutbook.notebook.Role;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Timeline;
import rutbook.physics.ForkChange;
import rutbook.reasoning.RuleBook;
import rutbook.units.Amount;

/**
 * What curves, oils and rules have to say beside a plan: what a held target lacks, what could make
 * it up, and what new oil does.
 *
 * @param riding sag and altitude that the fork's curve is reckoned with
 * @param rearRaceSag as last measured
 * @param oils on the shelf
 * @param rebuilds of the bike, oldest first: they say which oil is in the fork
 * @param rules of the trade
 */
public record BenchAdvice(
    Riding riding, Optional<Amount> rearRaceSag, List<Oil> oils, List<Job> rebuilds, RuleBook rules)
    implements Advisor {
  public BenchAdvice {
    oils = List.copyOf(oils);
    rebuilds = List.copyOf(rebuilds);
  }

  /** What a notebook knows of a bike. */
  public static BenchAdvice of(Notebook notebook, Timeline timeline, RuleBook rules) {
    return new BenchAdvice(
        Riding.of(notebook.shelf(), timeline),
        timeline.sag(End.REAR).flatMap(Entry.SagMeasured::race),
        notebook.shelf().oils(),
        timeline.entries(Entry.RebuildJob.class).stream().map(Entry.RebuildJob::job).toList(),
        rules);
  }

  @Override
  public List<Remark> onShortfall(Sheet sheet, Setup reached, Setting setting, Reading wanted) {
    List<Remark> remarks = new ArrayList<>();
    Setup asWanted = reached.with(Placed.found(setting.id(), wanted));
    if (ReserveMatch.knows(setting.role())) {
      remarks.add(curve(ForkFigures.change(sheet, asWanted, reached, riding)));
      ReserveMatch.of(sheet, asWanted, reached, setting.id(), riding).stream()
          .min(Comparator.comparingDouble(match -> Math.abs(match.part() - 1)))
          .map(match -> byCurve(sheet, match))
          .ifPresent(remarks::add);
    }
    if (setting.role() == Role.SHOCK_PRELOAD) {
      bySag(sheet, reached, wanted).ifPresent(remarks::add);
    }
    new RuleAdvice(rules.rules(), sheet, reached).instead(setting, wanted).ifPresent(remarks::add);
    return List.copyOf(remarks);
  }

  private static Remark curve(Figure<ForkChange> change) {
    if (change.found().isEmpty()) {
      return new Remark.NoCurve(change.needs());
    }
    ForkChange shares = change.found().get();
    return new Remark.Curve(
        shares.endAirForce().orElse(0), shares.reserve().orElse(0), change.estimate());
  }

  private static Remark byCurve(Sheet sheet, ReserveMatch match) {
    return new Remark.MakesUp(
        sheet.setting(match.setting()).orElseThrow(),
        match.from(),
        match.to(),
        Remark.Basis.CURVE,
        OptionalDouble.of(match.part()),
        Optional.empty());
  }

  /** The rear spring that leaves the race sag where it was with the preload that is allowed. */
  private Optional<Remark> bySag(Sheet sheet, Setup reached, Reading wanted) {
    return sheet.settings(Role.SHOCK_SPRING).stream()
        .findFirst()
        .flatMap(
            spring ->
                SpringInstead.of(sheet, reached, spring, wanted, rearRaceSag)
                    .map(
                        to ->
                            new Remark.MakesUp(
                                spring,
                                reached.reading(spring.id()).orElseThrow(),
                                Reading.of(to),
                                Remark.Basis.SAG_WORKSHEET,
                                OptionalDouble.empty(),
                                Optional.empty())));
  }

  @Override
  public List<Remark> onRenewed(Sheet sheet, Setup baseline, Job job) {
    if (!job.fork() || !job.renewed().contains(Renewed.OIL)) {
      return List.of();
    }
    return List.of(oil(job));
  }

  private Remark oil(Job job) {
    Optional<OilId> before = oilBefore(job);
    if (job.oil().isEmpty()) {
      return new Remark.NoViscosity(Remark.NoViscosity.Why.NEW_OIL_NOT_NOTED);
    }
    if (before.isEmpty()) {
      return new Remark.NoViscosity(Remark.NoViscosity.Why.OLD_OIL_NOT_NOTED);
    }
    Optional<Oil> old = onShelf(before.get());
    Optional<Oil> now = onShelf(job.oil().get());
    return old.flatMap(was -> now.flatMap(is -> viscosity(was, is)))
        .orElseGet(() -> new Remark.NoViscosity(Remark.NoViscosity.Why.VISCOSITY_NOT_ON_SHELF));
  }

  private static Optional<Remark> viscosity(Oil old, Oil now) {
    return OilFigures.ratio(old, now, Optional.empty())
        .found()
        .map(ratio -> new Remark.Viscosity(old, now, ratio.ratio(), ratio.temperature()));
  }

  private Optional<Oil> onShelf(OilId id) {
    return oils.stream().filter(oil -> oil.id().equals(id)).findFirst();
  }

  /** The oil of the last fork rebuild before this one; empty when that one did not note it. */
  private Optional<OilId> oilBefore(Job job) {
    int here = rebuilds.indexOf(job);
    return rebuilds.subList(0, here < 0 ? rebuilds.size() : here).stream()
        .filter(each -> each.fork() && each.renewed().contains(Renewed.OIL))
        .reduce((earlier, later) -> later)
        .flatMap(Job::oil);
  }
}
