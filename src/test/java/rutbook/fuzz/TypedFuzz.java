package rutbook.fuzz;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import rutbook.notebook.Lap;
import rutbook.ui.log.PastedLaps;
import rutbook.units.Amount;
import rutbook.units.AmountException;
import rutbook.units.AmountText;
import rutbook.units.Display;
import rutbook.units.Unit;
import rutbook.words.FaultWords;
import rutbook.words.Phrases;

/**
 * Any text typed or pasted: an amount in any field, in either way of parting decimals; the exact
 * amount of a file; laps out of anything. The first byte chooses which.
 */
public final class TypedFuzz {
  private static final List<Unit> UNITS = Unit.all();
  private static final List<Locale> LOCALES = List.of(Locale.ROOT, Locale.GERMANY);
  private static final FaultWords WORDS = new FaultWords(Phrases.english(Display.METRIC));

  private TypedFuzz() {}

  public static void fuzzerTestOneInput(byte[] bytes) {
    if (bytes.length == 0) {
      return;
    }
    int choice = bytes[0] & 0xFF;
    String typed = new String(Arrays.copyOfRange(bytes, 1, bytes.length), StandardCharsets.UTF_8);
    if (choice < 32) {
      laps(typed);
    } else {
      try {
        Amount read = amount(typed, choice);
        if (!Amount.parseExact(read.toString()).equals(read)) {
          throw new AssertionError(read + " is another amount when it is read again");
        }
      } catch (AmountException refused) {
        Sentences.require(WORDS.sentence(refused));
      }
    }
  }

  private static Amount amount(String typed, int choice) {
    return choice < 64
        ? Amount.parseExact(typed)
        : AmountText.parse(
            typed, UNITS.get(choice % UNITS.size()), LOCALES.get(choice % LOCALES.size()));
  }

  private static void laps(String typed) {
    PastedLaps pasted = PastedLaps.of(typed);
    for (Lap lap : pasted.laps()) {
      if (lap.millis() < 1 || lap.millis() > Lap.LONGEST_MILLIS) {
        throw new AssertionError("a lap of " + lap.millis() + " ms");
      }
    }
  }
}
