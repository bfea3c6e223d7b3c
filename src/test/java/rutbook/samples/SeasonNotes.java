package rutbook.samples;

import java.util.Map;

/** What the invented rider wrote by hand, by day and moto. */
final class SeasonNotes {
  private static final Map<String, String> DAYS =
      Map.of(
          "2026-03-07", "First ride of the year. Arms tired by the third moto.",
          "2026-03-14", "Deep sand, watered in the morning, soft ruts by noon.",
          "2026-04-25",
              "Rebound of the right leg was two out at the end of the day. No idea since when.",
          "2026-05-16", "Same as last week but damp. Ground changes more than I change the bike.",
          "2026-06-06", "Fork feels dead after an hour. Oil has more hours than it should.",
          "2026-06-14", "Fresh oil: slower at first, then as before.",
          "2026-08-08", "Slid out in the last moto, bars were a bit off.",
          "2026-09-12", "Thicker oil in the cartridge now. One click softer suits it.",
          "2026-10-17", "Carried the sand setup over for the first moto, on purpose. Not again.");

  private static final Map<String, String> MOTOS =
      Map.of(
          "2026-03-07#2", "Two softer: I can look ahead again.",
          "2026-04-11#2", "Too slow, it packed in the second half.",
          "2026-05-09#3", "Faster rebound made the front nervous.",
          "2026-05-30#2", "Firmer at low speed: it stays up on the exits.",
          "2026-09-26#2", "A quarter turn softer at high speed, barely a difference.");

  private SeasonNotes() {}

  static String day(String day) {
    return DAYS.getOrDefault(day, "");
  }

  static String moto(String day, int moto) {
    return MOTOS.getOrDefault(day + "#" + moto, "");
  }
}
