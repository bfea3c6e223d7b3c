package rutbook.ui;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import rutbook.edit.EntryEdit;
import rutbook.edit.MotoEdit;
import rutbook.edit.SessionEdit;
import rutbook.json.RulesJson;
import rutbook.notebook.Answer;
import rutbook.notebook.BikeId;
import rutbook.notebook.Change;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Feel;
import rutbook.notebook.Head;
import rutbook.notebook.Moto;
import rutbook.notebook.MotoId;
import rutbook.notebook.MotoKind;
import rutbook.notebook.Notebook;
import rutbook.notebook.Proposal;
import rutbook.notebook.ProposalId;
import rutbook.notebook.Report;
import rutbook.notebook.Section;
import rutbook.notebook.Source;
import rutbook.notebook.Symptom;
import rutbook.notebook.Timeline;
import rutbook.reasoning.AfterRide;
import rutbook.reasoning.NextChange;
import rutbook.reasoning.RuleBook;
import rutbook.reasoning.Suggestion;
import rutbook.samples.Samples;

/** The sample season with its best suggestion taken into one more moto of its last day. */
final class RiddenSuggestions {
  static final BikeId BIKE = Samples.season().bikes().get(0).id();

  /** Before the end of its last day is noted. */
  static final Notebook SEASON = unchecked(Samples.season());

  static final RuleBook RULES = RulesJson.ofTheTrade();
  static final EntryId ADVICE = new EntryId("advice-tried");
  static final ProposalId PROPOSAL = new ProposalId("tried");
  static final MotoId MOTO = new MotoId("moto-tried");

  /** Noted beside what the suggestion is about, so that the moto is not an empty one. */
  private static final Feel OTHER = Feel.of(End.REAR, Section.DOWNHILL, Symptom.BOUNCY, 1);

  private RiddenSuggestions() {}

  static Entry.Session lastDay(Notebook notebook) {
    return Timeline.of(notebook, BIKE).latest(Entry.Session.class).orElseThrow();
  }

  private static Notebook unchecked(Notebook season) {
    return new SessionEdit.CheckEndOfDay(lastDay(season).id(), Optional.empty()).applyTo(season);
  }

  static LocalDate day() {
    return lastDay(SEASON).day();
  }

  static Suggestion best() {
    return NextChange.of(SEASON, BIKE, RULES).best().orElseThrow();
  }

  private static Entry.Advice advice(Suggestion best, Answer answer) {
    Proposal proposal =
        new Proposal(
            PROPOSAL,
            best.setting().id(),
            best.from(),
            best.to(),
            "",
            OptionalDouble.of(best.chance()),
            answer);
    return new Entry.Advice(
        Head.of(ADVICE, BIKE, day(), 500), new Source.Own(RULES.version()), List.of(proposal), "");
  }

  /** Taken, and not ridden yet. */
  static Notebook taken() {
    Suggestion best = best();
    Entry.Advice advice = advice(best, new Answer.Accepted(MOTO));
    Change change = new Change(best.setting().id(), best.to(), Optional.of(PROPOSAL), "");
    return with(new EntryEdit.Add(advice).applyTo(SEASON), MOTO, List.of(change));
  }

  /** Taken after the last day was over, and ridden on another day without a word on it yet. */
  static Notebook takenBetweenAndRidden() {
    Suggestion best = best();
    Entry.Advice advice = advice(best, new Answer.Open());
    Change change = new Change(best.setting().id(), best.to(), Optional.of(PROPOSAL), "");
    Entry.Adjusted adjusted =
        new Entry.Adjusted(
            Head.of(new EntryId("adjusted-tried"), BIKE, day(), 501), List.of(change));
    Notebook taken = new EntryEdit.Add(adjusted).applyTo(new EntryEdit.Add(advice).applyTo(SEASON));
    LocalDate later = day().plusDays(6);
    Entry.Session before = lastDay(SEASON);
    Entry.Session next =
        new Entry.Session(
            Head.of(new EntryId("day-after"), BIKE, later, 0),
            before.track(),
            before.rider(),
            before.conditions(),
            Timeline.of(taken, BIKE).startOn(later),
            List.of(),
            Optional.empty());
    Notebook started = with(new EntryEdit.Add(next).applyTo(taken), MOTO, List.of());
    return new MotoEdit.NoteFeel(next.id(), MOTO, OTHER).applyTo(started);
  }

  static Notebook with(Notebook notebook, MotoId id, List<Change> changes) {
    Moto moto = new Moto(id, MotoKind.MOTO, changes, Report.EMPTY, Optional.empty(), "");
    return new SessionEdit.AddMoto(lastDay(notebook).id(), moto).applyTo(notebook);
  }

  /** Taken and ridden, with trust and another feel noted, and what it was meant to help not. */
  static Notebook riddenAndNotAsked() {
    EntryId session = lastDay(SEASON).id();
    Notebook trusted = new MotoEdit.Trust(session, MOTO, OptionalInt.of(7)).applyTo(taken());
    return new MotoEdit.NoteFeel(session, MOTO, OTHER).applyTo(trusted);
  }

  /** The question on both pages where it stands: to ride, to answer, answered, gone back. */
  static List<Pictures.View> views() {
    Place session = new Place.Session(lastDay(SEASON).id());
    Notebook asked = riddenAndNotAsked();
    Notebook better = rated(asked, MOTO, 0);
    return List.of(
        new Pictures.View("season-tried-taken", taken(), shown -> shown.go(session)),
        new Pictures.View("season-tried-asked", asked, shown -> shown.go(session)),
        new Pictures.View("season-tried-better", better, shown -> shown.go(session)),
        new Pictures.View(
            "next-evidence",
            SEASON,
            shown -> {
              shown.go(new Place.Next());
              shown.touch("evidence-1", "evidence-2");
            }),
        new Pictures.View(
            "next-nothing-ridden",
            Notebook.of(SEASON.id(), SEASON.shelf(), List.of(), List.of(), SEASON.display()),
            shown -> shown.go(new Place.Next())),
        new Pictures.View(
            "season-help",
            SEASON,
            shown -> {
              shown.go(session);
              shown.go(new Place.Help());
            }),
        new Pictures.View("season-tried-next", better, shown -> shown.go(new Place.Next())),
        new Pictures.View(
            "season-tried-between",
            takenBetweenAndRidden(),
            shown -> shown.go(new Place.Session(lastDay(takenBetweenAndRidden()).id()))),
        new Pictures.View(
            "season-tried-between-next",
            takenBetweenAndRidden(),
            shown -> shown.go(new Place.Next())));
  }

  static AfterRide question(Notebook notebook) {
    return AfterRide.of(notebook, BIKE, RULES).orElseThrow();
  }

  /** Ridden, with everything it was meant to help said to be so bad now. */
  static Notebook rated(Notebook notebook, MotoId moto, int severity) {
    Notebook now = notebook;
    for (AfterRide.Asked asked : question(riddenAndNotAsked()).asked()) {
      Feel feel = asked.before().withSeverity(severity);
      now = new MotoEdit.NoteFeel(lastDay(now).id(), moto, feel).applyTo(now);
    }
    return now;
  }
}
