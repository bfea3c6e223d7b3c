package rutbook.cli;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rutbook.compare.Choice;
import rutbook.compare.Subject;
import rutbook.json.RulesJson;
import rutbook.notebook.Conditions;
import rutbook.notebook.Entry;
import rutbook.notebook.Timeline;
import rutbook.notebook.Track;
import rutbook.reasoning.StartAtTrack;

/**
 * What a reference names: {@code now}, {@code baseline}, {@code 2026-05-03} (a session), {@code
 * 2026-05-03#2} (its second moto), {@code track:"Name"} (the best moto there), {@code start:"Name"}
 * (what to start with there), {@code advice:2026-05-03} and {@code handed:2026-05-03} (given or
 * handed over that day).
 */
final class References {
  private static final Pattern DAY = Pattern.compile("(\\d{4}-\\d{2}-\\d{2})(?:#(\\d{1,3}))?");
  private static final String TRACK = "track:";
  private static final String START = "start:";
  private static final String ADVICE = "advice:";
  private static final String HANDED = "handed:";

  private final OpenedNotebook opened;
  private final Timeline timeline;

  References(OpenedNotebook opened) {
    this.opened = opened;
    this.timeline = opened.timeline();
  }

  /**
   * @throws Refusal when it names nothing, or several things
   */
  Subject subject(String reference) {
    if (reference.equals("now")) {
      return Subject.now(timeline);
    }
    if (reference.equals("baseline")) {
      return Subject.of(
          timeline, timeline.baseline().orElseThrow(() -> Refusal.use(opened.say("no-baseline"))));
    }
    if (reference.startsWith(TRACK)) {
      return best(spelt(reference.substring(TRACK.length())));
    }
    if (reference.startsWith(START)) {
      return start(track(spelt(reference.substring(START.length()))));
    }
    if (reference.startsWith(ADVICE)) {
      return Subject.of(
          timeline, entry(Entry.Advice.class, day(reference.substring(ADVICE.length()))));
    }
    if (reference.startsWith(HANDED)) {
      return Subject.of(
          timeline, entry(Entry.HandedOver.class, day(reference.substring(HANDED.length()))));
    }
    Matcher matcher = DAY.matcher(reference);
    if (!matcher.matches()) {
      throw Refusal.use(opened.say("no-reference", reference));
    }
    LocalDate day = day(matcher.group(1));
    return matcher.group(2) == null
        ? left(session(day))
        : moto(sessions(day), day, Integer.parseInt(matcher.group(2)));
  }

  private Subject start(Track track) {
    StartAtTrack start =
        StartAtTrack.of(
            opened.notebook(),
            opened.bike().id(),
            track,
            Conditions.NOT_NOTED,
            RulesJson.ofTheTrade().with(opened.notebook().ruleChanges()));
    return Subject.planned(timeline, new Choice.StartAt(track), start.on(timeline.now()));
  }

  /** The newest of that kind and day. */
  private <T extends Entry> T entry(Class<T> kind, LocalDate day) {
    return timeline.entries(kind).stream()
        .filter(each -> each.day().equals(day))
        .reduce((earlier, later) -> later)
        .orElseThrow(() -> Refusal.use(opened.say("nothing-that-day", day)));
  }

  private Subject left(Entry.Session session) {
    return Subject.of(timeline, session, track(session));
  }

  private LocalDate day(String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeParseException noDay) {
      throw Refusal.use(opened.say("no-day", text));
    }
  }

  private List<Entry.Session> sessions(LocalDate day) {
    List<Entry.Session> sessions =
        timeline.sessions().stream().filter(each -> each.day().equals(day)).toList();
    if (sessions.isEmpty()) {
      throw Refusal.use(opened.say("no-session", day));
    }
    return sessions;
  }

  private Entry.Session session(LocalDate day) {
    List<Entry.Session> sessions = sessions(day);
    if (sessions.size() > 1) {
      String tracks = String.join(", ", sessions.stream().map(each -> track(each).name()).toList());
      throw Refusal.use(opened.say("several-sessions", day, tracks));
    }
    return sessions.get(0);
  }

  private Track track(Entry.Session session) {
    return opened.notebook().shelf().track(session.track()).orElseThrow();
  }

  /** The moto of that number, counted over all sessions of the day. */
  private Subject moto(List<Entry.Session> sessions, LocalDate day, int number) {
    int left = number;
    for (Entry.Session session : sessions) {
      if (left >= 1 && left <= session.motos().size()) {
        return Subject.of(timeline, session, track(session), left - 1);
      }
      left -= session.motos().size();
    }
    throw Refusal.use(
        opened.say("no-moto", day, String.valueOf(number - left), String.valueOf(number)));
  }

  /**
   * The track of a name, or of an id.
   *
   * @throws Refusal when there is none
   */
  Track track(String name) {
    List<Track> byId =
        opened.notebook().shelf().tracks().stream()
            .filter(each -> each.id().text().equals(name))
            .toList();
    return byId.isEmpty() ? tracks(spelt(name)).get(0) : byId.get(0);
  }

  private List<Track> tracks(String name) {
    List<Track> tracks =
        opened.notebook().shelf().tracks().stream()
            .filter(each -> spelt(each.name()).equalsIgnoreCase(name))
            .toList();
    if (tracks.isEmpty()) {
      throw Refusal.use(opened.say("no-track", name, trackNames()));
    }
    return tracks;
  }

  private Subject best(String name) {
    List<Track> tracks = tracks(name);
    return tracks.stream()
        .flatMap(track -> Subject.best(timeline, track).stream())
        .findFirst()
        .orElseThrow(() -> Refusal.use(opened.say("never-there", tracks.get(0).name())));
  }

  /** Quotation marks are the shell's as often as the rider's: they do not count. */
  private static String spelt(String name) {
    return name.replace("\"", "").strip();
  }

  private String trackNames() {
    return String.join(", ", opened.notebook().shelf().tracks().stream().map(Track::name).toList());
  }
}
