package rutbook.words;

import java.math.BigDecimal;
import java.util.Optional;
import rutbook.notebook.Datum;
import rutbook.notebook.Reading;
import rutbook.notebook.Role;
import rutbook.notebook.Setting;
import rutbook.notebook.Side;
import rutbook.notebook.Value;
import rutbook.units.Amount;

/**
 * What a hand does to get from what is on the bike to what is wanted: "now 15 out: 3 clicks in",
 * "now 5 mm: slide the tubes down 2 mm", "as it is".
 */
public final class TodoWords {
  private static final String AREA = "Card";

  private final Phrases phrases;
  private final ReadingWords readings;
  private final ChangeWords changes;

  public TodoWords(Phrases phrases) {
    this.phrases = phrases;
    this.readings = new ReadingWords(phrases);
    this.changes = new ChangeWords(phrases).spelled();
  }

  /**
   * One sentence with its full stop.
   *
   * @param now what is on the bike, counted as the setting is; empty where it has no such setting
   */
  public String todo(Setting setting, Optional<Reading> now, Reading wanted) {
    if (now.isEmpty() || now.get().values().size() != wanted.values().size()) {
      return say("todo.not-there");
    }
    if (!isKnown(now.get()) || !isKnown(wanted)) {
      return now.get().sameAs(wanted)
          ? say("todo.count")
          : say("todo.unknown", readings.reading(setting, now.get()));
    }
    return now.get().sameAs(wanted)
        ? say("todo.same")
        : say("todo", readings.reading(setting, now.get()), hand(setting, now.get(), wanted));
  }

  /** Whether there is nothing to do: what is on the bike is known and is what is wanted. */
  public static boolean isDone(Optional<Reading> now, Reading wanted) {
    return now.filter(TodoWords::isKnown).map(wanted::sameAs).orElse(false);
  }

  private static boolean isKnown(Reading reading) {
    return reading.values().stream().allMatch(value -> value.known().isPresent());
  }

  private String hand(Setting setting, Reading now, Reading wanted) {
    if (!(now instanceof Reading.Pair from) || !(wanted instanceof Reading.Pair to)) {
      return hand(setting, now.values().get(0), wanted.values().get(0));
    }
    String left = hand(setting, from.left(), to.left());
    String right = hand(setting, from.right(), to.right());
    return left.equals(right)
        ? left
        : say("todo.legs", changes.ofLeg(Side.LEFT, left), changes.ofLeg(Side.RIGHT, right));
  }

  private String hand(Setting setting, Value now, Value wanted) {
    Amount from = now.known().orElseThrow();
    Amount to = wanted.known().orElseThrow();
    BigDecimal by = to.minus(from).value();
    if (by.signum() == 0) {
      return say("todo.leave");
    }
    String size = phrases.amounts().size(to.minus(from));
    boolean more = by.signum() > 0;
    if (setting.role() == Role.TUBE_ABOVE_CLAMP) {
      return say(more ? "todo.tubes-up" : "todo.tubes-down", size);
    }
    Datum datum = setting.scale().datum();
    if (datum == Datum.OUT_FROM_CLOSED || datum == Datum.IN_FROM_OPEN) {
      return say(more == (datum == Datum.OUT_FROM_CLOSED) ? "todo.out" : "todo.in", size);
    }
    return changes.difference(setting, from, to);
  }

  private String say(String key, Object... facts) {
    return phrases.say(AREA, key, facts);
  }
}
