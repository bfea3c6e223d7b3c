package rutbook.compare;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import rutbook.notebook.Answer;
import rutbook.notebook.Bounds;
import rutbook.notebook.Conditions;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.Feel;
import rutbook.notebook.Moto;
import rutbook.notebook.Placed;
import rutbook.notebook.Proposal;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Timeline;
import rutbook.notebook.Track;

/**
 * One side of a comparison: a setup with the sheet it is read against, the sag that goes with it,
 * and, where it was ridden, the conditions, the feel and the trust.
 */
public record Subject(
    Choice choice,
    LocalDate day,
    Sheet sheet,
    Setup setup,
    SagSeen sag,
    Conditions conditions,
    List<Feel> feel,
    OptionalInt trust) {

  public Subject {
    feel = List.copyOf(feel);
  }

  /** What is on the bike now, read against the newest sheet. */
  public static Subject now(Timeline timeline) {
    Sheet sheet = timeline.bike().latestSheet();
    LocalDate day =
        timeline.lastDay().filter(last -> last.isAfter(sheet.from())).orElse(sheet.from());
    return notRidden(new Choice.Now(), day, sheet, timeline.now(), sag(timeline, day));
  }

  public static Subject of(Timeline timeline, Entry.Baseline baseline) {
    LocalDate day = baseline.day();
    SagSeen sag = sag(timeline, day).withRear(baseline.raceSag(), baseline.freeSag());
    Choice choice = new Choice.OfBaseline(baseline);
    return notRidden(choice, day, timeline.sheetOn(day), baseline.setup(), sag);
  }

  /** A setup that may come next, read against the newest sheet, with the sag of now. */
  public static Subject planned(Timeline timeline, Choice choice, Setup setup) {
    Subject now = now(timeline);
    return notRidden(choice, now.day(), now.sheet(), setup, now.sag());
  }

  /**
   * What is on the bike now with every proposal made that was not declined, held inside the limits
   * of today's sheet; proposals for settings that the bike does not have are passed over.
   */
  public static Subject of(Timeline timeline, Entry.Advice advice) {
    Sheet sheet = timeline.bike().latestSheet();
    Setup setup = timeline.now();
    for (Proposal proposal : advice.proposals()) {
      Optional<Setting> setting = sheet.setting(proposal.setting());
      if (setting.isPresent() && !(proposal.answer() instanceof Answer.Declined)) {
        Reading held = Bounds.hold(sheet, setting.get(), proposal.to());
        setup = setup.with(Placed.set(setting.get().id(), held));
      }
    }
    return planned(timeline, new Choice.OfAdvice(advice), setup);
  }

  /** A setup as it was handed over, read against the sheet that went along. */
  public static Subject of(Timeline timeline, Entry.HandedOver handed) {
    Sheet sheet = timeline.sheetOn(handed.snapshot().sheetFrom());
    return notRidden(
        new Choice.OfHandedOver(handed),
        handed.day(),
        sheet,
        handed.snapshot().setup(),
        sag(timeline, handed.day()));
  }

  private static Subject notRidden(
      Choice choice, LocalDate day, Sheet sheet, Setup setup, SagSeen sag) {
    return new Subject(
        choice, day, sheet, setup, sag, Conditions.NOT_NOTED, List.of(), OptionalInt.empty());
  }

  /** A session as it was left, with the newest rating of each feel and the newest trust. */
  public static Subject of(Timeline timeline, Entry.Session session, Track track) {
    int last = session.motos().size() - 1;
    return new Subject(
        new Choice.OfSession(session, track),
        session.day(),
        timeline.sheetOn(session.day()),
        session.end(),
        sag(timeline, session.day()),
        conditions(session, track, last),
        newestFeel(session),
        newestTrust(session));
  }

  /**
   * One moto of a session.
   *
   * @param moto counted from 0
   */
  public static Subject of(Timeline timeline, Entry.Session session, Track track, int moto) {
    return ridden(timeline, new Choice.OfMoto(session, track, moto), session, track, moto);
  }

  /** The best moto at a track; empty when nothing was ridden there. */
  public static Optional<Subject> best(Timeline timeline, Track track) {
    return BestMoto.at(timeline, track.id())
        .map(best -> of(timeline, new Choice.BestOf(best.session(), track, best.moto())));
  }

  /** The best moto at a track, once it is found. */
  public static Subject of(Timeline timeline, Choice.BestOf best) {
    return ridden(timeline, best, best.session(), best.track(), best.moto());
  }

  private static Subject ridden(
      Timeline timeline, Choice choice, Entry.Session session, Track track, int moto) {
    Moto ridden = session.motos().get(moto);
    return new Subject(
        choice,
        session.day(),
        timeline.sheetOn(session.day()),
        session.setupOf(moto),
        sag(timeline, session.day()),
        conditions(session, track, moto),
        ridden.report().feel(),
        ridden.report().trust());
  }

  private static SagSeen sag(Timeline timeline, LocalDate day) {
    return SagSeen.measured(timeline.sagOn(End.FRONT, day), timeline.sagOn(End.REAR, day));
  }

  /** Noted for the newest moto up to this one that noted any, else the session's. */
  private static Conditions conditions(Entry.Session session, Track track, int moto) {
    Conditions noted = session.conditions();
    for (int i = 0; i <= moto; i++) {
      noted = session.motos().get(i).conditions().orElse(noted);
    }
    return noted.ground().isPresent()
        ? noted
        : new Conditions(
            track.ground(), noted.moisture(), noted.roughness(), noted.air(), noted.ready());
  }

  private static List<Feel> newestFeel(Entry.Session session) {
    List<Feel> newest = new ArrayList<>();
    List<Moto> motos = new ArrayList<>(session.motos());
    Collections.reverse(motos);
    for (Moto moto : motos) {
      for (Feel feel : moto.report().feel()) {
        if (newest.stream().noneMatch(seen -> seen.key().equals(feel.key()))) {
          newest.add(feel);
        }
      }
    }
    return newest;
  }

  private static OptionalInt newestTrust(Entry.Session session) {
    OptionalInt trust = OptionalInt.empty();
    for (Moto moto : session.motos()) {
      trust = moto.report().trust().isPresent() ? moto.report().trust() : trust;
    }
    return trust;
  }
}
