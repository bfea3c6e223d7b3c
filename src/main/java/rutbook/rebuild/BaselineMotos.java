package rutbook.rebuild;

import java.util.ArrayList;
import java.util.List;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Moto;
import rutbook.notebook.MotoKind;
import rutbook.notebook.Placed;
import rutbook.notebook.Setup;
import rutbook.notebook.Timeline;

/** Finds the motos that a confirmation compares. */
public final class BaselineMotos {
  /** So many of the last motos on the baseline speak for it. */
  public static final int MOST_BEFORE = 3;

  private static final int MOST_AFTER = 2;

  private BaselineMotos() {}

  /** The last motos before an entry that were ridden on a setup, oldest first. */
  public static List<Moto> before(Timeline timeline, EntryId entry, Setup baseline) {
    List<Moto> motos = new ArrayList<>();
    for (Entry each : timeline.entries()) {
      if (each.id().equals(entry)) {
        break;
      }
      if (each instanceof Entry.Session session) {
        motos.addAll(riddenOn(session, baseline));
      }
    }
    return List.copyOf(motos.subList(Math.max(0, motos.size() - MOST_BEFORE), motos.size()));
  }

  private static List<Moto> riddenOn(Entry.Session session, Setup setup) {
    List<Moto> motos = new ArrayList<>();
    List<Setup> setups = session.setups();
    for (int i = 0; i < setups.size(); i++) {
      Moto moto = session.motos().get(i);
      if (speaks(moto) && same(setups.get(i), setup)) {
        motos.add(moto);
      }
    }
    return motos;
  }

  /** A test ride, and a moto that the rider doubts, do not speak for a setup. */
  private static boolean speaks(Moto moto) {
    return moto.kind() != MotoKind.TEST && !moto.report().doubtful();
  }

  /** Whether a setup agrees with another in everything that the other knows. */
  private static boolean same(Setup setup, Setup known) {
    for (Placed placed : known.placed()) {
      boolean agrees =
          !placed.reading().isKnown()
              || setup.reading(placed.setting()).map(placed.reading()::sameAs).orElse(false);
      if (!agrees) {
        return false;
      }
    }
    return true;
  }

  /** The first motos after an entry, up to the first change of setup: one, or two with a repeat. */
  public static List<Moto> after(Timeline timeline, EntryId entry) {
    Setup left = timeline.after(entry);
    List<Moto> motos = new ArrayList<>();
    boolean later = false;
    for (Entry each : timeline.entries()) {
      if (later && each instanceof Entry.Session session) {
        List<Setup> setups = session.setups();
        for (int i = 0; i < setups.size() && motos.size() < MOST_AFTER; i++) {
          if (!same(setups.get(i), left)) {
            return List.copyOf(motos);
          }
          if (speaks(session.motos().get(i))) {
            motos.add(session.motos().get(i));
          }
        }
      }
      later |= each.id().equals(entry);
    }
    return List.copyOf(motos);
  }
}
