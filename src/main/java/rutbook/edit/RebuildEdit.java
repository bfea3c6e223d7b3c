package rutbook.edit;

import rutbook.notebook.Answer;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Fault;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Outcome;
import rutbook.notebook.Proposal;
import rutbook.notebook.ProposalId;
import rutbook.notebook.StepDone;
import rutbook.notebook.StepId;

/** Edits of what is walked step by step: a rebuild, and the answers to advice. */
public sealed interface RebuildEdit extends Edit {
  /** A step entered; entered again, it replaces what stood there. */
  record Enter(EntryId rebuild, StepDone step) implements RebuildEdit {
    @Override
    public Notebook applyTo(Notebook notebook) {
      return notebook.with(job(notebook, rebuild).withDone(step));
    }
  }

  /** A step taken back: it is to be done again. */
  record Reopen(EntryId rebuild, StepId step) implements RebuildEdit {
    @Override
    public Notebook applyTo(Notebook notebook) {
      return notebook.with(job(notebook, rebuild).withoutDone(step));
    }
  }

  record End(EntryId rebuild, Outcome outcome) implements RebuildEdit {
    @Override
    public Notebook applyTo(Notebook notebook) {
      return notebook.with(job(notebook, rebuild).ended(outcome));
    }
  }

  /** What the rider says to a proposal. */
  record AnswerProposal(EntryId advice, ProposalId proposal, Answer answer) implements RebuildEdit {
    @Override
    public Notebook applyTo(Notebook notebook) {
      Entry.Advice before = EntryEdit.entry(notebook, advice, Entry.Advice.class);
      if (before.proposals().stream().noneMatch(each -> each.id().equals(proposal))) {
        throw new NotebookException(Fault.UNKNOWN_ID, "proposal", proposal);
      }
      return notebook.with(
          new Entry.Advice(
              before.head(),
              before.source(),
              before.proposals().stream().map(this::answered).toList(),
              before.general()));
    }

    private Proposal answered(Proposal each) {
      return each.id().equals(proposal) ? each.answered(answer) : each;
    }
  }

  private static Entry.RebuildJob job(Notebook notebook, EntryId id) {
    return EntryEdit.entry(notebook, id, Entry.RebuildJob.class);
  }
}
