package rutbook.drawing;

import java.util.function.Function;
import rutbook.units.Numerals;

/**
 * What is written on a chart in the reader's language.
 *
 * @param names words for its parts
 * @param numerals of its numbers
 */
public record ChartText(Function<ChartName, String> names, Numerals numerals) {
  String name(ChartName part) {
    return names.apply(part);
  }
}
