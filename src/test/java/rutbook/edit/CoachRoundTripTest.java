package rutbook.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rutbook.json.NotebookJson;
import rutbook.json.SetupJson;
import rutbook.notebook.Answer;
import rutbook.notebook.Bike;
import rutbook.notebook.Bounds;
import rutbook.notebook.Dice;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Head;
import rutbook.notebook.Limits;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Notebooks;
import rutbook.notebook.Proposal;
import rutbook.notebook.ProposalId;
import rutbook.notebook.Reading;
import rutbook.notebook.Scale;
import rutbook.notebook.Setting;
import rutbook.notebook.Shared;
import rutbook.notebook.Sheet;
import rutbook.notebook.Source;
import rutbook.notebook.Timeline;
import rutbook.share.CoachPart;
import rutbook.share.Returned;
import rutbook.share.SetupFile;
import rutbook.share.SetupFiles;
import rutbook.share.ShareException;
import rutbook.share.ShareFault;
import rutbook.share.Standing;
import rutbook.share.TakeBack;
import rutbook.units.Amount;

/**
 * From the rider to the coach and back, through files, with edits on both sides in between: nothing
 * is lost on either side, and what is proposed is compared with what was handed over and what is
 * there.
 */
class CoachRoundTripTest {
  private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
  private static final EntryId RECORD = new EntryId("own-record");

  private final Set<Standing> seen = EnumSet.noneOf(Standing.class);
  private int recordsGone;

  @Test
  void whatGoesToTheCoachComesBackAndNothingIsLost() {
    roundTrips(61, 120, 8);
  }

  @Tag("long")
  @Test
  void whatGoesToTheCoachComesBackAndNothingIsLostAtLength() {
    roundTrips(62, 3_000, 20);
  }

  private void roundTrips(long seed, int times, int entries) {
    Random random = new Random(seed);
    for (int i = 0; i < times; i++) {
      roundTrip(Notebooks.of(random.nextLong(), entries), new Dice(new Random(random.nextLong())));
    }
    assertThat(seen)
        .containsExactlyInAnyOrder(
            Standing.UNCHANGED,
            Standing.CHANGED,
            Standing.ALREADY_SO,
            Standing.HELD,
            Standing.GONE);
    assertThat(recordsGone).isPositive();
  }

  private void roundTrip(Notebook start, Dice dice) {
    Bike bike = start.bikes().get(0);
    SetupFile sent = SetupFiles.whole(start, dice.some(Shared.class));
    Notebook handedOver = new AdviceEdit.HandOver(record(bike, sent)).applyTo(start);
    byte[] returned = coach(SetupJson.write(sent), dice);
    Notebook since = ride(handedOver, bike, dice);
    takeBack(since, SetupJson.read(returned), dice);
  }

  private static Entry.HandedOver record(Bike bike, SetupFile file) {
    return new Entry.HandedOver(
        Head.of(RECORD, bike.id(), TODAY.minusDays(9), 0),
        file.handOver().id(),
        file.snapshot(),
        SetupJson.checksum(file));
  }

  /** Opens, proposes, changes the mind, closes, opens again, hands back. */
  private static byte[] coach(byte[] bytes, Dice dice) {
    SetupFile first = SetupFiles.advised(SetupJson.read(bytes).file(), dice);
    SetupFile again = SetupJson.read(SetupJson.write(first)).file();
    CoachPart part = again.coach().orElseThrow();
    if (!part.proposals().isEmpty() && dice.once(2)) {
      part = part.without(dice.any(part.proposals()).setting());
    }
    return SetupJson.write(again.with(part.advising("Ride it first.")));
  }

  /**
   * Edits of every kind, half the time with a newer sheet that lacks settings and narrows others.
   */
  private static Notebook ride(Notebook notebook, Bike bike, Dice dice) {
    History history = History.of(notebook);
    for (int i = dice.below(12); i > 0; i--) {
      Notebook present = history.present();
      if (Notebooks.anEntry(present, dice, Entry.Session.class).isEmpty()) {
        return present;
      }
      try {
        history = history.after(new RandomEdits(dice, present).any());
      } catch (NotebookException refused) {
        // an edit that the notebook does not take leaves it as it is
      }
    }
    Notebook now = history.present();
    if (dice.once(12) && now.entry(RECORD).isPresent()) {
      now = new EntryEdit.Remove(RECORD).applyTo(now);
    }
    return dice.once(2) ? lessOn(now, bike, dice) : now;
  }

  private static Notebook lessOn(Notebook notebook, Bike bike, Dice dice) {
    Bike present = notebook.shelf().bike(bike.id()).orElseThrow();
    Sheet sheet = present.latestSheet();
    List<Setting> left = new ArrayList<>();
    for (Setting setting : sheet.settings()) {
      if (!dice.once(4)) {
        left.add(dice.once(2) ? narrowed(setting) : setting);
      }
    }
    return notebook.with(
        present.with(sheet.with(TODAY.minusDays(1), "other parts").withSettings(left)));
  }

  /** With room for two steps from its least on, where it has stops of its own. */
  private static Setting narrowed(Setting setting) {
    Scale scale = setting.scale();
    if (!(scale.limits() instanceof Limits.Stops stops)) {
      return setting;
    }
    Amount least = stops.range().least();
    Amount most = least.plus(scale.step()).plus(scale.step());
    Scale narrow =
        new Scale(
            Limits.stops(least, most),
            Optional.empty(),
            scale.step(),
            scale.datum(),
            scale.greater(),
            scale.total());
    return new Setting(
        setting.id(), setting.name(), setting.role(), setting.carrier(), narrow, setting.work());
  }

  private void takeBack(Notebook notebook, SetupJson.Read read, Dice dice) {
    TakeBack back;
    try {
      back = TakeBack.of(notebook, read.file(), read.ridersChecksum(), TODAY);
    } catch (ShareException refused) {
      assertThat(refused.fault()).isEqualTo(ShareFault.NO_RECORD);
      recordsGone++;
      assertThat(notebook.entries())
          .as("the record was taken out of the Log, or put right as something else")
          .noneMatch(
              entry ->
                  entry instanceof Entry.HandedOver own
                      && own.handOver().equals(read.file().handOver().id()));
      return;
    }
    assertThat(back.proposals()).hasSize(read.file().coach().orElseThrow().proposals().size());
    back.proposals().forEach(each -> standsAsItIsSaid(notebook, back.own(), each));
    Entry.Advice advice = advice(notebook, back, dice);
    Notebook kept = new AdviceEdit.TakeBack(advice).applyTo(notebook);
    nothingElseMoved(notebook, kept, advice);
    assertThat(NotebookJson.read(NotebookJson.write(kept))).isEqualTo(kept);
    followed(kept, advice, back);
    takenBackAgain(kept, read);
  }

  private static Entry.Advice advice(Notebook notebook, TakeBack back, Dice dice) {
    Head head = Head.of(new EntryId("advice-back"), back.own().bike(), TODAY, 0);
    return back.advice(head, () -> new ProposalId(dice.id("returned")));
  }

  private void standsAsItIsSaid(Notebook notebook, Entry.HandedOver own, Returned returned) {
    Timeline timeline = Timeline.of(notebook, own.bike());
    Sheet today = timeline.sheetOn(TODAY);
    Optional<Setting> setting = today.setting(returned.id());
    Optional<Reading> base = own.snapshot().setup().reading(returned.id());
    Optional<Reading> now = timeline.now().reading(returned.id());
    Reading to = returned.suggested().to();
    if (returned.standing() == Standing.TAKEN_BEFORE) {
      assertThat(wasTaken(notebook, own, returned)).as("%s", returned).isTrue();
      return;
    }
    seen.add(returned.standing());
    boolean inside = setting.isPresent() && Bounds.isInside(today, setting.get(), to);
    switch (returned.standing()) {
      case UNCHANGED -> {
        assertThat(inside).isTrue();
        assertThat(base.orElseThrow().sameAs(now.orElseThrow())).isTrue();
      }
      case CHANGED -> {
        assertThat(inside).isTrue();
        boolean same = base.isPresent() && now.isPresent() && base.get().sameAs(now.get());
        assertThat(same).isFalse();
      }
      case ALREADY_SO -> assertThat(now.orElseThrow().sameAs(to)).isTrue();
      case HELD -> {
        Reading target = returned.target().orElseThrow();
        assertThat(Bounds.isInside(today, setting.orElseThrow(), target)).isTrue();
        assertThat(target.sameAs(to)).isFalse();
      }
      case GONE -> assertThat(setting).isEmpty();
      case NOT_YOURS, TAKEN_BEFORE -> throw new AssertionError(returned);
    }
  }

  /** One of the edits since happened to be the same proposal, taken back from the same coach. */
  private static boolean wasTaken(Notebook notebook, Entry.HandedOver own, Returned returned) {
    return notebook.entries().stream()
        .filter(Entry.Advice.class::isInstance)
        .map(Entry.Advice.class::cast)
        .filter(
            advice ->
                advice.source() instanceof Source.Coach coach
                    && coach.handOver().equals(own.handOver()))
        .flatMap(advice -> advice.proposals().stream())
        .anyMatch(
            proposal ->
                proposal.setting().equals(returned.id())
                    && proposal.to().sameAs(returned.suggested().to()));
  }

  private static void nothingElseMoved(Notebook before, Notebook after, Entry.Advice advice) {
    List<Entry> entries = new ArrayList<>(after.entries());
    assertThat(entries.remove(advice)).isTrue();
    assertThat(entries).isEqualTo(before.entries());
    assertThat(after.shelf()).isEqualTo(before.shelf());
    assertThat(History.of(before).after(new AdviceEdit.TakeBack(advice)).undone().present())
        .isEqualTo(before);
  }

  private static void followed(Notebook kept, Entry.Advice advice, TakeBack back) {
    for (Proposal each : advice.proposals()) {
      Returned returned =
          back.proposals().stream()
              .filter(it -> it.id().equals(each.setting()))
              .findFirst()
              .orElseThrow();
      if (returned.standing().canBeFollowed()) {
        Head head = Head.of(new EntryId("followed"), advice.bike(), TODAY, 10_000);
        Notebook next = new AdviceEdit.FollowBetween(advice.id(), each.id(), head).applyTo(kept);
        Entry.Adjusted adjusted = (Entry.Adjusted) next.entry(head.id()).orElseThrow();
        assertThat(adjusted.changes().get(0).to()).isEqualTo(returned.target().orElseThrow());
        assertThat(each.answer()).isNotInstanceOf(Answer.Accepted.class);
      }
    }
  }

  private static void takenBackAgain(Notebook kept, SetupJson.Read read) {
    try {
      TakeBack.of(kept, read.file(), read.ridersChecksum(), TODAY);
      throw new AssertionError("taken back twice");
    } catch (ShareException refused) {
      assertThat(refused.fault()).isEqualTo(ShareFault.TAKEN_BEFORE);
    }
  }
}
