package rutbook.share;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rutbook.notebook.Bench.clicks;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rutbook.edit.AdviceEdit;
import rutbook.edit.History;
import rutbook.json.SetupJson;
import rutbook.notebook.Answer;
import rutbook.notebook.Bench;
import rutbook.notebook.Change;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Head;
import rutbook.notebook.MotoId;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookException;
import rutbook.notebook.NotebookId;
import rutbook.notebook.Proposal;
import rutbook.notebook.ProposalId;
import rutbook.notebook.Reading;
import rutbook.notebook.Role;
import rutbook.notebook.Sense;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Source;
import rutbook.notebook.Timeline;

/** One handing over of the bench bike, and what can have happened until the answer is back. */
class TakeBackTest {
  private static final LocalDate TODAY = SetupFiles.DAY.plusDays(7);
  private static final EntryId ADVICE = new EntryId("advice-1");

  private final Notebook before = Bench.notebook();
  private final SetupFile file = SetupFiles.whole(before, Set.of());
  private final Notebook handedOver = new AdviceEdit.HandOver(record(file)).applyTo(before);

  private static Entry.HandedOver record(SetupFile file) {
    return new Entry.HandedOver(
        Head.of(new EntryId("h-1"), Bench.BIKE, SetupFiles.DAY, 0),
        file.handOver().id(),
        file.snapshot(),
        SetupJson.checksum(file));
  }

  private SetupFile advised(Suggested... proposals) {
    CoachPart coach = CoachPart.of("Jorun").advising("One at a time.");
    for (Suggested each : proposals) {
      coach = coach.with(each);
    }
    return file.with(coach.handedBackOn(SetupFiles.DAY.plusDays(2)));
  }

  private static Suggested both(SettingId setting, int to) {
    return new Suggested(setting, Reading.bothLegs(clicks(to)), "for the whoops");
  }

  private static TakeBack back(Notebook notebook, SetupFile file) {
    return TakeBack.of(notebook, file, SetupJson.checksum(file.asHandedOver()), TODAY);
  }

  private static Returned only(Notebook notebook, SetupFile file) {
    return back(notebook, file).proposals().get(0);
  }

  private static Notebook moved(Notebook notebook, SettingId setting, int to) {
    return notebook.with(
        new Entry.Adjusted(
            Head.of(new EntryId("a-1"), Bench.BIKE, SetupFiles.DAY.plusDays(1), 0),
            List.of(Change.of(setting, Reading.bothLegs(clicks(to))))));
  }

  private static Notebook with(Notebook notebook, Sheet sheet) {
    return notebook.with(notebook.bikes().get(0).with(sheet));
  }

  private static ShareFault refusal(Notebook notebook, SetupFile file) {
    try {
      back(notebook, file);
      throw new AssertionError("was taken back");
    } catch (ShareException refused) {
      return refused.fault();
    }
  }

  @Test
  void whatStandsAsItWasHandedOverIsUnchanged() {
    Returned returned = only(handedOver, advised(both(Bench.FORK_COMPRESSION, 9)));
    assertThat(returned.standing()).isEqualTo(Standing.UNCHANGED);
    assertThat(returned.handedOver()).isEqualTo(returned.now()).isPresent();
    assertThat(returned.target()).contains(Reading.bothLegs(clicks(9)));
    assertThat(returned.movedMeanwhile()).isFalse();
  }

  @Test
  void whatWasMovedMeanwhileIsAConflictForTheRiderToDecide() {
    Notebook since = moved(handedOver, Bench.FORK_COMPRESSION, 15);
    Returned returned = only(since, advised(both(Bench.FORK_COMPRESSION, 9)));
    assertThat(returned.standing()).isEqualTo(Standing.CHANGED);
    assertThat(returned.now()).contains(Reading.bothLegs(clicks(15)));
    assertThat(returned.movedMeanwhile()).isTrue();
  }

  @Test
  void whatStandsWhereTheCoachWantsItIsSaidToStandThere() {
    Notebook since = moved(handedOver, Bench.FORK_COMPRESSION, 9);
    Returned returned = only(since, advised(both(Bench.FORK_COMPRESSION, 9)));
    assertThat(returned.standing()).isEqualTo(Standing.ALREADY_SO);
    assertThat(returned.target()).isEmpty();
  }

  @Test
  void aSettingThatLeftTheSheetIsGoneAndKeptAsDeclined() {
    Sheet sheet = before.bikes().get(0).latestSheet();
    List<Setting> rest =
        sheet.settings().stream()
            .filter(each -> !each.id().equals(Bench.FORK_COMPRESSION))
            .toList();
    Sheet without = sheet.with(SetupFiles.DAY.plusDays(1), "other fork").withSettings(rest);
    Notebook since = with(handedOver, without);
    TakeBack back = back(since, advised(both(Bench.FORK_COMPRESSION, 9)));
    assertThat(back.proposals().get(0).standing()).isEqualTo(Standing.GONE);
    Entry.Advice advice = advice(back);
    assertThat(advice.proposals().get(0).answer()).isEqualTo(new Answer.Declined(""));
    assertThat(new AdviceEdit.TakeBack(advice).applyTo(since).entry(ADVICE)).contains(advice);
  }

  @Test
  void aLimitOfTodayHoldsTheProposalAndSaysWhich() {
    Sheet sheet = before.bikes().get(0).latestSheet();
    Setting narrow =
        Bench.clicker(
            Bench.FORK_COMPRESSION, "Fork compression", Role.FORK_COMPRESSION, 16, Sense.SOFTER);
    List<Setting> settings =
        sheet.settings().stream()
            .map(each -> each.id().equals(narrow.id()) ? narrow : each)
            .toList();
    Sheet narrowed = sheet.with(SetupFiles.DAY.plusDays(1), "revalved").withSettings(settings);
    Notebook since = with(handedOver, narrowed);
    TakeBack back = back(since, advised(both(Bench.FORK_COMPRESSION, 18)));
    Returned returned = back.proposals().get(0);
    assertThat(returned.standing()).isEqualTo(Standing.HELD);
    assertThat(returned.target()).contains(Reading.bothLegs(clicks(16)));
    assertThat(returned.held().orElseThrow().facts()).contains(clicks(18), clicks(16));
    Proposal kept = advice(back).proposals().get(0);
    assertThat(kept.to()).isEqualTo(Reading.bothLegs(clicks(18)));
    assertThat(kept.answer()).isEqualTo(new Answer.Held(clicks(16)));
    Notebook followed =
        new AdviceEdit.FollowBetween(
                ADVICE, kept.id(), Head.of(new EntryId("a-2"), Bench.BIKE, TODAY, 1))
            .applyTo(new AdviceEdit.TakeBack(advice(back)).applyTo(since));
    assertThat(now(followed).reading(narrow.id())).contains(Reading.bothLegs(clicks(16)));
  }

  @Test
  void aSettingThatTheBikeNeverHadIsLeftOut() {
    SetupFile other = SetupFiles.whole(Bench.notebook().with(stranger()), Set.of());
    CoachPart coach =
        CoachPart.of("Jorun").with(new Suggested(new SettingId("wing"), Reading.of(clicks(3)), ""));
    TakeBack back = back(handedOver, other.with(coach));
    assertThat(back.proposals().get(0).standing()).isEqualTo(Standing.NOT_YOURS);
    assertThat(back.changedOnTheWay()).isTrue();
    assertThat(advice(back).proposals()).isEmpty();
  }

  /** The same ids, and one setting more, as somebody else's program may write them. */
  private static rutbook.notebook.Bike stranger() {
    Sheet sheet = Bench.sheet();
    List<Setting> settings = new java.util.ArrayList<>(sheet.settings());
    Setting wing =
        new Setting(
            new SettingId("wing"),
            "Wing",
            Role.SHOCK_REBOUND,
            rutbook.notebook.Carrier.SINGLE,
            settings.stream()
                .filter(each -> each.id().equals(Bench.FORK_COMPRESSION))
                .findFirst()
                .orElseThrow()
                .scale(),
            rutbook.notebook.Work.TRACKSIDE);
    settings.add(wing);
    return Bench.bike().with(sheet.with(SetupFiles.DAY.minusDays(1), "").withSettings(settings));
  }

  @Test
  void theSameFileTwiceIsSaidToBeTakenAlready() {
    SetupFile back = advised(both(Bench.FORK_COMPRESSION, 9));
    Notebook kept = new AdviceEdit.TakeBack(advice(back(handedOver, back))).applyTo(handedOver);
    assertThat(refusal(kept, back)).isEqualTo(ShareFault.TAKEN_BEFORE);
    SetupFile second = advised(both(Bench.FORK_COMPRESSION, 9), both(Bench.FORK_REBOUND, 8));
    TakeBack more = back(kept, second);
    assertThat(more.proposals())
        .extracting(Returned::standing)
        .containsExactly(Standing.TAKEN_BEFORE, Standing.UNCHANGED);
    assertThat(more.generalIsNew()).isFalse();
    assertThat(more.kept()).hasSize(1);
  }

  @Test
  void aFileOfAnotherNotebookOrWithoutItsRecordIsRefused() {
    SetupFile back = advised(both(Bench.FORK_COMPRESSION, 9));
    assertThat(refusal(before, back)).isEqualTo(ShareFault.NO_RECORD);
    assertThat(refusal(before.copiedAs(new NotebookId("other")), back))
        .isEqualTo(ShareFault.OTHER_NOTEBOOK);
    assertThat(refusal(handedOver, file)).isEqualTo(ShareFault.NOTHING_SAID);
    assertThat(refusal(handedOver, file.with(CoachPart.of("Jorun"))))
        .isEqualTo(ShareFault.NOTHING_SAID);
  }

  /** A copy of the notebook under another name has the record, and that is what counts. */
  @Test
  void aCopyOfTheNotebookTakesItBackToo() {
    Notebook copy = handedOver.copiedAs(new NotebookId("copy"));
    Returned returned = only(copy, advised(both(Bench.FORK_COMPRESSION, 9)));
    assertThat(returned.standing()).isEqualTo(Standing.UNCHANGED);
  }

  /** The base is the own record: what the file says about it is only told apart. */
  @Test
  void whatTheFileSaysWasHandedOverNeverReplacesTheOwnRecord() {
    Notebook moved = moved(before, Bench.FORK_COMPRESSION, 14);
    SetupFile forged =
        SetupFiles.whole(moved, Set.of())
            .with(CoachPart.of("Jorun").with(both(Bench.FORK_COMPRESSION, 9)));
    TakeBack back = back(handedOver, forged);
    assertThat(back.changedOnTheWay()).isTrue();
    assertThat(back.proposals().get(0).handedOver())
        .isEqualTo(file.snapshot().setup().reading(Bench.FORK_COMPRESSION));
    assertThat(back.proposals().get(0).standing()).isEqualTo(Standing.UNCHANGED);
  }

  @Test
  void aFileWhoseHandOverNamesAnotherEntryOverwritesNothing() {
    Entry.Advice advice = advice(back(handedOver, advised(both(Bench.FORK_COMPRESSION, 9))));
    Entry.Advice clashing = advice.with(Head.of(new EntryId("h-1"), Bench.BIKE, TODAY, 0));
    assertThatThrownBy(() -> new AdviceEdit.TakeBack(clashing).applyTo(handedOver))
        .isInstanceOf(NotebookException.class);
    Notebook kept = new AdviceEdit.TakeBack(advice).applyTo(handedOver);
    assertThatThrownBy(
            () ->
                new AdviceEdit.TakeBack(
                        advice.with(Head.of(new EntryId("x"), Bench.BIKE, TODAY, 2)))
                    .applyTo(kept))
        .as("the ids of its proposals are there already")
        .isInstanceOf(NotebookException.class);
  }

  @Test
  void theCoachCannotProposeBeyondTheRidersSheet() {
    assertThatThrownBy(() -> advised(both(Bench.FORK_COMPRESSION, 99)))
        .isInstanceOf(NotebookException.class);
    assertThatThrownBy(
            () -> advised(new Suggested(new SettingId("wing"), Reading.of(clicks(1)), "")))
        .isInstanceOf(NotebookException.class);
    assertThatThrownBy(
            () -> advised(new Suggested(Bench.FORK_COMPRESSION, Reading.of(clicks(9)), "one leg")))
        .isInstanceOf(NotebookException.class);
  }

  @Test
  void aProposalIsTakenBeforeTheNextMotoAndUndone() {
    Notebook session =
        handedOver.with(Bench.session("s-1", TODAY, Bench.HOLLOW, Bench.setup(), List.of()));
    Entry.Advice advice = advice(back(session, advised(both(Bench.FORK_COMPRESSION, 9))));
    History history =
        History.of(session)
            .after(new AdviceEdit.TakeBack(advice))
            .after(
                new AdviceEdit.Follow(
                    ADVICE, advice.proposals().get(0).id(), new EntryId("s-1"), new MotoId("m-1")));
    Notebook followed = history.present();
    assertThat(now(followed).reading(Bench.FORK_COMPRESSION)).contains(Reading.bothLegs(clicks(9)));
    Entry.Advice kept = (Entry.Advice) followed.entry(ADVICE).orElseThrow();
    assertThat(kept.source()).isEqualTo(new Source.Coach(file.handOver().id(), "Jorun"));
    assertThat(kept.proposals().get(0).answer()).isEqualTo(new Answer.Accepted(new MotoId("m-1")));
    Optional<Followed> found =
        Followed.of(Timeline.of(followed, Bench.BIKE), advice.proposals().get(0).id());
    assertThat(found.orElseThrow().moto().orElseThrow().id()).isEqualTo(new MotoId("m-1"));
    assertThat(history.undone().undone().present()).isEqualTo(session);
  }

  private static Setup now(Notebook notebook) {
    return Timeline.of(notebook, Bench.BIKE).now();
  }

  private static Entry.Advice advice(TakeBack back) {
    int[] count = {0};
    return back.advice(
        Head.of(ADVICE, back.own().bike(), TODAY, 0), () -> new ProposalId("p-" + count[0]++));
  }
}
