package rutbook.json;

import rutbook.notebook.How;
import rutbook.notebook.Placed;
import rutbook.notebook.Reading;
import rutbook.notebook.SettingId;

/** The reading of one setting; it was set unless it says that it was found. */
final class PlacedShape extends RecordShape<Placed> {
  {
    onOneLine();
  }

  private final Field<SettingId> setting = required("setting", Ids.SETTING, Placed::setting);
  private final Field<Reading> reading = required("reading", ReadingShape.READING, Placed::reading);
  private final Field<How> how = usually(How.SET, "how", Words.of(How.class), Placed::how);

  @Override
  Placed make(Got got) {
    return new Placed(got.get(setting), got.get(reading), got.get(how));
  }
}
