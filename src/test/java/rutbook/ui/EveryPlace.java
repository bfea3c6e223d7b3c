package rutbook.ui;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import rutbook.notebook.Entry;
import rutbook.notebook.Notebook;
import rutbook.notebook.Renewed;
import rutbook.notebook.Scope;
import rutbook.notebook.SettingId;
import rutbook.share.SetupFile;

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

  /** Those that show what was read from elsewhere, and those that stand on another page. */
  static Map<String, Place> read() {
    SetupFile file = CoachPictures.handedOver(NOTEBOOK, "h-1", Optional.empty());
    Entry.Session last = RiddenSuggestions.lastDay(RiddenSuggestions.SEASON);
    Map<String, Place> places = new LinkedHashMap<>();
    places.put("take back", new Place.TakeBack(CoachPictures.opened(CoachPictures.advised(file))));
    places.put("guest", new Place.Guest(CoachPictures.opened(file)));
    places.put(
        "import laps",
        new Place.ImportLaps(
            last.id(), last.motos().get(0).id(), ImportPageTest.grid(ImportPageTest.LAPS)));
    places.put("import setups", new Place.ImportSetups(ImportPageTest.grid(ImportPageTest.SETUPS)));
    places.put("meter", new Place.Meter());
    return places;
  }
}
