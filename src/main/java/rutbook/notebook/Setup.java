package rutbook.notebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A reading for each setting of a bike. */
public record Setup(List<Placed> placed) {
  public static final Setup EMPTY = new Setup(List.of());

  public Setup {
    placed = Checks.unique("setting", placed, Placed::setting);
  }

  public Optional<Placed> placed(SettingId id) {
    for (Placed each : placed) {
      if (each.setting().equals(id)) {
        return Optional.of(each);
      }
    }
    return Optional.empty();
  }

  public Optional<Reading> reading(SettingId id) {
    return placed(id).map(Placed::reading);
  }

  /** This setup with one reading replaced, in its place, or added at the end. */
  public Setup with(Placed changed) {
    List<Placed> next = new ArrayList<>(placed);
    for (int i = 0; i < next.size(); i++) {
      if (next.get(i).setting().equals(changed.setting())) {
        next.set(i, changed);
        return new Setup(next);
      }
    }
    next.add(changed);
    return new Setup(next);
  }

  /** This setup after some changes, each an absolute target. */
  public Setup after(List<Change> changes) {
    Setup next = this;
    for (Change change : changes) {
      next = next.with(Placed.set(change.setting(), change.to()));
    }
    return next;
  }
}
