package rutbook.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.PrettyPrinter;
import java.io.IOException;

/** Indents by two spaces; what belongs on one line stays on one line. */
final class Layout implements PrettyPrinter {
  private static final String SPACES = " ".repeat(128);

  private int depth;
  private boolean oneLine;

  /** Whether what is open at a depth stays on one line, whatever stands in it. */
  private final boolean[] together = new boolean[ReadingLimits.DEPTH + 1];

  /** Switches to one line, or back; returns what was before. */
  boolean oneLine(boolean now) {
    boolean before = oneLine;
    oneLine = now;
    return before;
  }

  boolean isOneLine() {
    return oneLine;
  }

  private void newLine(JsonGenerator out, int indent) throws IOException {
    out.writeRaw('\n');
    out.writeRaw(SPACES, 0, Math.min(SPACES.length(), 2 * indent));
  }

  private void start(JsonGenerator out, char bracket) throws IOException {
    out.writeRaw(bracket);
    depth++;
    together[depth] = oneLine;
  }

  private void first(JsonGenerator out) throws IOException {
    if (!together[depth]) {
      newLine(out, depth);
    }
  }

  @Override
  public void writeRootValueSeparator(JsonGenerator out) throws IOException {
    out.writeRaw('\n');
  }

  @Override
  public void writeStartObject(JsonGenerator out) throws IOException {
    start(out, '{');
  }

  @Override
  public void beforeObjectEntries(JsonGenerator out) throws IOException {
    first(out);
  }

  @Override
  public void writeObjectFieldValueSeparator(JsonGenerator out) throws IOException {
    out.writeRaw(": ");
  }

  @Override
  public void writeObjectEntrySeparator(JsonGenerator out) throws IOException {
    separate(out);
  }

  @Override
  public void writeEndObject(JsonGenerator out, int fields) throws IOException {
    end(out, fields, '}');
  }

  @Override
  public void writeStartArray(JsonGenerator out) throws IOException {
    start(out, '[');
  }

  @Override
  public void beforeArrayValues(JsonGenerator out) throws IOException {
    first(out);
  }

  @Override
  public void writeArrayValueSeparator(JsonGenerator out) throws IOException {
    separate(out);
  }

  @Override
  public void writeEndArray(JsonGenerator out, int values) throws IOException {
    end(out, values, ']');
  }

  private void separate(JsonGenerator out) throws IOException {
    out.writeRaw(together[depth] ? ", " : ",");
    first(out);
  }

  private void end(JsonGenerator out, int count, char bracket) throws IOException {
    if (count > 0 && !together[depth]) {
      newLine(out, depth - 1);
    }
    depth--;
    out.writeRaw(bracket);
  }
}
