package rutbook.words;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rutbook.compare.Room;
import rutbook.compare.SagKind;
import rutbook.compare.SagRow;
import rutbook.compare.Standing;
import rutbook.drawing.MarkGlyph;
import rutbook.notebook.Carrier;
import rutbook.notebook.Datum;
import rutbook.notebook.End;
import rutbook.notebook.Lap;
import rutbook.notebook.Range;
import rutbook.notebook.Reading;
import rutbook.notebook.Role;
import rutbook.notebook.Setting;
import rutbook.notebook.Sheet;
import rutbook.units.Amount;
import rutbook.units.Dimension;

/** What a printed card says of settings, sag and laps. */
public final class CardWords {
  private static final String AREA = "Card";

  private final Phrases phrases;
  private final ReadingWords readings;

  public CardWords(Phrases phrases) {
    this.phrases = phrases;
    this.readings = new ReadingWords(phrases);
  }

  /** A heading or a sentence of the card without facts of its own. */
  public String say(String key, Object... facts) {
    return phrases.say(AREA, key, facts);
  }

  public String mark(MarkGlyph mark, Object... facts) {
    return phrases.say(AREA, "mark." + mark.name(), facts);
  }

  /** The leg or legs that a setting is in; both fork tubes are; empty for one that is in none. */
  public String legs(Setting setting) {
    if (setting.role() == Role.TUBE_ABOVE_CLAMP) {
      return phrases.name(Carrier.PAIR);
    }
    return setting.carrier() == Carrier.SINGLE ? "" : phrases.name(setting.carrier());
  }

  /**
   * What stands small beside a reading: the other system of units, and for what is counted what is
   * counted and from where.
   */
  public String beside(Setting setting, Reading reading) {
    boolean clicks = setting.dimension() == Dimension.CLICKS;
    boolean counted = clicks || setting.dimension() == Dimension.TURNS;
    if (!counted || setting.scale().datum() == Datum.ABSOLUTE) {
      return other(reading);
    }
    String from = say("counted." + setting.scale().datum().name());
    return clicks ? say("counted.clicks", from) : from;
  }

  public String reading(Setting setting, Reading reading) {
    return readings.reading(setting, reading);
  }

  /** The reading in the other system of units; empty for clicks, turns and what is not known. */
  public String other(Reading reading) {
    return readings.other(reading);
  }

  /** What is wrong with a reading, the worst first; empty when nothing is. */
  public String alarm(Standing standing) {
    if (standing.outside()) {
      return say("outside");
    } else if (!standing.reading().isKnown()) {
      return say("unknown");
    } else if (standing.legsDiffer()) {
      return say("legs");
    }
    return standing.room() == Room.AT_STOP ? say("at-stop") : "";
  }

  /** Limits in both systems, the baseline where the reading is away from it, and its room. */
  public String note(Sheet sheet, Setting setting, Standing standing, Optional<Reading> baseline) {
    List<String> said = new ArrayList<>();
    said.add(say("limits", phrases.amounts().limits(sheet.limits(setting))));
    baseline
        .filter(wanted -> !wanted.sameAs(standing.reading()))
        .ifPresent(wanted -> said.add(say("baseline", reading(setting, wanted))));
    if (standing.room() == Room.NEAR_STOP && !standing.outside()) {
      said.add(say("near"));
    }
    return String.join(" ", said);
  }

  /** How the readings of a sheet are counted, one sentence for each way that occurs. */
  public List<String> howToCount(Sheet sheet) {
    Set<Datum> ways = new LinkedHashSet<>();
    boolean pairs = false;
    for (Setting setting : sheet.settings()) {
      Dimension dimension = setting.dimension();
      if (dimension == Dimension.CLICKS || dimension == Dimension.TURNS) {
        ways.add(setting.scale().datum());
      }
      pairs |= setting.carrier() == Carrier.PAIR;
    }
    ways.remove(Datum.ABSOLUTE);
    List<String> said = new ArrayList<>(List.of(say("how.order")));
    measured(sheet, said);
    ways.forEach(way -> said.add(say("how." + way.name())));
    if (pairs) {
      said.add(say("how.legs"));
    }
    return said;
  }

  /** What the millimetres of a preload and of the tubes are: common practice, no source. */
  private void measured(Sheet sheet, List<String> said) {
    for (Setting setting : sheet.settings()) {
      if (setting.role() == Role.SHOCK_PRELOAD && setting.dimension() == Dimension.LENGTH) {
        said.add(say("how.preload", setting.name()));
      } else if (setting.role() == Role.TUBE_ABOVE_CLAMP
          && setting.dimension() == Dimension.LENGTH) {
        said.add(say("how.tube", setting.name()));
      }
    }
  }

  /**
   * One sag with its window in both systems of units.
   *
   * @param kept whether it is what a baseline keeps, rather than what was measured
   * @param day when it was measured
   */
  public String sag(
      End end,
      SagKind kind,
      Amount measured,
      boolean kept,
      Optional<Range> window,
      Optional<LocalDate> day) {
    String value = kept ? both(measured) : on(both(measured), day);
    String said = say(kept ? "sag.kept" : "sag.measured", end, sagName(kind), value);
    String line =
        window.map(wish -> say("sag.wish", said, phrases.amounts().limits(wish))).orElse(said);
    return phrases.sentence(line);
  }

  /** One sag on both sides of a comparison, without the days on which it was measured. */
  public String sag(SagRow row, boolean kept) {
    return sag(row, kept, Optional.empty(), Optional.empty());
  }

  /**
   * One sag on both sides of a comparison.
   *
   * @param kept whether a side is what a baseline keeps, rather than what was measured
   * @param firstDay when the first was measured
   * @param secondDay when the second was
   */
  public String sag(
      SagRow row, boolean kept, Optional<LocalDate> firstDay, Optional<LocalDate> secondDay) {
    Optional<LocalDate> first = kept ? Optional.empty() : firstDay;
    Optional<LocalDate> second = kept ? Optional.empty() : secondDay;
    String unknown = phrases.say("Compare", "unknown");
    String before = row.from().map(it -> on(both(it), first)).orElse(unknown);
    String after = row.to().map(it -> on(both(it), second)).orElse(unknown);
    String moved = before.equals(after) ? say("sag.same", before) : say("sag.moved", before, after);
    String said = say(kept ? "sag.line" : "sag.measured", row.end(), sagName(row.kind()), moved);
    return phrases.sentence(
        row.window()
            .map(wish -> say("sag.wish", said, phrases.amounts().limits(wish)))
            .orElse(said));
  }

  private String on(String measured, Optional<LocalDate> day) {
    return day.map(it -> say("sag.on", measured, it)).orElse(measured);
  }

  /** Which wins where preload and sag disagree: common practice, no source. */
  public Optional<String> sagDecides(Sheet sheet) {
    return sheet.settings(Role.SHOCK_PRELOAD).stream()
        .findFirst()
        .map(preload -> say("sag.decides", preload.name()));
  }

  private String sagName(SagKind kind) {
    return phrases.say("Compare", "sag." + kind.name());
  }

  /** In the rider's unit and in the other system. */
  public String both(Amount amount) {
    return phrases.amounts().both(amount);
  }

  /** How many laps count and the best of them; empty when none does. */
  public String laps(List<Lap> laps) {
    List<Lap> counting = laps.stream().filter(Lap::counts).toList();
    if (counting.isEmpty()) {
      return "";
    }
    String best = phrases.days().lap(counting.stream().mapToLong(Lap::millis).min().orElseThrow());
    return counting.size() == 1 ? say("laps.one", best) : say("laps", counting.size(), best);
  }
}
