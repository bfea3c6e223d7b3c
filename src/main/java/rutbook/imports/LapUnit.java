package rutbook.imports;

/** What a bare number counts in a column of lap times. */
public enum LapUnit {
  SECONDS(1000),
  MILLISECONDS(1);

  private final int millis;

  LapUnit(int millis) {
    this.millis = millis;
  }

  int millis() {
    return millis;
  }
}
