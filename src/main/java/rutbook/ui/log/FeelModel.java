package rutbook.ui.log;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import rutbook.notebook.Entry;
import rutbook.notebook.Feel;
import rutbook.notebook.Moto;
import rutbook.notebook.MotoId;
import rutbook.notebook.Timeline;

/**
 * What fast feel entry shows for one moto: what is noted, and what bothered in the motos before, to
 * be called gone or same with one touch.
 */
public record FeelModel(Moto moto, List<Standing> standing) {
  /** So many motos back is looked for what may still be there. */
  public static final int MOTOS_BACK = 3;

  /** A symptom of the motos before, how bad it was last, and what is said of it now. */
  public record Standing(Feel last, OptionalInt now) {
    public Feel.Key key() {
      return last.key();
    }
  }

  public FeelModel {
    standing = List.copyOf(standing);
  }

  /** Empty when there is no such moto. */
  public static Optional<FeelModel> of(Timeline timeline, Entry.Session session, MotoId id) {
    Optional<Moto> moto = session.motos().stream().filter(each -> each.id().equals(id)).findFirst();
    return moto.map(it -> new FeelModel(it, standing(lastThat(timeline, session, it), it)));
  }

  /** The latest motos before one that say anything of feel, oldest first. */
  private static List<Moto> lastThat(Timeline timeline, Entry.Session session, Moto moto) {
    Deque<Moto> said = new ArrayDeque<>();
    List<Entry> entries = timeline.entries();
    boolean reached = false;
    for (int i = entries.size() - 1; i >= 0 && said.size() < MOTOS_BACK; i--) {
      if (!(entries.get(i) instanceof Entry.Session each)) {
        continue;
      }
      for (int m = each.motos().size() - 1; m >= 0 && said.size() < MOTOS_BACK; m--) {
        Moto before = each.motos().get(m);
        if (reached && !before.report().feel().isEmpty()) {
          said.addFirst(before);
        }
        reached |= each.id().equals(session.id()) && before.id().equals(moto.id());
      }
    }
    return List.copyOf(said);
  }

  /** Worst first; what was looked for last and not there bothers no more. */
  private static List<Standing> standing(List<Moto> before, Moto moto) {
    Map<Feel.Key, Feel> last = new LinkedHashMap<>();
    for (Moto each : before) {
      each.report().feel().forEach(feel -> last.put(feel.key(), feel));
    }
    return last.values().stream()
        .filter(feel -> feel.severity() > 0)
        .sorted((a, b) -> b.severity() - a.severity())
        .map(feel -> new Standing(feel, now(moto, feel.key())))
        .toList();
  }

  private static OptionalInt now(Moto moto, Feel.Key key) {
    Optional<Feel> feel = moto.report().feel(key);
    return feel.isPresent() ? OptionalInt.of(feel.get().severity()) : OptionalInt.empty();
  }

  /** What is noted and did not stand ready. */
  public List<Feel> fresh() {
    return moto.report().feel().stream()
        .filter(feel -> standing.stream().noneMatch(each -> each.key().equals(feel.key())))
        .toList();
  }
}
