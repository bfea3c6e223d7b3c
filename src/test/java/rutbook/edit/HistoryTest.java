package rutbook.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rutbook.notebook.Bench.clicks;

import java.lang.reflect.RecordComponent;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Answer;
import rutbook.notebook.Bench;
import rutbook.notebook.Change;
import rutbook.notebook.Conditions;
import rutbook.notebook.End;
import rutbook.notebook.EndOfDayCheck;
import rutbook.notebook.Entered;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Feel;
import rutbook.notebook.HandOverId;
import rutbook.notebook.Head;
import rutbook.notebook.Job;
import rutbook.notebook.Lap;
import rutbook.notebook.Moto;
import rutbook.notebook.MotoId;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Oil;
import rutbook.notebook.OilId;
import rutbook.notebook.Outcome;
import rutbook.notebook.Placed;
import rutbook.notebook.Proposal;
import rutbook.notebook.ProposalId;
import rutbook.notebook.Reading;
import rutbook.notebook.Renewed;
import rutbook.notebook.Rider;
import rutbook.notebook.RiderId;
import rutbook.notebook.RuleChange;
import rutbook.notebook.Scope;
import rutbook.notebook.Section;
import rutbook.notebook.Snapshot;
import rutbook.notebook.Source;
import rutbook.notebook.StepDone;
import rutbook.notebook.StepId;
import rutbook.notebook.Symptom;
import rutbook.notebook.Track;
import rutbook.notebook.TrackId;
import rutbook.notebook.TravelUsed;
import rutbook.units.Display;

class HistoryTest {
  private static final EntryId SESSION = new EntryId("s-1");
  private static final MotoId MOTO = new MotoId("m-1");
  private static final EntryId JOB = new EntryId("job-1");
  private static final EntryId ADVICE = new EntryId("advice-1");
  private static final LocalDate DAY = LocalDate.of(2026, 4, 4);
  private static final LocalDate LATER = DAY.plusDays(400);
  private static final Feel HARSH = Feel.of(End.FRONT, Section.BRAKING_BUMPS, Symptom.HARSH, 3);

  private static Notebook ridden() {
    Moto moto =
        Bench.moto(
            "m-1",
            List.of(Change.of(Bench.FORK_REBOUND, Reading.bothLegs(clicks(9)))),
            List.of(HARSH));
    StepId step = new StepId("pressures");
    Entry.RebuildJob job =
        new Entry.RebuildJob(
            Head.of(JOB, Bench.BIKE, DAY, 1),
            new Job(
                Scope.FORK,
                Set.of(Renewed.OIL),
                Bench.FIRST_BASELINE,
                Bench.setup(),
                Bench.SPRING,
                Optional.empty()),
            List.of(new StepDone(step, Instant.EPOCH, new Entered.Ticked())),
            Outcome.UNDER_WAY);
    Proposal proposal =
        new Proposal(
            new ProposalId("p-1"),
            Bench.FORK_COMPRESSION,
            Reading.bothLegs(clicks(12)),
            Reading.bothLegs(clicks(14)),
            "",
            OptionalDouble.empty(),
            new Answer.Open());
    return Bench.notebook()
        .with(Bench.session("s-1", DAY, Bench.HOLLOW, Bench.setup(), List.of(moto)))
        .with(job)
        .with(
            new Entry.Advice(
                Head.of(ADVICE, Bench.BIKE, DAY, 2), new Source.Own("test"), List.of(proposal), ""))
        .with(handedOver("hand-over-1"));
  }

  /** One edit of each kind, each of which changes {@link #ridden()}. */
  static List<Edit> oneOfEach() {
    Moto second = Bench.moto("m-2", List.of(), List.of());
    Entry.Event event =
        new Entry.Event(
            Head.of(new EntryId("e-1"), Bench.BIKE, DAY, 3),
            rutbook.notebook.EventKind.CRASH,
            Optional.empty(),
            Optional.empty(),
            "a tip-over");
    return List.of(
        new ShelfEdit.PutRider(new Rider(new RiderId("r-2"), "Second", List.of())),
        new ShelfEdit.PutTrack(
            new Track(new TrackId("t-3"), "Third", Optional.empty(), Optional.empty(), "")),
        new ShelfEdit.PutOil(new Oil(new OilId("o-1"), "Thin", Optional.empty(), Optional.empty())),
        new ShelfEdit.AddBike(
            new rutbook.notebook.Bike(
                new rutbook.notebook.BikeId("bike-2"), "Other", List.of(Bench.sheet()))),
        new ShelfEdit.RenameBike(Bench.BIKE, "Renamed"),
        new ShelfEdit.PutSheet(Bench.BIKE, Bench.sheet().with(DAY.plusDays(1), "new spring")),
        new ShelfEdit.MoveSheet(Bench.BIKE, LATER, LATER.plusDays(1)),
        new ShelfEdit.TakeOutSheet(Bench.BIKE, LATER),
        new ShelfEdit.ChooseUnits(Display.US),
        new ShelfEdit.ChangeRules(
            List.of(new RuleChange("r-1", new java.math.BigDecimal("0.4"), "own motos"))),
        new EntryEdit.Add(event),
        new EntryEdit.Correct(
            Bench.baseline(Bench.setup().with(Placed.set(Bench.TUBE, Reading.of(Bench.mm("6")))))),
        new EntryEdit.Remove(ADVICE),
        new EntryEdit.Move(SESSION, DAY.plusDays(3), 0),
        new EntryEdit.Note(SESSION, "windy"),
        new EntryEdit.ReadMeter(SESSION, Optional.of(Bench.hours("12.5"))),
        new SessionEdit.StartWith(SESSION, Placed.set(Bench.TUBE, Reading.of(Bench.mm("4")))),
        new SessionEdit.Describe(SESSION, Conditions.NOT_NOTED),
        new SessionEdit.At(SESSION, Bench.DUNE, Bench.RIDER),
        new SessionEdit.AddMoto(SESSION, second),
        new SessionEdit.RemoveMoto(SESSION, MOTO),
        new SessionEdit.CheckEndOfDay(SESSION, Optional.of(new EndOfDayCheck(List.of()))),
        new MotoEdit.ChangeSetting(
            SESSION, MOTO, Change.of(Bench.FORK_REBOUND, Reading.bothLegs(clicks(10)))),
        new MotoEdit.LeaveSetting(SESSION, MOTO, Bench.FORK_REBOUND),
        new MotoEdit.NoteFeel(SESSION, MOTO, HARSH.withSeverity(1)),
        new MotoEdit.ForgetFeel(SESSION, MOTO, HARSH.key()),
        new MotoEdit.Trust(SESSION, MOTO, OptionalInt.of(7)),
        new MotoEdit.Laps(SESSION, MOTO, List.of(Lap.of(112_300))),
        new MotoEdit.Travel(
            SESSION, MOTO, new TravelUsed(Optional.of(Bench.mm("270")), Optional.empty())),
        new MotoEdit.Mark(SESSION, MOTO, true),
        new MotoEdit.Describe(SESSION, MOTO, Optional.of(Conditions.NOT_NOTED)),
        new MotoEdit.Note(SESSION, MOTO, "held up"),
        new RebuildEdit.Enter(
            JOB, new StepDone(new StepId("caps"), Instant.EPOCH, new Entered.Ticked())),
        new RebuildEdit.Reopen(JOB, new StepId("pressures")),
        new RebuildEdit.End(JOB, Outcome.BACK),
        new RebuildEdit.AnswerProposal(
            ADVICE, new ProposalId("p-1"), new Answer.Declined("not today")),
        new AdviceEdit.HandOver(handedOver("hand-over-2")),
        new AdviceEdit.TakeBack(fromCoach("p-2")),
        new AdviceEdit.Follow(ADVICE, new ProposalId("p-1"), SESSION, new MotoId("m-2")),
        new AdviceEdit.FollowBetween(
            ADVICE, new ProposalId("p-1"), Head.of(new EntryId("a-1"), Bench.BIKE, DAY, 5)),
        new Edit.Together(List.of(new ShelfEdit.ChooseUnits(Display.US))));
  }

  private static Entry.HandedOver handedOver(String id) {
    return new Entry.HandedOver(
        Head.of(new EntryId(id), Bench.BIKE, DAY, 4),
        new HandOverId(id),
        new Snapshot(Bench.setup(), Bench.SPRING, Set.of()),
        "5f".repeat(32));
  }

  private static Entry.Advice fromCoach(String proposal) {
    return new Entry.Advice(
        Head.of(new EntryId("advice-2"), Bench.BIKE, DAY, 5),
        new Source.Coach(new HandOverId("hand-over-1"), "Jorun"),
        List.of(
            new Proposal(
                new ProposalId(proposal),
                Bench.FORK_COMPRESSION,
                Reading.bothLegs(clicks(12)),
                Reading.bothLegs(clicks(10)),
                "firmer for the whoops",
                OptionalDouble.empty(),
                new Answer.Open())),
        "one thing at a time");
  }

  @Test
  void everyKindOfEditIsCoveredHere() {
    assertThat(oneOfEach().stream().map(Object::getClass).toList())
        .containsExactlyInAnyOrderElementsOf(kinds(Edit.class).toList());
  }

  private static Stream<Class<?>> kinds(Class<?> kind) {
    return kind.isRecord()
        ? Stream.of(kind)
        : Arrays.stream(kind.getPermittedSubclasses()).flatMap(HistoryTest::kinds);
  }

  @Test
  void everyEditIsUndoneAndRedone() {
    Notebook start =
        new ShelfEdit.PutSheet(Bench.BIKE, Bench.sheet().with(LATER, "later")).applyTo(ridden());
    for (Edit edit : oneOfEach()) {
      History after = History.of(start).after(edit);
      assertThat(after.present()).as("%s", edit).isNotEqualTo(start);
      assertThat(after.undone().present()).as("%s", edit).isEqualTo(start);
      assertThat(after.undone().redone()).as("%s", edit).isEqualTo(after);
    }
  }

  @Test
  void manyEditsAndAsManyUndosGiveTheStart() {
    Notebook start = ridden();
    List<Notebook> seen = new ArrayList<>();
    History history = History.of(start);
    for (Edit edit :
        List.of(
            new MotoEdit.Trust(SESSION, MOTO, OptionalInt.of(3)),
            new EntryEdit.Note(SESSION, "a"),
            new ShelfEdit.ChooseUnits(Display.US),
            new EntryEdit.Note(SESSION, "b"),
            new EntryEdit.Remove(ADVICE))) {
      seen.add(history.present());
      history = history.after(edit);
    }
    for (int i = seen.size() - 1; i >= 0; i--) {
      history = history.undone();
      assertThat(history.present()).isEqualTo(seen.get(i));
    }
    assertThat(history.undoable()).isEmpty();
  }

  @Test
  void typingIsOneStepUntilItIsClosed() {
    History typed =
        History.of(ridden())
            .after(new EntryEdit.Note(SESSION, "w"))
            .after(new EntryEdit.Note(SESSION, "wi"))
            .after(new EntryEdit.Note(SESSION, "win"));
    assertThat(typed.behind()).hasSize(1);
    assertThat(typed.sealedOff().after(new EntryEdit.Note(SESSION, "wind")).behind()).hasSize(2);
  }

  @Test
  void whatIsTypedBackToWhatItWasLeavesNoStep() {
    History typed = History.of(ridden()).after(new EntryEdit.Note(SESSION, "w"));
    History back = typed.after(new EntryEdit.Note(SESSION, ""));
    assertThat(back.behind()).isEmpty();
    assertThat(back.present()).isEqualTo(ridden());
  }

  @Test
  void anEntryThatAnotherNamesKeepsItsKindAndItsBike() {
    Entry.Event event =
        new Entry.Event(
            Head.of(Bench.FIRST_BASELINE, Bench.BIKE, DAY, 0),
            rutbook.notebook.EventKind.CRASH,
            Optional.empty(),
            Optional.empty(),
            "");
    assertThatThrownBy(() -> new EntryEdit.Correct(event).applyTo(ridden()))
        .isInstanceOf(NotebookException.class)
        .hasMessageContaining("base-1");
    Notebook two =
        new ShelfEdit.AddBike(
                new rutbook.notebook.Bike(
                    new rutbook.notebook.BikeId("bike-2"), "Other", List.of(Bench.sheet())))
            .applyTo(ridden());
    Entry.Baseline moved =
        Bench.baseline(Bench.setup())
            .with(
                Head.of(
                    Bench.FIRST_BASELINE, new rutbook.notebook.BikeId("bike-2"), Bench.SPRING, 0));
    assertThatThrownBy(() -> new EntryEdit.Correct(moved).applyTo(two))
        .isInstanceOf(NotebookException.class)
        .hasMessageContaining("base-1");
  }

  @Test
  void anEditThatChangesNothingIsNoStep() {
    History start = History.of(ridden());
    assertThat(start.after(new MotoEdit.NoteFeel(SESSION, MOTO, HARSH))).isSameAs(start);
  }

  @Test
  void atMostTwoHundredStepsAreKept() {
    History history = History.of(ridden());
    for (int i = 0; i < 250; i++) {
      history = history.after(new MotoEdit.Trust(SESSION, MOTO, OptionalInt.of(1 + i % 10)));
    }
    assertThat(history.behind()).hasSize(History.MOST_STEPS);
  }

  @Test
  void anEditBeyondALimitChangesNothing() {
    Editor editor = new Editor(ridden());
    Notebook before = editor.present();
    Change beyond = Change.of(Bench.FORK_REBOUND, Reading.bothLegs(clicks(21)));
    assertThatThrownBy(() -> editor.make(new MotoEdit.ChangeSetting(SESSION, MOTO, beyond)))
        .isInstanceOf(NotebookException.class);
    assertThat(editor.present()).isSameAs(before);
  }

  @Test
  void anEditFromInsideAListenerIsRefused() {
    Editor editor = new Editor(ridden());
    List<Throwable> refused = new ArrayList<>();
    editor.listen(
        history -> {
          try {
            editor.undo();
          } catch (IllegalStateException expected) {
            refused.add(expected);
          }
        });
    editor.make(new EntryEdit.Note(SESSION, "told"));
    assertThat(refused).hasSize(1);
  }

  @Test
  void editsAreValuesThroughAndThrough() {
    assertThat(kinds(Edit.class).map(Class::getRecordComponents).flatMap(Arrays::stream))
        .extracting(RecordComponent::getType)
        .allMatch(type -> type != Notebook.class);
  }
}
