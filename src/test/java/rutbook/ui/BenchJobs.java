package rutbook.ui;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import rutbook.edit.EntryEdit;
import rutbook.edit.RebuildEdit;
import rutbook.notebook.BikeId;
import rutbook.notebook.Entered;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Head;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookId;
import rutbook.notebook.Outcome;
import rutbook.notebook.Reading;
import rutbook.notebook.Renewed;
import rutbook.notebook.Scope;
import rutbook.notebook.StepDone;
import rutbook.notebook.Timeline;
import rutbook.rebuild.Advisor;
import rutbook.rebuild.Ask;
import rutbook.rebuild.Plan;
import rutbook.rebuild.PlanFrom;
import rutbook.rebuild.Planner;
import rutbook.rebuild.Step;
import rutbook.rebuild.StepKind;
import rutbook.samples.Samples;
import rutbook.units.Amount;
import rutbook.units.Length;

/** Rebuilds under way, for tests and pictures of the bench. */
final class BenchJobs {
  static final EntryId JOB = new EntryId("job-under-way");
  private static final List<StepKind> LOOKED_AT =
      List.of(
          StepKind.COUNT,
          StepKind.DRAIN,
          StepKind.FILL,
          StepKind.PLACE_FILL,
          StepKind.TOTAL,
          StepKind.ASSEMBLE,
          StepKind.RACE_SAG,
          StepKind.CONFIRM);
  private static final Instant NOON = Instant.parse("2026-10-17T12:00:00Z");

  private BenchJobs() {}

  /** A job begun on the last day of the notebook. */
  static Notebook begun(Notebook notebook, BikeId bike, Scope scope, Renewed... renewed) {
    Timeline timeline = Timeline.of(notebook, bike);
    PlanFrom from = PlanFrom.beginning(timeline, scope, Set.of(renewed)).orElseThrow();
    Head head = Head.of(JOB, bike, timeline.lastDay().orElseThrow(), 900);
    return new EntryEdit.Add(new Entry.RebuildJob(head, from.job(), List.of(), Outcome.UNDER_WAY))
        .applyTo(notebook);
  }

  /** The kinds of step that look different at the bench, and the pages around them. */
  static List<Pictures.View> views() {
    Notebook season = Samples.season();
    Notebook begun =
        begun(season, season.bikes().get(0).id(), Scope.FORK, Renewed.OIL, Renewed.SEALS);
    List<Pictures.View> views = new ArrayList<>();
    views.add(
        new Pictures.View(
            "rebuild-empty",
            Notebook.empty(new NotebookId("empty")),
            shown -> shown.go(new Place.Rebuild())));
    views.add(new Pictures.View("next", season, shown -> shown.go(new Place.Next())));
    views.add(
        new Pictures.View(
            "next-known",
            season,
            shown -> {
              shown.go(new Place.Next());
              shown.touch("next-known");
            }));
    views.add(new Pictures.View("rebuild", season, shown -> shown.go(new Place.Rebuild())));
    views.add(
        new Pictures.View(
            "rebuild-new",
            season,
            shown -> {
              shown.go(new Place.Rebuild());
              shown.touch("rebuild-new");
            }));
    views.add(new Pictures.View("rebuild-plan", begun, shown -> shown.go(new Place.Job(JOB))));
    views.add(new Pictures.View("rebuild-paper", begun, shown -> shown.go(new Place.Paper(JOB))));
    for (StepKind kind : LOOKED_AT) {
      views.add(
          new Pictures.View(
              "bench-" + kind.name().toLowerCase(Locale.ROOT),
              walkedTo(begun, step -> step.kind() == kind),
              shown -> shown.go(new Place.Bench(JOB, Optional.empty()))));
    }
    Notebook late = walkedTo(begun, step -> step.kind() == StepKind.CONFIRM);
    views.add(new Pictures.View("rebuild-late", late, shown -> shown.go(new Place.Job(JOB))));
    views.add(new Pictures.View("rebuild-open", late, shown -> shown.go(new Place.Rebuild())));
    return views;
  }

  static Plan plan(Notebook notebook) {
    return Planner.plan(
        PlanFrom.of(notebook, (Entry.RebuildJob) notebook.entry(JOB).orElseThrow()).orElseThrow(),
        Advisor.SILENT);
  }

  /** Walked as it should be, up to the first step that is wanted. */
  static Notebook walkedTo(Notebook notebook, Predicate<Step> wanted) {
    Notebook now = notebook;
    while (true) {
      Optional<Step> next = plan(now).next();
      if (next.isEmpty() || wanted.test(next.get())) {
        return now;
      }
      now = new RebuildEdit.Enter(JOB, asItShould(next.get())).applyTo(now);
    }
  }

  static StepDone asItShould(Step step) {
    Optional<Reading> reading = reading(step);
    Entered entered =
        switch (step.ask().form()) {
          case TICK -> new Entered.Ticked();
          case COUNT -> new Entered.Counted(reading.orElseThrow());
          case MEASURE -> new Entered.Measured(reading.orElseThrow(), Optional.empty());
        };
    return new StepDone(step.id(), NOON, entered);
  }

  /** What a careful rider enters at a step; empty where it is only ticked. */
  static Optional<Reading> reading(Step step) {
    if (step.ask().form() == Ask.Form.TICK) {
      return Optional.empty();
    }
    if (step.kind() == StepKind.FRONT_RACE_SAG) {
      return Optional.of(Reading.of(Amount.of(70, Length.MILLIMETRE)));
    }
    Amount amount = Amount.of(1, step.ask().unit().orElseThrow());
    Reading any = step.ask().bothLegs() ? Reading.bothLegs(amount) : Reading.of(amount);
    if (step.kind() == StepKind.TOTAL) {
      return Optional.of(step.goal().total().map(Reading::of).orElse(any));
    }
    return Optional.of(
        step.target()
            .map(target -> target.reading())
            .or(() -> step.goal().noted().filter(Reading::isKnown))
            .orElse(any));
  }
}
