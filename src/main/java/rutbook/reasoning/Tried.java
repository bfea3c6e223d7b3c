package rutbook.reasoning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.Entry;
import rutbook.notebook.Moto;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;

/** What was tried on a day at a track and gone back from: it is not proposed again. */
final class Tried {
  private Tried() {}

  /** Whether a target was tried in the session and reverted, with nothing else changed since. */
  static boolean andReverted(Entry.Session session, Setting setting, Reading from, Reading target) {
    Setup setup = session.start();
    List<Reading> held = new ArrayList<>();
    setup.reading(setting.id()).ifPresent(held::add);
    boolean otherSince = false;
    for (Moto moto : session.motos()) {
      Setup next = setup.after(moto.changes());
      Optional<Reading> here = next.reading(setting.id());
      boolean moved =
          here.isPresent() && (held.isEmpty() || !held.get(held.size() - 1).sameAs(here.get()));
      if (moved) {
        held.add(here.get());
        otherSince = false;
      }
      otherSince |= moto.changes().stream().anyMatch(c -> !c.setting().equals(setting.id()));
      setup = next;
    }
    for (int tried = 1; tried < held.size() - 1; tried++) {
      boolean back = held.subList(0, tried).stream().anyMatch(from::sameAs);
      if (back && held.get(tried).sameAs(target)) {
        return !otherSince;
      }
    }
    return false;
  }
}
