package rutbook.cli;

import java.nio.charset.StandardCharsets;

/** Tables to import: laps of invented riders, and setups of the sample's bike. */
final class Tables {
  private static final String LAPS =
      """
      Club day
      No.;Name;Lap;Lap time;Sector 1;Sector 2
      17;Imke Adler;1;2:01,400;1:00,200;1:01,200
      17;Imke Adler;2;1:52,310;0:56,110;0:56,200
      17;Imke Adler;3;pit;;
      17;Imke Adler;4;1:51,900;0:55,900;0:56,000
      """;

  private static final String SETUPS =
      """
      Date,Track,Fork compression,Fork rebound
      2026-07-20,Moor,14,11
      2026-07-21,Moor,99,soft
      soon,Moor,12,12
      """;

  private Tables() {}

  static byte[] laps() {
    return LAPS.getBytes(StandardCharsets.UTF_8);
  }

  static byte[] setups() {
    return SETUPS.getBytes(StandardCharsets.UTF_8);
  }
}
