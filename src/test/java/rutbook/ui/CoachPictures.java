package rutbook.ui;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rutbook.edit.AdviceEdit;
import rutbook.json.SetupJson;
import rutbook.notebook.Bike;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.HandOverId;
import rutbook.notebook.Head;
import rutbook.notebook.Notebook;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Shared;
import rutbook.notebook.Timeline;
import rutbook.samples.Samples;
import rutbook.share.CoachPart;
import rutbook.share.HandOver;
import rutbook.share.Packing;
import rutbook.share.SetupFile;
import rutbook.share.Suggested;
import rutbook.ui.Pictures.View;
import rutbook.units.Amount;

/** The season on its way to a coach and back, for pictures and tests. */
final class CoachPictures {
  static final LocalDate TODAY = LocalDate.of(2026, 10, 17);
  private static final String LONG =
      "Alexandra-Wilhelmina van der Oosterhuizen-Montgomery of the Northern Dunes";

  private CoachPictures() {}

  /** A file of some sessions of the notebook, in which the coach has said nothing yet. */
  static SetupFile handedOver(Notebook notebook, String id, Optional<String> by) {
    Bike bike = notebook.bikes().get(0);
    Timeline timeline = Timeline.of(notebook, bike.id());
    SideOptions options =
        new SideOptions(
            notebook.shelf(), timeline, rutbook.words.Phrases.english(notebook.display()));
    List<rutbook.compare.Subject> chosen =
        options.onBike("").stream()
            .filter(option -> option.key().equals("now") || option.key().startsWith("session:"))
            .limit(4)
            .map(option -> option.onBike(timeline))
            .toList();
    Set<Shared> shared = EnumSet.of(Shared.PLACE_NAMES, Shared.LAPS);
    HandOver handOver =
        new HandOver(
            new HandOverId(id),
            notebook.id(),
            TODAY,
            shared,
            "The rear kicks on braking bumps since the track got rough. What first?");
    return Packing.of(notebook, timeline, chosen, handOver, by);
  }

  /** The notebook with the record of it. */
  static Notebook recorded(Notebook notebook, SetupFile file) {
    Bike bike = notebook.bikes().get(0);
    Entry.HandedOver record =
        new Entry.HandedOver(
            Head.of(new EntryId("handed-1"), bike.id(), TODAY, 50),
            file.handOver().id(),
            file.snapshot(),
            SetupJson.checksum(file));
    return new AdviceEdit.HandOver(record).applyTo(notebook);
  }

  /** Some proposals inside the limits, with reasons. */
  static SetupFile advised(SetupFile file) {
    CoachPart coach =
        CoachPart.of("Robin")
            .advising("Let the fork be for now. One change at a time, two motos each.");
    int moved = 0;
    for (Setting setting : file.sheet().settings()) {
      if (setting.role().isClicker() && moved < 3) {
        Optional<Reading> now = file.asked().setup().reading(setting.id());
        Optional<Reading> to =
            now.map(reading -> reading.map(amount -> stepped(file, setting, amount)));
        if (to.isPresent() && to.get().isKnown() && !to.get().sameAs(now.get())) {
          coach =
              coach.with(
                  new Suggested(setting.id(), to.get(), "It packs when the bumps follow closely."));
          moved++;
        }
      }
    }
    return file.with(coach.handedBackOn(TODAY));
  }

  private static Amount stepped(SetupFile file, Setting setting, Amount amount) {
    Amount step = setting.scale().step();
    Amount up = amount.withValue(amount.value().add(step.value()).add(step.value()));
    return file.sheet().limits(setting).contains(up) ? up : amount;
  }

  static OutsideFiles.Opened opened(SetupFile file) {
    return new OutsideFiles.Opened(file, true, SetupJson.checksum(file.asHandedOver()));
  }

  /** A shelf with many riders, long names and one that would turn the line. */
  static void fill(InMemory outside) {
    Notebook season = Samples.season();
    for (int i = 0; i < 40; i++) {
      String name =
          switch (i) {
            case 0 -> LONG;
            case 1 -> "Ada \u202Eecnirp";
            case 2 -> "\u05D3\u05E0\u05D9 \u05DC\u05D5\u05D9";
            default -> "Rider " + (i < 10 ? "0" : "") + i;
          };
      Notebook own = season.copiedAs(new rutbook.notebook.NotebookId("notebook-" + i));
      SetupFile file = handedOver(own, "h-" + i, Optional.of(name));
      outside.shelf.put("rider-" + i, i % 3 == 0 ? advised(file) : file);
    }
  }

  static List<View> views() {
    Notebook season = Samples.season();
    Notebook empty = Notebook.empty(new rutbook.notebook.NotebookId("empty"));
    SetupFile file = handedOver(season, "h-1", Optional.empty());
    SetupFile answer = advised(file);
    Notebook recorded = recorded(season, file);
    List<View> views = new ArrayList<>();
    views.add(new View("empty-coach", empty, shown -> shown.go(new Place.Coach())));
    views.add(new View("season-coach-nothing", season, shown -> shown.go(new Place.Coach())));
    views.add(
        new View(
            "season-coach-riders-empty",
            season,
            shown -> {
              shown.go(new Place.Coach());
              shown.touch("coach-riders");
            }));
    views.add(
        new View(
            "season-coach-riders",
            season,
            shown -> {
              fill(shown.outside());
              shown.go(new Place.Coach());
              shown.touch("coach-riders");
            }));
    views.add(new View("season-hand-over", season, shown -> shown.go(new Place.HandOver())));
    views.add(
        new View(
            "season-take-back", recorded, shown -> shown.go(new Place.TakeBack(opened(answer)))));
    views.add(
        new View(
            "season-take-back-kept",
            recorded,
            shown -> {
              shown.go(new Place.TakeBack(opened(answer)));
              shown.touch(
                  "take-back-keep",
                  "decline-" + answer.coach().orElseThrow().proposals().get(0).setting());
            }));
    views.add(new View("season-coach-waiting", recorded, shown -> shown.go(new Place.Coach())));
    views.add(new View("season-guest", season, shown -> shown.go(new Place.Guest(opened(file)))));
    views.add(
        new View(
            "season-guest-advised", season, shown -> shown.go(new Place.Guest(opened(answer)))));
    Entry.Session latest =
        Timeline.of(season, season.bikes().get(0).id()).latest(Entry.Session.class).orElseThrow();
    views.add(
        new View(
            "season-import-laps",
            season,
            shown ->
                shown.go(
                    new Place.ImportLaps(
                        latest.id(),
                        latest.motos().get(0).id(),
                        ImportPageTest.grid(
                            ImportPageTest.LAPS.replace("Jo Fenn", "Imke Adler"))))));
    views.add(
        new View(
            "season-import-setups",
            season,
            shown ->
                shown.go(
                    new Place.ImportSetups(
                        ImportPageTest.grid(ImportPageTest.SETUPS.replace("05/08", "25/08"))))));
    return views;
  }
}
