package rutbook.notebook;

/** The reading of one setting within a setup, and whether it was chosen or found. */
public record Placed(SettingId setting, Reading reading, How how) {
  public static Placed set(SettingId setting, Reading reading) {
    return new Placed(setting, reading, How.SET);
  }

  public static Placed found(SettingId setting, Reading reading) {
    return new Placed(setting, reading, How.FOUND);
  }
}
