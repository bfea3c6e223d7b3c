package rutbook.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rutbook.edit.AdviceEdit;
import rutbook.edit.Edit;
import rutbook.edit.NextMoto;
import rutbook.edit.RebuildEdit;
import rutbook.edit.SessionStart;
import rutbook.json.SetupJson;
import rutbook.json.TakeBackAnswer;
import rutbook.notebook.Answer;
import rutbook.notebook.Bike;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Head;
import rutbook.notebook.Notebook;
import rutbook.notebook.Proposal;
import rutbook.notebook.ProposalId;
import rutbook.share.Returned;
import rutbook.share.ShareException;
import rutbook.share.Standing;
import rutbook.share.TakeBack;
import rutbook.words.ShareWords;

/** Takes the coach's answer back: looks at it first, and keeps it when told to. */
@Command(
    name = "take-back",
    description =
        "Print what the coach says in a setup file, beside what was handed over and what is on the"
            + " bike now; exit 1 when something does not fit any more. The notebook is changed only"
            + " with --keep, --accept or --decline: then the advice stands in the Log.")
final class TakeBackCommand extends OnNotebook {
  @Parameters(index = "1", paramLabel = "SETUP", description = "The file from the coach.")
  private String setup;

  @Option(names = "--keep", description = "Keep the advice in the notebook.")
  private boolean keep;

  @Option(
      names = "--accept",
      split = ",",
      paramLabel = "SETTING",
      description =
          "Keep it, and take the proposal for this setting: before the next moto of today, or as a"
              + " change between sessions. One at a time tells most.")
  private List<String> accepted = List.of();

  @Option(
      names = "--decline",
      paramLabel = "SETTING=WORD",
      description = "Keep it, and decline the proposal for this setting, with a word.")
  private Map<String, String> declined = new LinkedHashMap<>();

  @Override
  public Integer call() {
    OpenedNotebook opened = opened();
    SetupJson.Read read = SetupReading.read(pen(), setup, opened.phrases());
    TakeBack back = takeBack(opened, opened.notebook(), read);
    List<Returned> accepting = accepted.stream().map(name -> named(opened, back, name)).toList();
    Map<Returned, String> declining = new LinkedHashMap<>();
    declined.forEach((name, word) -> declining.put(named(opened, back, name), word));
    requireFollowable(opened, accepting);
    Optional<EntryId> kept = Optional.empty();
    if (keep || !accepting.isEmpty() || !declining.isEmpty()) {
      EntryId id = new EntryId(pen().ids().next());
      pen().change(file(), notebook -> kept(notebook, opened, read, id, accepting, declining));
      kept = Optional.of(id);
    }
    Optional<EntryId> entry = kept;
    int exit = fits(back, read) ? Exit.DONE : Exit.PROBLEM;
    return answer(
        opened,
        exit,
        TakeBackAnswer.of(back, read.hasChecksum(), kept),
        pages -> lines(opened, back, read, entry.isPresent()));
  }

  private static boolean fits(TakeBack back, SetupJson.Read read) {
    return read.hasChecksum()
        && !back.changedOnTheWay()
        && back.proposals().stream()
            .allMatch(
                each ->
                    each.standing() == Standing.UNCHANGED
                        || each.standing() == Standing.ALREADY_SO
                        || each.standing() == Standing.TAKEN_BEFORE);
  }

  private TakeBack takeBack(OpenedNotebook opened, Notebook notebook, SetupJson.Read read) {
    try {
      return TakeBack.of(notebook, read.file(), read.ridersChecksum(), pen().today());
    } catch (ShareException cannot) {
      throw Refusal.use(new ShareWords(opened.phrases()).sentence(cannot));
    }
  }

  private static Returned named(OpenedNotebook opened, TakeBack back, String name) {
    return back.proposals().stream()
        .filter(each -> isNamed(each, name.strip()))
        .findFirst()
        .orElseThrow(() -> Refusal.use(opened.say("take-back.no-proposal", name, names(back))));
  }

  private static boolean isNamed(Returned returned, String name) {
    return returned.id().text().equals(name)
        || returned.setting().filter(each -> each.name().equalsIgnoreCase(name)).isPresent();
  }

  private static String names(TakeBack back) {
    return String.join(
        ", ",
        back.proposals().stream()
            .map(each -> each.setting().map(it -> it.name()).orElse(each.id().text()))
            .toList());
  }

  private static void requireFollowable(OpenedNotebook opened, List<Returned> accepting) {
    for (Returned each : accepting) {
      if (!each.standing().canBeFollowed()) {
        throw Refusal.use(new ShareWords(opened.phrases()).returned(each));
      }
    }
  }

  /** Held against the notebook as it is on the disk by then. */
  private Notebook kept(
      Notebook notebook,
      OpenedNotebook opened,
      SetupJson.Read read,
      EntryId id,
      List<Returned> accepting,
      Map<Returned, String> declining) {
    TakeBack back = takeBack(opened, notebook, read);
    Bike bike = notebook.shelf().bike(back.own().bike()).orElseThrow();
    int order = SessionStart.orderOn(notebook, bike, pen().today());
    Entry.Advice advice =
        back.advice(
            Head.of(id, bike.id(), pen().today(), order), () -> new ProposalId(pen().ids().next()));
    List<Edit> edits = new ArrayList<>(List.of(new AdviceEdit.TakeBack(advice)));
    for (Map.Entry<Returned, String> each : declining.entrySet()) {
      edits.add(
          new RebuildEdit.AnswerProposal(
              id, proposal(opened, advice, each.getKey()), new Answer.Declined(each.getValue())));
    }
    Notebook next = new Edit.Together(edits).applyTo(notebook);
    for (Returned each : accepting) {
      next = followed(next, bike, id, proposal(opened, advice, each)).applyTo(next);
    }
    return next;
  }

  private static ProposalId proposal(
      OpenedNotebook opened, Entry.Advice advice, Returned returned) {
    return advice.proposals().stream()
        .filter(each -> each.setting().equals(returned.id()))
        .map(Proposal::id)
        .findFirst()
        .orElseThrow(() -> Refusal.use(new ShareWords(opened.phrases()).returned(returned)));
  }

  private Edit followed(Notebook notebook, Bike bike, EntryId advice, ProposalId proposal) {
    Optional<NextMoto> next = NextMoto.of(notebook, bike.id(), pen().today(), pen().ids());
    if (next.isPresent()) {
      return new AdviceEdit.Follow(advice, proposal, next.get().session(), next.get().moto());
    }
    int order = SessionStart.orderOn(notebook, bike, pen().today());
    EntryId id = new EntryId(pen().ids().next());
    return new AdviceEdit.FollowBetween(
        advice, proposal, Head.of(id, bike.id(), pen().today(), order));
  }

  private void lines(OpenedNotebook opened, TakeBack back, SetupJson.Read read, boolean kept) {
    ShareWords words = new ShareWords(opened.phrases());
    terminal().line(words.from(back.coach()));
    words
        .remarks(back, read.hasChecksum())
        .forEach(remark -> terminal().line(2, opened.say("caution", remark)));
    for (Returned each : back.proposals()) {
      terminal().line(2, words.returned(each));
      if (!each.suggested().reason().isBlank()) {
        terminal().line(4, opened.say("note", each.suggested().reason()));
      }
    }
    if (!back.coach().general().isBlank()) {
      terminal().line(2, opened.say("note", back.coach().general()));
    }
    terminal().line(opened.say(kept ? "take-back.kept" : "take-back.not-kept"));
  }
}
