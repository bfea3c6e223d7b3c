package rutbook.json;

import java.util.Optional;

/** What {@code card} answers: where the card was written and how large it is, or its text. */
public final class CardAnswer {
  private record Made(Optional<String> file, Optional<Integer> bytes, Optional<String> text) {}

  private static final Facts<Made> MADE =
      Facts.of(Made.class)
          .ifKnown("file", Texts.TEXT, Made::file)
          .ifKnown("bytes", Numbers.WHOLE, Made::bytes)
          .ifKnown("text", Texts.TEXT, Made::text);

  private CardAnswer() {}

  public static Reply written(String file, int bytes) {
    return Reply.of(
        "card", MADE, new Made(Optional.of(file), Optional.of(bytes), Optional.empty()));
  }

  public static Reply printed(String text) {
    return Reply.of("card", MADE, new Made(Optional.empty(), Optional.empty(), Optional.of(text)));
  }
}
