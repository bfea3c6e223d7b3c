package rutbook.ui;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import rutbook.notebook.Notebook;
import rutbook.notebook.Renewed;
import rutbook.notebook.Scope;
import rutbook.notebook.SettingId;

/** One of each place that the window can show, in the sample season with a rebuild under way. */
final class EveryPlace {
  static final Notebook NOTEBOOK =
      BenchJobs.begun(
          RiddenSuggestions.riddenAndNotAsked(),
          RiddenSuggestions.BIKE,
          Scope.FORK,
          Renewed.OIL,
          Renewed.SEALS);

  private EveryPlace() {}

  static Map<String, Place> all() {
    Map<String, Place> places = new LinkedHashMap<>();
    for (Pages.OnRail page : Pages.RAIL) {
      places.put(page.name(), page.place());
    }
    places.put(
        "session", new Place.Session(RiddenSuggestions.lastDay(RiddenSuggestions.SEASON).id()));
    places.put("setting", new Place.OfSetting(new SettingId("fork-compression")));
    for (Place.BikePart part : Place.BikePart.values()) {
      places.put("bike " + part, new Place.Bike(part));
    }
    places.put("hand over", new Place.HandOver());
    places.put("job", new Place.Job(BenchJobs.JOB));
    places.put("paper", new Place.Paper(BenchJobs.JOB));
    places.put("bench", new Place.Bench(BenchJobs.JOB, Optional.empty()));
    return places;
  }
}
