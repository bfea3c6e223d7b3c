package rutbook.json;

import java.util.List;
import rutbook.notebook.Bike;
import rutbook.notebook.BikeId;
import rutbook.notebook.Sheet;

/** A bike with its sheets, oldest first. */
final class BikeShape extends RecordShape<Bike> {
  private final Field<BikeId> id = required("id", Ids.BIKE, Bike::id);
  private final Field<String> name = required("name", Texts.TEXT, Bike::name);
  private final Field<List<Sheet>> sheets =
      required("sheets", new ListShape<>(new SheetShape()), Bike::sheets);

  @Override
  Bike make(Got got) {
    return new Bike(got.get(id), got.get(name), got.get(sheets));
  }
}
