package rutbook.share;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import rutbook.notebook.Answer;
import rutbook.notebook.Entry;
import rutbook.notebook.Head;
import rutbook.notebook.Notebook;
import rutbook.notebook.Proposal;
import rutbook.notebook.ProposalId;
import rutbook.notebook.Reading;
import rutbook.notebook.Source;
import rutbook.notebook.Timeline;
import rutbook.units.Amount;

/**
 * A file that came back from the coach, held against the rider's own record of what was handed over
 * and against what is on the bike now.
 *
 * @param own the rider's record, found by the identity of the handing over
 * @param changedOnTheWay whether what the rider handed over reads otherwise in the file than in the
 *     record; the record counts
 */
public record TakeBack(
    SetupFile file,
    CoachPart coach,
    Entry.HandedOver own,
    List<Returned> proposals,
    boolean generalIsNew,
    boolean changedOnTheWay) {

  public TakeBack {
    proposals = List.copyOf(proposals);
  }

  /**
   * @param ridersChecksum of the rider's part of the file, as it was reckoned when handing over
   * @param today whose sheet bounds what can be followed
   * @throws ShareException when it was handed over from another notebook, its record is gone, the
   *     coach said nothing, or all of it was taken back before
   */
  public static TakeBack of(
      Notebook notebook, SetupFile file, String ridersChecksum, LocalDate today) {
    Entry.HandedOver own = own(notebook, file);
    CoachPart coach =
        file.coach()
            .filter(part -> !part.saysNothing())
            .orElseThrow(
                () ->
                    new ShareException(
                        ShareFault.NOTHING_SAID,
                        file.excerpt().rider().name(),
                        file.handOver().day()));
    Timeline timeline = Timeline.of(notebook, own.bike());
    requireSheet(timeline, today);
    List<Entry.Advice> before = takenBefore(timeline, own);
    Comparing comparing = new Comparing(timeline, own, today, before);
    List<Returned> proposals = coach.proposals().stream().map(comparing::returned).toList();
    boolean generalIsNew =
        !coach.general().isBlank()
            && before.stream().noneMatch(each -> each.general().equals(coach.general()));
    if (!generalIsNew
        && !before.isEmpty()
        && proposals.stream().allMatch(each -> each.standing() == Standing.TAKEN_BEFORE)) {
      LocalDate day = before.get(before.size() - 1).day();
      throw new ShareException(ShareFault.TAKEN_BEFORE, coach.name(), day);
    }
    boolean changed = !own.sha256().equals(ridersChecksum);
    return new TakeBack(file, coach, own, proposals, generalIsNew, changed);
  }

  /** The own record decides; the name of the notebook only says which sentence fits. */
  private static Entry.HandedOver own(Notebook notebook, SetupFile file) {
    Optional<Entry.HandedOver> own =
        notebook.entries().stream()
            .filter(Entry.HandedOver.class::isInstance)
            .map(Entry.HandedOver.class::cast)
            .filter(each -> each.handOver().equals(file.handOver().id()))
            .findFirst();
    if (own.isEmpty()) {
      throw file.handOver().notebook().equals(notebook.id())
          ? new ShareException(ShareFault.NO_RECORD, file.handOver().day())
          : new ShareException(
              ShareFault.OTHER_NOTEBOOK,
              file.excerpt().rider().name(),
              file.excerpt().bike().name());
    }
    return own.get();
  }

  private static void requireSheet(Timeline timeline, LocalDate today) {
    if (timeline.bike().sheets().get(0).from().isAfter(today)) {
      throw new ShareException(ShareFault.NO_SHEET, timeline.bike().name(), today);
    }
  }

  private static List<Entry.Advice> takenBefore(Timeline timeline, Entry.HandedOver own) {
    return timeline.entries(Entry.Advice.class).stream()
        .filter(
            advice ->
                advice.source() instanceof Source.Coach coach
                    && coach.handOver().equals(own.handOver()))
        .toList();
  }

  /** The proposals that are kept, in the order in which the coach made them. */
  public List<Returned> kept() {
    return proposals.stream().filter(each -> each.standing().isKept()).toList();
  }

  /**
   * What the notebook keeps of it: open where it can be followed, held where a limit stands in the
   * way, declined without a word where there is nothing to follow.
   *
   * @param head its bike is that of the own record, whatever the file says
   * @param ids a new id for each proposal, since those of a file are not to be trusted
   */
  public Entry.Advice advice(Head head, Supplier<ProposalId> ids) {
    List<Proposal> all = new ArrayList<>();
    for (Returned each : kept()) {
      all.add(
          new Proposal(
              ids.get(),
              each.id(),
              each.now().or(each::handedOver).orElse(each.suggested().to()),
              each.suggested().to(),
              each.suggested().reason(),
              OptionalDouble.empty(),
              answer(each)));
    }
    Source source = new Source.Coach(own.handOver(), coach.name());
    return new Entry.Advice(head, source, all, generalIsNew ? coach.general() : "");
  }

  private static Answer answer(Returned returned) {
    if (returned.standing() == Standing.HELD) {
      return new Answer.Held(limit(returned));
    }
    boolean open =
        returned.standing().canBeFollowed() || returned.standing() == Standing.ALREADY_SO;
    return open ? new Answer.Open() : new Answer.Declined("");
  }

  /** Of the first leg that the limit holds. */
  private static Amount limit(Returned returned) {
    Reading wished = returned.suggested().to();
    List<Amount> held = returned.target().orElseThrow().amounts();
    for (int i = 0; i < held.size(); i++) {
      if (!held.get(i).sameQuantity(wished.amounts().get(i))) {
        return held.get(i);
      }
    }
    return held.get(0);
  }
}
