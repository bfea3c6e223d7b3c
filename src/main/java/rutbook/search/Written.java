package rutbook.search;

import java.util.ArrayList;
import java.util.List;
import rutbook.notebook.Change;
import rutbook.notebook.Entry;
import rutbook.notebook.Lap;
import rutbook.notebook.Moto;
import rutbook.notebook.Proposal;
import rutbook.notebook.Source;

/** Everything that somebody wrote into an entry in words of their own. */
final class Written {
  private final List<String> texts = new ArrayList<>();

  private Written() {}

  /** In the order in which it stands in the entry; empty texts left out. */
  static List<String> in(Entry entry) {
    Written written = new Written();
    written.add(entry.head().note());
    written.addKind(entry);
    return List.copyOf(written.texts);
  }

  private void addKind(Entry entry) {
    if (entry instanceof Entry.Session session) {
      session.motos().forEach(this::addMoto);
    } else if (entry instanceof Entry.Adjusted adjusted) {
      addChanges(adjusted.changes());
    } else if (entry instanceof Entry.Baseline baseline) {
      add(baseline.reason());
    } else if (entry instanceof Entry.Event event) {
      add(event.what());
    } else if (entry instanceof Entry.Serviced serviced) {
      add(serviced.by());
    } else if (entry instanceof Entry.GateDismissed dismissed) {
      add(dismissed.reason());
    } else if (entry instanceof Entry.Advice advice) {
      addAdvice(advice);
    }
  }

  private void addMoto(Moto moto) {
    add(moto.note());
    addChanges(moto.changes());
    for (Lap lap : moto.report().laps()) {
      lap.dropped().ifPresent(this::add);
    }
  }

  private void addChanges(List<Change> changes) {
    changes.forEach(change -> add(change.why()));
  }

  private void addAdvice(Entry.Advice advice) {
    add(advice.general());
    if (advice.source() instanceof Source.Coach coach) {
      add(coach.name());
    }
    for (Proposal proposal : advice.proposals()) {
      add(proposal.reason());
    }
  }

  private void add(String text) {
    if (!text.isBlank()) {
      texts.add(text);
    }
  }
}
