package rutbook.ui.bike;

/** What falls outside a sheet, in a line each. */
final class OutsideWords {
  private final BikeDesk desk;

  OutsideWords(BikeDesk desk) {
    this.desk = desk;
  }

  /** The reading with the limits that it passes, and where it stands. */
  String line(Outside outside) {
    String setting = outside.setting().name();
    String reading = desk.words().readings().reading(outside.setting(), outside.reading());
    String limits = desk.words().limits(outside.limits());
    return outside
        .baseline()
        .map(each -> desk.text("outside.baseline", each.day(), setting, reading, limits))
        .orElseGet(() -> desk.text("outside.now", setting, reading, limits));
  }
}
