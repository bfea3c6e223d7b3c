package rutbook.share;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rutbook.notebook.Answer;
import rutbook.notebook.Checks;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Fault;
import rutbook.notebook.Head;
import rutbook.notebook.MotoId;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookException;
import rutbook.notebook.NotebookId;
import rutbook.notebook.Proposal;
import rutbook.notebook.ProposalId;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Sheet;
import rutbook.notebook.Snapshot;
import rutbook.notebook.Source;

/**
 * A setup file: what the rider hands over and, on the way back, what the coach says to it. It is
 * checked as what it is, a small notebook: ids, limits of the sheet, and the coach's proposals too.
 *
 * @param setups what is handed over; the first is the one that the coach is asked about
 */
public record SetupFile(
    HandOver handOver, Excerpt excerpt, List<ChosenSetup> setups, Optional<CoachPart> coach) {
  public static final int MOST_SETUPS = 20;

  /** Of the coach's proposals within {@link #asNotebook}; never that of an entry of the file. */
  private static final String COACH = "coach";

  public SetupFile {
    setups = Checks.list("setups", setups, MOST_SETUPS);
    if (setups.isEmpty()) {
      throw new NotebookException(Fault.EMPTY, "setups");
    }
    setups.forEach(each -> requireSession(excerpt, each));
    notebook(handOver, excerpt, setups, coach);
  }

  private static void requireSession(Excerpt excerpt, ChosenSetup setup) {
    if (setup.session().isEmpty()) {
      return;
    }
    EntryId id = setup.session().get();
    Entry.Session session =
        excerpt.sessions().stream()
            .filter(each -> each.id().equals(id))
            .findFirst()
            .orElseThrow(() -> new NotebookException(Fault.UNKNOWN_ID, "entry", id));
    Optional<MotoId> moto = setup.moto();
    if (moto.isPresent() && session.moto(moto.get()).isEmpty()) {
      throw new NotebookException(Fault.UNKNOWN_ID, "moto", moto.get());
    }
  }

  /** The setup that the coach is asked about. */
  public ChosenSetup asked() {
    return setups.get(0);
  }

  /** The sheet that bounds what the coach may propose. */
  public Sheet sheet() {
    return excerpt.bike().sheetOn(asked().sheetFrom());
  }

  /** The rider's own record of this handing over is made from this. */
  public Snapshot snapshot() {
    return new Snapshot(asked().setup(), asked().sheetFrom(), handOver.shared());
  }

  /**
   * The same file with the coach's part, which must stay inside the limits of the rider's sheet.
   *
   * @throws NotebookException when a proposal does not
   */
  public SetupFile with(CoachPart newCoach) {
    return new SetupFile(handOver, excerpt, setups, Optional.of(newCoach));
  }

  /** As it was handed over, without what the coach says. */
  public SetupFile asHandedOver() {
    return coach.isEmpty() ? this : new SetupFile(handOver, excerpt, setups, Optional.empty());
  }

  /**
   * The file as the notebook that it is a part of: its sessions and sag, each chosen setup as a
   * record of handing over, and the coach's proposals as advice. To look at, never to be saved.
   */
  public Notebook asNotebook() {
    return notebook(handOver, excerpt, setups, coach);
  }

  private static Notebook notebook(
      HandOver handOver, Excerpt excerpt, List<ChosenSetup> setups, Optional<CoachPart> coach) {
    List<Entry> entries = new ArrayList<>(excerpt.entries());
    for (int i = 0; i < setups.size(); i++) {
      ChosenSetup setup = setups.get(i);
      entries.add(
          new Entry.HandedOver(
              head("setup." + i, excerpt, setup, i),
              handOver.id(),
              new Snapshot(setup.setup(), setup.sheetFrom(), handOver.shared()),
              "-"));
    }
    coach.ifPresent(part -> entries.add(advice(handOver, excerpt, setups.get(0), part)));
    NotebookId id = handOver.notebook();
    return Notebook.of(id, excerpt.shelf(), entries, List.of(), excerpt.display());
  }

  private static Entry.Advice advice(
      HandOver handOver, Excerpt excerpt, ChosenSetup asked, CoachPart coach) {
    Sheet sheet = excerpt.bike().sheetOn(asked.sheetFrom());
    List<Proposal> proposals = new ArrayList<>();
    for (Suggested each : coach.proposals()) {
      proposals.add(
          new Proposal(
              new ProposalId(COACH + "." + proposals.size()),
              each.setting(),
              from(sheet, asked, each.setting()),
              each.to(),
              each.reason(),
              OptionalDouble.empty(),
              new Answer.Open()));
    }
    Head head = Head.of(new EntryId(COACH), excerpt.bike().id(), asked.sheetFrom(), 10_000);
    return new Entry.Advice(
        head, new Source.Coach(handOver.id(), coach.name()), proposals, coach.general());
  }

  private static Reading from(Sheet sheet, ChosenSetup asked, SettingId id) {
    Setting setting =
        sheet.setting(id).orElseThrow(() -> new NotebookException(Fault.UNKNOWN_ID, "setting", id));
    return asked
        .setup()
        .reading(id)
        .orElseThrow(() -> new NotebookException(Fault.MISSING_SETTING, setting.name()));
  }

  private static Head head(String id, Excerpt excerpt, ChosenSetup setup, int order) {
    return Head.of(new EntryId(id), excerpt.bike().id(), setup.day(), order);
  }
}
