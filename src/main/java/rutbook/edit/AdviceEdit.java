package rutbook.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.Answer;
import rutbook.notebook.Bounds;
import rutbook.notebook.Change;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Fault;
import rutbook.notebook.HandOverId;
import rutbook.notebook.Head;
import rutbook.notebook.Moto;
import rutbook.notebook.MotoId;
import rutbook.notebook.MotoKind;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Proposal;
import rutbook.notebook.ProposalId;
import rutbook.notebook.Reading;
import rutbook.notebook.Report;
import rutbook.notebook.Setting;
import rutbook.notebook.Sheet;
import rutbook.notebook.Source;

/** Edits of what goes to the coach and comes back, and of proposals that are followed. */
public sealed interface AdviceEdit extends Edit {

  /** A setup handed over: one's own record of it. */
  record HandOver(Entry.HandedOver record) implements AdviceEdit {
    @Override
    public Notebook applyTo(Notebook notebook) {
      if (handedOver(notebook, record.handOver()).isPresent()) {
        throw new NotebookException(Fault.TWICE, "hand-over", record.handOver());
      }
      return new EntryEdit.Add(record).applyTo(notebook);
    }
  }

  /**
   * What the coach says, taken into the notebook: of a bike that was handed over, and with ids that
   * nothing in the notebook has.
   */
  record TakeBack(Entry.Advice advice) implements AdviceEdit {
    @Override
    public Notebook applyTo(Notebook notebook) {
      if (!(advice.source() instanceof Source.Coach coach)) {
        throw new NotebookException(Fault.EMPTY, "coach");
      }
      Optional<Entry.HandedOver> own = handedOver(notebook, coach.handOver());
      if (own.isEmpty() || !own.get().bike().equals(advice.bike())) {
        throw new NotebookException(Fault.UNKNOWN_ID, "hand-over", coach.handOver());
      }
      for (Proposal each : advice.proposals()) {
        if (isThere(notebook, each.id())) {
          throw new NotebookException(Fault.TWICE, "proposal", each.id());
        }
      }
      return new EntryEdit.Add(advice).applyTo(notebook);
    }

    private static boolean isThere(Notebook notebook, ProposalId id) {
      return notebook.entries().stream()
          .filter(Entry.Advice.class::isInstance)
          .flatMap(entry -> ((Entry.Advice) entry).proposals().stream())
          .anyMatch(each -> each.id().equals(id));
    }
  }

  /**
   * A proposal taken as the change before a moto, which is added when the session does not have it
   * yet; as far as the limits of that day allow.
   */
  record Follow(EntryId advice, ProposalId proposal, EntryId session, MotoId moto)
      implements AdviceEdit {
    @Override
    public Notebook applyTo(Notebook notebook) {
      Entry.Advice from = EntryEdit.entry(notebook, advice, Entry.Advice.class);
      Entry.Session at = EntryEdit.entry(notebook, session, Entry.Session.class);
      Change change = change(notebook, from, proposal, at);
      Edit ride =
          at.moto(moto).isPresent()
              ? new MotoEdit.ChangeSetting(session, moto, change)
              : new SessionEdit.AddMoto(session, ridden(change));
      Notebook next = ride.applyTo(notebook);
      return isWhole(from, change)
          ? new RebuildEdit.AnswerProposal(advice, proposal, new Answer.Accepted(moto))
              .applyTo(next)
          : next;
    }

    private Moto ridden(Change change) {
      return new Moto(moto, MotoKind.MOTO, List.of(change), Report.EMPTY, Optional.empty(), "");
    }

    /** Not held at a limit: then the answer says so, and stays. */
    private boolean isWhole(Entry.Advice from, Change change) {
      return proposed(from, proposal).to().sameAs(change.to());
    }
  }

  /** A proposal taken as a change between sessions, as far as the limits of that day allow. */
  record FollowBetween(EntryId advice, ProposalId proposal, Head head) implements AdviceEdit {
    @Override
    public Notebook applyTo(Notebook notebook) {
      Entry.Advice from = EntryEdit.entry(notebook, advice, Entry.Advice.class);
      Entry.Adjusted empty = new Entry.Adjusted(head, List.of());
      List<Change> changes = new ArrayList<>();
      changes.add(change(notebook, from, proposal, empty));
      return new EntryEdit.Add(new Entry.Adjusted(head, changes)).applyTo(notebook);
    }
  }

  private static Optional<Entry.HandedOver> handedOver(Notebook notebook, HandOverId id) {
    return notebook.entries().stream()
        .filter(Entry.HandedOver.class::isInstance)
        .map(Entry.HandedOver.class::cast)
        .filter(each -> each.handOver().equals(id))
        .findFirst();
  }

  private static Proposal proposed(Entry.Advice advice, ProposalId id) {
    return advice.proposals().stream()
        .filter(each -> each.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new NotebookException(Fault.UNKNOWN_ID, "proposal", id));
  }

  /** The change that a proposal comes to on the day of an entry of the same bike. */
  private static Change change(Notebook notebook, Entry.Advice advice, ProposalId id, Entry on) {
    if (!on.bike().equals(advice.bike())) {
      throw new NotebookException(Fault.UNKNOWN_ID, "proposal", id);
    }
    Proposal proposal = proposed(advice, id);
    Sheet sheet = notebook.shelf().bike(on.bike()).orElseThrow().sheetOn(on.day());
    Setting setting =
        sheet
            .setting(proposal.setting())
            .orElseThrow(
                () -> new NotebookException(Fault.UNKNOWN_ID, "setting", proposal.setting()));
    Reading to = Bounds.hold(sheet, setting, proposal.to());
    return new Change(setting.id(), to, Optional.of(id), "");
  }
}
