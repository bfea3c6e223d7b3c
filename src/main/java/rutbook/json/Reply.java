package rutbook.json;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import rutbook.notebook.Bike;
import rutbook.units.Display;

/**
 * What a command answers, ready to be written as one JSON object: {@code answer} names the command,
 * {@code version} the form of the answers, {@code exit} is the exit code, {@code bike} the bike in
 * question; the command's own fields follow. The schema is {@code answers.schema.json}.
 *
 * <p>To add one: a class {@code …Answer} with the {@link Facts} of what the command found, a public
 * method that gives its {@code Reply}, and its definition in the schema.
 */
public final class Reply {
  /** The form of the answers; a field may be added without raising it. */
  public static final int VERSION = 1;

  private static final Facts<Bike> BIKE =
      Facts.line(Bike.class).with("id", Ids.BIKE, Bike::id).with("name", Texts.TEXT, Bike::name);

  private final String command;
  private final Out.Part fields;

  private Reply(String command, Out.Part fields) {
    this.command = command;
    this.fields = fields;
  }

  static <T> Reply of(String command, Facts<T> facts, T found) {
    return new Reply(command, out -> facts.writeFields(found, out));
  }

  /**
   * The answer as text with a line end at its end.
   *
   * @param bike left out where a command is about no bike
   * @param units what amounts are converted to; empty leaves each as the rider wrote it
   */
  public String text(int exit, Optional<Bike> bike, Optional<Display> units) {
    byte[] bytes =
        Out.bytes(
            units,
            out -> {
              out.generator().writeStartObject();
              out.field("answer");
              out.text(command);
              out.field("version");
              out.generator().writeNumber(VERSION);
              out.field("exit");
              out.generator().writeNumber(exit);
              if (bike.isPresent()) {
                out.field("bike");
                BIKE.write(bike.get(), out);
              }
              fields.write(out);
              out.generator().writeEndObject();
            });
    return new String(bytes, StandardCharsets.UTF_8);
  }
}
