package rutbook.ui.log;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rutbook.notebook.BikeId;
import rutbook.notebook.Entry;
import rutbook.notebook.TrackId;

/** Which entries the Log shows; every word of the text has to be found, in any order. */
public record LogFilter(
    Optional<TrackId> track,
    Optional<BikeId> bike,
    Optional<Class<? extends Entry>> kind,
    List<String> words) {
  public static final LogFilter ALL =
      new LogFilter(Optional.empty(), Optional.empty(), Optional.empty(), List.of());

  public LogFilter {
    words = List.copyOf(words);
  }

  public LogFilter withText(String text) {
    List<String> typed =
        Arrays.stream(text.toLowerCase(Locale.ROOT).split("\\s+"))
            .filter(word -> !word.isEmpty())
            .toList();
    return new LogFilter(track, bike, kind, typed);
  }

  public LogFilter on(Optional<TrackId> newTrack) {
    return new LogFilter(newTrack, bike, kind, words);
  }

  public LogFilter of(Optional<BikeId> newBike) {
    return new LogFilter(track, newBike, kind, words);
  }

  public LogFilter kind(Optional<Class<? extends Entry>> newKind) {
    return new LogFilter(track, bike, newKind, words);
  }

  public boolean isAll() {
    return equals(ALL);
  }

  /** Everything but the text, which needs the words of the entry. */
  boolean fits(Entry entry) {
    boolean onTrack =
        track.isEmpty()
            || entry instanceof Entry.Session session && session.track().equals(track.get());
    return onTrack
        && (bike.isEmpty() || entry.bike().equals(bike.get()))
        && (kind.isEmpty() || kind.get().isInstance(entry));
  }

  boolean finds(String lowerCaseText) {
    return words.stream().allMatch(lowerCaseText::contains);
  }
}
