package rutbook.app;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;

/** What the program said and ended with, run as it is started from a terminal. */
record Ran(int exit, String out, String errors) {

  /** Runs it in this process, each word as its text. */
  static Ran run(Object... words) {
    PrintStream before = System.out;
    PrintStream beforeErrors = System.err;
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream errors = new ByteArrayOutputStream();
    try {
      System.setOut(new PrintStream(out, true, StandardCharsets.UTF_8));
      System.setErr(new PrintStream(errors, true, StandardCharsets.UTF_8));
      int exit = new Main().run(Stream.of(words).map(Object::toString).toArray(String[]::new));
      return new Ran(
          exit, out.toString(StandardCharsets.UTF_8), errors.toString(StandardCharsets.UTF_8));
    } finally {
      System.setOut(before);
      System.setErr(beforeErrors);
    }
  }
}
