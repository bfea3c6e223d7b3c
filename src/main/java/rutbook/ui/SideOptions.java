package rutbook.ui;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import rutbook.compare.BestMoto;
import rutbook.compare.Choice;
import rutbook.notebook.Entry;
import rutbook.notebook.Ground;
import rutbook.notebook.Shelf;
import rutbook.notebook.Timeline;
import rutbook.notebook.Track;
import rutbook.notebook.TrackId;
import rutbook.words.CompareWords;
import rutbook.words.Phrases;

/**
 * All setups of a bike that can be chosen, and the search in them: now, baselines, the best of each
 * track, the start at each, advice, what was handed over, then sessions with their motos, newest
 * first. Words are made only of what is looked at.
 */
public final class SideOptions {
  /** Of what is on the bike now. */
  public static final String NOW = "now";

  private final List<SideChoice> all = new ArrayList<>();
  private final Map<String, SideChoice> byKey = new HashMap<>();
  private final Map<String, String> searched = new HashMap<>();
  private final Phrases phrases;
  private final CompareWords words;

  /** Those of one bike. */
  public SideOptions(Shelf shelf, Timeline timeline, Phrases phrases) {
    this.phrases = phrases;
    this.words = new CompareWords(phrases);
    add(NOW, new Choice.Now());
    newestFirst(timeline, Entry.Baseline.class)
        .forEach(each -> add("baseline:" + each.id(), new Choice.OfBaseline(each)));
    Map<TrackId, BestMoto> best = BestMoto.ofEach(timeline);
    for (Track track : shelf.tracks()) {
      if (best.containsKey(track.id())) {
        BestMoto it = best.get(track.id());
        add("best:" + track.id(), new Choice.BestOf(it.session(), track, it.moto()));
      }
    }
    shelf.tracks().forEach(track -> add("start:" + track.id(), new Choice.StartAt(track)));
    for (Ground ground : Ground.values()) {
      add("ground:" + ground.name(), new Choice.StartAt(never(ground)));
    }
    newestFirst(timeline, Entry.Advice.class)
        .forEach(each -> add("advice:" + each.id(), new Choice.OfAdvice(each)));
    newestFirst(timeline, Entry.HandedOver.class)
        .forEach(each -> add("handed:" + each.id(), new Choice.OfHandedOver(each)));
    Map<TrackId, Track> tracks = new HashMap<>();
    shelf.tracks().forEach(track -> tracks.put(track.id(), track));
    newestFirst(timeline, Entry.Session.class)
        .forEach(session -> add(session, tracks.get(session.track())));
  }

  private void add(Entry.Session session, Track track) {
    add("session:" + session.id(), new Choice.OfSession(session, track));
    for (int i = 0; i < session.motos().size(); i++) {
      add("moto:" + session.id() + "#" + i, new Choice.OfMoto(session, track, i));
    }
  }

  private void add(String key, Choice choice) {
    SideChoice option = new SideChoice(key, choice);
    all.add(option);
    byKey.put(key, option);
  }

  /** A track that is nowhere in the notebook: only its ground is known. */
  private Track never(Ground ground) {
    String name = phrases.say("Compare", "choice.start.new", ground);
    TrackId id = new TrackId("new-" + ground.name().toLowerCase(Locale.ROOT));
    return new Track(id, name, Optional.of(ground), Optional.empty(), "");
  }

  private static <T extends Entry> List<T> newestFirst(Timeline timeline, Class<T> kind) {
    List<T> reversed = new ArrayList<>(timeline.entries(kind));
    Collections.reverse(reversed);
    return reversed;
  }

  public List<SideChoice> all() {
    return Collections.unmodifiableList(all);
  }

  public Optional<SideChoice> find(String key) {
    return Optional.ofNullable(byKey.get(key));
  }

  /** As it stands in the list. */
  public String said(SideChoice option) {
    return phrases.sentence(words.choice(option.choice()));
  }

  /**
   * The options with a word that begins so for each word typed, whatever its case; a number stands
   * for itself, so that 2 is not 2026.
   */
  public List<SideChoice> matching(String typed) {
    String wanted = words(typed);
    if (wanted.isBlank()) {
      return all();
    }
    String[] beginnings = wanted.strip().split(" ");
    return all.stream().filter(option -> holds(text(option), beginnings)).toList();
  }

  /** Those of {@link #matching} that are, or were, on the bike. */
  public List<SideChoice> onBike(String typed) {
    return matching(typed).stream().filter(SideChoice::isOnBike).toList();
  }

  private static boolean holds(String text, String... beginnings) {
    for (String beginning : beginnings) {
      boolean number = beginning.chars().allMatch(Character::isDigit);
      if (!text.contains(" " + beginning + (number ? " " : ""))) {
        return false;
      }
    }
    return true;
  }

  private String text(SideChoice option) {
    return searched.computeIfAbsent(option.key(), key -> words(said(option) + day(option)));
  }

  /** The day as it is typed, for those who think in it. */
  private static String day(SideChoice option) {
    if (option.choice() instanceof Choice.OfSession it) {
      return " " + it.session().day();
    }
    return option.choice() instanceof Choice.OfMoto it ? " " + it.session().day() : "";
  }

  /** Small letters, with one space before, between and after the words. */
  private String words(String text) {
    return (" " + text + " ").toLowerCase(phrases.locale()).replaceAll("[^\\p{L}\\p{N}]+", " ");
  }

  /** The best of two tracks where two were ridden, otherwise the baseline and now. */
  public List<SideChoice> firstChoice() {
    List<SideChoice> best =
        all.stream().filter(option -> option.key().startsWith("best:")).limit(2).toList();
    if (best.size() == 2) {
      return best;
    }
    SideChoice now = all.get(0);
    return List.of(
        all.stream().filter(option -> option.key().startsWith("baseline:")).findFirst().orElse(now),
        now);
  }
}
