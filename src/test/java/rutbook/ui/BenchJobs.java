package rutbook.ui;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import rutbook.edit.EntryEdit;
import rutbook.edit.RebuildEdit;
import rutbook.notebook.Bench;
import rutbook.notebook.Bike;
import rutbook.notebook.BikeId;
import rutbook.notebook.End;
import rutbook.notebook.Entered;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Feel;
import rutbook.notebook.Head;
import rutbook.notebook.Moto;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookId;
import rutbook.notebook.Outcome;
import rutbook.notebook.Reading;
import rutbook.notebook.Renewed;
import rutbook.notebook.Scope;
import rutbook.notebook.Section;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.StepDone;
import rutbook.notebook.Symptom;
import rutbook.notebook.Timeline;
import rutbook.rebuild.Advisor;
import rutbook.rebuild.Ask;
import rutbook.rebuild.Plan;
import rutbook.rebuild.PlanFrom;
import rutbook.rebuild.Planner;
import rutbook.rebuild.Step;
import rutbook.rebuild.StepKind;
import rutbook.units.Amount;
import rutbook.units.Display;
import rutbook.units.Length;

/** Rebuilds under way, for tests and pictures of the bench. */
final class BenchJobs {
  static final EntryId JOB = new EntryId("job-under-way");
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

  /** Motos on the bench's bike that were all rated the same. */
  static Entry.Session ridden(String id, LocalDate day, int severity, int many) {
    List<Moto> motos = new ArrayList<>();
    for (int i = 0; i < many; i++) {
      motos.add(
          Bench.moto(
              id + i,
              List.of(),
              List.of(Feel.of(End.FRONT, Section.BRAKING_BUMPS, Symptom.HARSH, severity))));
    }
    Entry.Session plain = Bench.session(id, day, Bench.HOLLOW, Bench.setup(), motos);
    return plain.with(Head.of(new EntryId(id), Bench.BIKE, day, 0));
  }

  /** A fork job walked to its end on the bench's bike, rated 1 before and so much after. */
  static Notebook confirmed(int severity, int motos) {
    Notebook rated = Bench.notebook().with(ridden("before", Bench.SPRING.plusDays(3), 1, 2));
    Notebook walked =
        walkedTo(
            begun(rated, Bench.BIKE, Scope.FORK, Renewed.OIL),
            step -> step.kind() == StepKind.CONFIRM);
    return walked.with(ridden("after", Bench.SPRING.plusDays(4), severity, motos));
  }

  /** A notebook of the bench's bike with another sheet, on a baseline as far as that has it. */
  static Notebook of(Sheet sheet, Setup baseline) {
    Bike bike = new Bike(Bench.BIKE, "Test 250", List.of(sheet));
    Setup known =
        new Setup(
            baseline.placed().stream()
                .filter(placed -> sheet.setting(placed.setting()).isPresent())
                .toList());
    return Notebook.of(
        new NotebookId("nb-2"),
        Bench.shelf().with(bike),
        List.of(Bench.baseline(known)),
        List.of(),
        Display.METRIC);
  }
}
