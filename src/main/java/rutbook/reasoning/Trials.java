package rutbook.reasoning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rutbook.notebook.Change;
import rutbook.notebook.Feel;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;

/** Every change that was ridden before and after on the same day, by complaint and setting. */
final class Trials {
  private final Map<Complaint, Map<SettingId, List<Trial>>> found = new HashMap<>();

  static Trials of(List<Ride> rides, List<Setting> settings) {
    Map<SettingId, Setting> byId = new HashMap<>();
    settings.forEach(each -> byId.put(each.id(), each));
    Trials trials = new Trials();
    for (int i = 1; i < rides.size(); i++) {
      Ride before = rides.get(i - 1);
      Ride after = rides.get(i);
      if (before.day() == after.day() && after.order() == before.order() + 1) {
        trials.add(before, after, byId);
      }
    }
    return trials;
  }

  private void add(Ride before, Ride after, Map<SettingId, Setting> byId) {
    List<Change> moved =
        after.moto().changes().stream()
            .filter(
                change ->
                    before
                        .setup()
                        .reading(change.setting())
                        .map(was -> !was.sameAs(change.to()))
                        .orElse(true))
            .toList();
    for (Change change : moved) {
      Optional<Setting> setting = Optional.ofNullable(byId.get(change.setting()));
      Optional<Reading> was = before.setup().reading(change.setting());
      Optional<Double> from = setting.flatMap(it -> was.flatMap(each -> Doses.of(it, each)));
      Optional<Double> to = setting.flatMap(it -> Doses.of(it, change.to()));
      if (from.isPresent() && to.isPresent()) {
        add(before, after, change.setting(), to.get() - from.get(), moved.size() == 1);
      }
    }
  }

  private void add(Ride before, Ride after, SettingId setting, double doses, boolean clean) {
    for (Map.Entry<Complaint, Feel> rated : before.feel().entrySet()) {
      Feel then = after.feel().get(rated.getKey());
      if (then != null && doses != 0) {
        found
            .computeIfAbsent(rated.getKey(), key -> new HashMap<>())
            .computeIfAbsent(setting, key -> new ArrayList<>())
            .add(
                new Trial(
                    after.session().id(),
                    after.session().day(),
                    before.moto().id(),
                    after.moto().id(),
                    doses,
                    rated.getValue().severity(),
                    then.severity(),
                    clean));
      }
    }
  }

  /** Oldest first. */
  List<Trial> of(Complaint complaint, SettingId setting) {
    return List.copyOf(found.getOrDefault(complaint, Map.of()).getOrDefault(setting, List.of()));
  }
}
