package rutbook.compare;

import rutbook.notebook.Bounds;
import rutbook.notebook.How;
import rutbook.notebook.Legs;
import rutbook.notebook.Placed;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Sheet;

/** How a setting stands in a setup, judged by the sheet in force that day. */
public record Standing(Placed placed, boolean outside, boolean legsDiffer, Room room) {

  public static Standing of(Sheet sheet, Setting setting, Placed placed) {
    Reading reading = placed.reading();
    Room room =
        reading.amounts().stream()
            .map(amount -> Room.of(sheet, setting, amount))
            .reduce(Room.ENOUGH, Room::lesser);
    return new Standing(
        placed, !Bounds.isInside(sheet, setting, reading), Legs.differ(setting, reading), room);
  }

  public Reading reading() {
    return placed.reading();
  }

  public boolean found() {
    return placed.how() == How.FOUND;
  }
}
