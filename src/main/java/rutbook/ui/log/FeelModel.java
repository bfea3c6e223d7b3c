package rutbook.ui.log;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import rutbook.notebook.Entry;
import rutbook.notebook.Feel;
import rutbook.notebook.Moto;
import rutbook.notebook.MotoId;
import rutbook.notebook.Notebook;
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
  public static Optional<FeelModel> of(Notebook notebook, Entry.Session session, MotoId id) {
    List<Moto> before = new ArrayList<>();
    for (Entry.Session each : Timeline.of(notebook, session.bike()).sessions()) {
      for (Moto moto : each.motos()) {
        if (each.id().equals(session.id()) && moto.id().equals(id)) {
          return Optional.of(new FeelModel(moto, standing(lastThat(before), moto)));
        }
        before.add(moto);
      }
    }
    return Optional.empty();
  }

  /** The latest motos that say anything of feel, oldest first. */
  private static List<Moto> lastThat(List<Moto> before) {
    List<Moto> said = before.stream().filter(moto -> !moto.report().feel().isEmpty()).toList();
    return said.subList(Math.max(0, said.size() - MOTOS_BACK), said.size());
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
