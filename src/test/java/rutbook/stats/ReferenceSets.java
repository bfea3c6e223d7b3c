package rutbook.stats;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the reference data sets that certified values belong to. */
final class ReferenceSets {

  private static final Pattern COUNT =
      Pattern.compile("(\\d+)\\s+Observations|Number of Observations:\\s+(\\d+)");

  private ReferenceSets() {}

  /** A univariate NIST StRD file, as the test sources of Commons Math 3.6.1 carry it. */
  static double[] univariate(String name) {
    List<String> lines = lines("/org/apache/commons/math3/stat/data/" + name + ".txt");
    Deque<Double> numbers = new ArrayDeque<>();
    for (int i = lines.size() - 1; i >= 0 && lines.get(i).matches("\\s*[-+.\\d]+\\s*"); i--) {
      if (lines.get(i).contains("--")) {
        break;
      }
      numbers.addFirst(Double.parseDouble(lines.get(i).trim()));
    }
    assertThat(numbers).as("observations of %s", name).hasSize(count(lines));
    return numbers.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static int count(List<String> lines) {
    for (String line : lines) {
      Matcher matcher = COUNT.matcher(line);
      if (matcher.find()) {
        return Integer.parseInt(matcher.group(1) == null ? matcher.group(2) : matcher.group(1));
      }
    }
    throw new AssertionError("no count of observations");
  }

  /** A regression set: y first, then the columns; lines with # say where it comes from. */
  static double[][] regression(String name) {
    return lines("/rutbook/stats/" + name + ".csv").stream()
        .filter(line -> !line.startsWith("#") && !line.isBlank())
        .map(line -> Arrays.stream(line.split(",")).mapToDouble(Double::parseDouble).toArray())
        .toArray(double[][]::new);
  }

  private static List<String> lines(String path) {
    try (InputStream in = ReferenceSets.class.getResourceAsStream(path);
        BufferedReader reader =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      return reader.lines().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
