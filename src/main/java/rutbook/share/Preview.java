package rutbook.share;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import rutbook.notebook.Entry;
import rutbook.notebook.Moto;
import rutbook.notebook.Shared;
import rutbook.notebook.Sheet;
import rutbook.notebook.Track;
import rutbook.units.Amount;

/**
 * What is in a setup file, for the rider to see before it leaves: counted from the file itself, so
 * that it cannot say less than is in it.
 *
 * @param weights of the rider, of any day, and as noted with sag
 * @param notes every free text that goes along, where there is one
 * @param stays what was not ticked
 */
public record Preview(
    String rider,
    String bike,
    List<LocalDate> sheets,
    int settings,
    List<ChosenSetup> setups,
    List<Ride> rides,
    int sagMeasured,
    List<Amount> weights,
    List<String> notes,
    String question,
    Set<Shared> stays) {

  /**
   * A session that goes along.
   *
   * @param track its name, where names go along
   * @param laps how many lap times
   */
  public record Ride(
      LocalDate day, Optional<String> track, int motos, int changes, int feel, int laps) {}

  public static Preview of(SetupFile file) {
    Excerpt excerpt = file.excerpt();
    Set<Shared> stays = new TreeSet<>(List.of(Shared.values()));
    stays.removeAll(file.handOver().shared());
    return new Preview(
        excerpt.rider().name(),
        excerpt.bike().name(),
        excerpt.bike().sheets().stream().map(Sheet::from).toList(),
        file.sheet().settings().size(),
        file.setups(),
        excerpt.sessions().stream().map(session -> ride(file, session)).toList(),
        excerpt.sag().size(),
        weights(excerpt),
        notes(excerpt),
        file.handOver().question(),
        stays);
  }

  private static Ride ride(SetupFile file, Entry.Session session) {
    Optional<String> track =
        file.handOver().shares(Shared.PLACE_NAMES)
            ? file.excerpt().track(session).map(Track::name)
            : Optional.empty();
    List<Moto> motos = session.motos();
    return new Ride(
        session.day(),
        track,
        motos.size(),
        motos.stream().mapToInt(moto -> moto.changes().size()).sum(),
        motos.stream().mapToInt(moto -> moto.report().feel().size()).sum(),
        motos.stream().mapToInt(moto -> moto.report().laps().size()).sum());
  }

  private static List<Amount> weights(Excerpt excerpt) {
    List<Amount> weights = new ArrayList<>();
    excerpt.rider().weights().forEach(weight -> weights.add(weight.inGear()));
    excerpt.sag().forEach(sag -> sag.weight().ifPresent(weights::add));
    return weights;
  }

  private static List<String> notes(Excerpt excerpt) {
    List<String> notes = new ArrayList<>();
    excerpt.bike().sheets().forEach(sheet -> notes.add(sheet.reason()));
    excerpt.tracks().forEach(track -> notes.add(track.note()));
    excerpt.entries().forEach(entry -> notes.add(entry.head().note()));
    for (Entry.Session session : excerpt.sessions()) {
      for (Moto moto : session.motos()) {
        moto.changes().forEach(change -> notes.add(change.why()));
        moto.report().laps().forEach(lap -> notes.add(lap.dropped().orElse("")));
        notes.add(moto.note());
      }
    }
    notes.removeIf(String::isBlank);
    return notes;
  }
}
