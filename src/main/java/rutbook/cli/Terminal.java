package rutbook.cli;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;
import rutbook.words.Printable;

/** Where lines go: wrapped at 80 columns, in letters that the terminal can show. */
public final class Terminal {
  static final int WIDTH = 80;

  private final PrintStream out;
  private final CharsetEncoder encoder;
  private final Printable printable;

  public Terminal(PrintStream out, Charset charset) {
    this.out = out;
    this.encoder = charset.newEncoder();
    this.printable = new Printable(charset);
  }

  /** For whoever prints on its own, such as the help of the command line. */
  PrintWriter writer() {
    return new PrintWriter(out, true);
  }

  /** Prints a line, folded where the terminal ends. */
  public void line(String text) {
    line(0, text);
  }

  /**
   * A JSON text as it is; what the terminal's letters cannot say, which only stands in strings, is
   * written as its escape.
   */
  void json(String text) {
    StringBuilder shown = new StringBuilder(text.length());
    text.codePoints().forEach(point -> append(shown, Character.toString(point)));
    out.print(shown);
    out.flush();
  }

  private void append(StringBuilder shown, String letter) {
    if (encoder.canEncode(letter)) {
      shown.append(letter);
    } else {
      letter.chars().forEach(unit -> shown.append(String.format("\\u%04x", unit)));
    }
  }

  /** The text in letters that the terminal can show. */
  String shown(String text) {
    return printable.of(text);
  }

  /** A line as it is, however long: for what is copied into a message, or was made to fit. */
  void plain(String text) {
    print(printable.of(text));
  }

  void blank() {
    out.print('\n');
  }

  void heading(String text) {
    blank();
    line(text);
  }

  /** A line set in by so many spaces; what does not fit goes on under its first word. */
  void line(int indent, String text) {
    row(indent, 0, "", text);
  }

  /** A name in a column of its own width, and what is said of it beside. */
  void row(int indent, int width, String name, String text) {
    String start = " ".repeat(indent) + (width == 0 ? "" : pad(name, width));
    StringBuilder line = new StringBuilder(start);
    boolean fresh = true;
    for (String word : printable.of(text).split(" ")) {
      if (!fresh && line.length() + 1 + word.length() > WIDTH) {
        print(line);
        line = new StringBuilder(" ".repeat(start.length()));
        fresh = true;
      }
      line.append(fresh ? "" : " ").append(word);
      fresh = false;
    }
    print(line);
  }

  private String pad(String name, int width) {
    String shown = printable.of(name);
    return shown.length() >= width ? shown + " " : shown + " ".repeat(width - shown.length());
  }

  /** The line ends of the system would differ between machines; a line feed does everywhere. */
  private void print(CharSequence line) {
    out.print(line.toString().stripTrailing());
    out.print('\n');
    out.flush();
  }
}
