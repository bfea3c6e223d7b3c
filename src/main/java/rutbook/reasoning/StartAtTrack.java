package rutbook.reasoning;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.BikeId;
import rutbook.notebook.Bounds;
import rutbook.notebook.Conditions;
import rutbook.notebook.Entry;
import rutbook.notebook.Notebook;
import rutbook.notebook.Placed;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Timeline;
import rutbook.notebook.Track;

/**
 * What to start with at a track: from the ride most like it, and of that ride the moto with the
 * best trust and the least written of complaints. A setting stands as it was there where the
 * rider's own motos speak of it; otherwise the baseline holds.
 *
 * @param like the session that it goes by; empty when nothing was ridden
 * @param moto its moto, counted from 0
 * @param distance how unlike the ground is, 0 the same to 1
 * @param settings every setting of the sheet for which there is a reading
 */
public record StartAtTrack(
    Optional<Entry.Session> like, int moto, double distance, List<From> settings) {

  public StartAtTrack {
    settings = List.copyOf(settings);
  }

  /** Where a reading comes from. */
  public enum Basis {
    /** The rider's own motos, at the track that is most like it. */
    OWN_MOTOS,
    BASELINE
  }

  /** A reading, inside the limits in force, and where it comes from. */
  public record From(Setting setting, Reading reading, Basis basis) {}

  /**
   * The start for a bike.
   *
   * @param expected conditions, as far as they are known
   */
  public static StartAtTrack of(
      Notebook notebook, BikeId bike, Track track, Conditions expected, RuleBook rules) {
    Timeline timeline = Timeline.of(notebook, bike);
    List<Ride> rides = Ride.of(timeline);
    Likeness likeness = new Likeness(notebook.shelf());
    Sheet sheet = timeline.bike().latestSheet();
    Optional<Ride> best =
        rides.stream()
            .min(
                Comparator.comparingDouble(
                        (Ride ride) -> likeness.distance(ride.session(), track, expected))
                    .thenComparingInt(ride -> -ride.moto().report().trust().orElse(0))
                    .thenComparingInt(StartAtTrack::written)
                    .thenComparingInt(ride -> -ride.day())
                    .thenComparingInt(ride -> -ride.order()));
    Setup baseline = timeline.baseline().map(Entry.Baseline::setup).orElse(Setup.EMPTY);
    Ledger ledger = Ledger.of(notebook, bike, rules);
    List<From> settings =
        sheet.settings().stream()
            .flatMap(each -> from(sheet, each, best, baseline, ledger).stream())
            .toList();
    return new StartAtTrack(
        best.map(Ride::session),
        best.map(ride -> ride.session().motos().indexOf(ride.moto())).orElse(0),
        best.map(ride -> likeness.distance(ride.session(), track, expected)).orElse(1.0),
        settings);
  }

  /** The readings on top of what is on the bike: a setting of which nothing is known stays. */
  public Setup on(Setup now) {
    Setup setup = now;
    for (From from : settings) {
      setup = setup.with(Placed.set(from.setting().id(), from.reading()));
    }
    return setup;
  }

  private static int written(Ride ride) {
    return ride.feel().values().stream().mapToInt(each -> each.severity()).sum();
  }

  private static Optional<From> from(
      Sheet sheet, Setting setting, Optional<Ride> best, Setup baseline, Ledger ledger) {
    boolean known =
        ledger.rows().stream()
            .anyMatch(row -> row.setting().id().equals(setting.id()) && !row.trials().isEmpty());
    Optional<Reading> there =
        best.flatMap(ride -> ride.setup().reading(setting.id())).filter(Reading::isKnown);
    Optional<Reading> usual = baseline.reading(setting.id()).filter(Reading::isKnown);
    Basis basis =
        there.isPresent() && (known || usual.isEmpty()) ? Basis.OWN_MOTOS : Basis.BASELINE;
    return (basis == Basis.OWN_MOTOS ? there : usual)
        .map(reading -> new From(setting, Bounds.hold(sheet, setting, reading), basis));
  }
}
