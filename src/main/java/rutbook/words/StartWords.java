package rutbook.words;

import rutbook.notebook.Entry;
import rutbook.notebook.Shelf;
import rutbook.notebook.Track;
import rutbook.reasoning.StartAtTrack;

/** What to start with at a track: by which ride it goes, and where each reading comes from. */
public final class StartWords {
  private static final String AREA = "Reasoning";

  private final Phrases phrases;
  private final ReadingWords readings;

  public StartWords(Phrases phrases) {
    this.phrases = phrases;
    this.readings = new ReadingWords(phrases);
  }

  public String title(String track) {
    return phrases.say(AREA, "start.title", track);
  }

  /** The ride that it goes by, and how alike its track is. */
  public String like(StartAtTrack start, Track wanted, Shelf shelf) {
    if (start.like().isEmpty()) {
      return phrases.say(AREA, start.settings().isEmpty() ? "start.unknown" : "start.nothing");
    }
    Entry.Session ridden = start.like().get();
    int moto = start.moto() + 1;
    if (ridden.track().equals(wanted.id())) {
      return phrases.say(AREA, "start.here", ridden.day(), moto);
    }
    String there = shelf.track(ridden.track()).map(Track::name).orElse(ridden.track().text());
    int alike = (int) Math.round(100 * (1 - start.distance()));
    return phrases.say(AREA, "start.like", there, ridden.day(), moto, alike);
  }

  /** How a reading is chosen; nothing where there is no ride to choose from. */
  public String how() {
    return phrases.say(AREA, "start.how");
  }

  public String caution() {
    return phrases.say(AREA, "start.caution");
  }

  /** Where a reading comes from. */
  public String basis(StartAtTrack.From from) {
    return phrases.say(AREA, "start." + from.basis().name());
  }

  /** "Fork compression: 12 out, from the baseline". */
  public String setting(StartAtTrack.From from) {
    return phrases.say(
        AREA,
        "start.setting",
        phrases.sentence(readings.setting(from.setting())),
        readings.reading(from.setting(), from.reading()),
        basis(from));
  }
}
