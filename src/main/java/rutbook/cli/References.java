package rutbook.cli;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rutbook.compare.Subject;
import rutbook.notebook.Entry;
import rutbook.notebook.Timeline;
import rutbook.notebook.Track;

/**
 * What a reference names: {@code now}, {@code baseline}, {@code 2026-05-03} (a session), {@code
 * 2026-05-03#2} (its second moto), {@code track:"Name"} (the best moto there).
 */
final class References {
  private static final Pattern DAY = Pattern.compile("(\\d{4}-\\d{2}-\\d{2})(?:#(\\d{1,3}))?");
  private static final String TRACK = "track:";

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
      return best(reference.substring(TRACK.length()).replace("\"", "").strip());
    }
    Matcher matcher = DAY.matcher(reference);
    if (!matcher.matches()) {
      throw Refusal.use(opened.say("no-reference", reference));
    }
    Entry.Session session = session(day(matcher.group(1)));
    Track track = opened.notebook().shelf().track(session.track()).orElseThrow();
    return matcher.group(2) == null
        ? Subject.of(timeline, session, track)
        : Subject.of(timeline, session, track, moto(session, matcher.group(2)));
  }

  private LocalDate day(String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeParseException noDay) {
      throw Refusal.use(opened.say("no-day", text));
    }
  }

  private Entry.Session session(LocalDate day) {
    List<Entry.Session> sessions =
        timeline.sessions().stream().filter(each -> each.day().equals(day)).toList();
    if (sessions.isEmpty()) {
      throw Refusal.use(opened.say("no-session", day));
    }
    if (sessions.size() > 1) {
      String tracks = String.join(", ", sessions.stream().map(this::trackName).toList());
      throw Refusal.use(opened.say("several-sessions", day, tracks));
    }
    return sessions.get(0);
  }

  private String trackName(Entry.Session session) {
    return opened.notebook().shelf().track(session.track()).orElseThrow().name();
  }

  private int moto(Entry.Session session, String number) {
    int moto = Integer.parseInt(number);
    if (moto < 1 || moto > session.motos().size()) {
      throw Refusal.use(
          opened.say("no-moto", session.day(), String.valueOf(session.motos().size()), number));
    }
    return moto - 1;
  }

  private Subject best(String name) {
    Track track =
        opened.notebook().shelf().tracks().stream()
            .filter(each -> each.name().equalsIgnoreCase(name))
            .findFirst()
            .orElseThrow(() -> Refusal.use(opened.say("no-track", name, trackNames())));
    return Subject.best(timeline, track)
        .orElseThrow(() -> Refusal.use(opened.say("never-there", track.name())));
  }

  private String trackNames() {
    return String.join(", ", opened.notebook().shelf().tracks().stream().map(Track::name).toList());
  }
}
