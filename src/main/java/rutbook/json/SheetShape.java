package rutbook.json;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.Chamber;
import rutbook.notebook.Parts;
import rutbook.notebook.ServiceItem;
import rutbook.notebook.Setting;
import rutbook.notebook.Sheet;
import rutbook.notebook.Side;
import rutbook.notebook.Tightening;

/** The bike's data from a day on. */
final class SheetShape extends RecordShape<Sheet> {
  private final Field<LocalDate> from = required("from", Texts.DAY, Sheet::from);
  private final Field<String> reason = note("reason", Sheet::reason);
  private final Field<List<Setting>> settings =
      list("settings", new SettingShape(), Sheet::settings);
  private final Field<List<Chamber>> chambers =
      list("chambers", new ChamberShape(), Sheet::chambers);
  private final Field<Parts> parts = required("parts", new PartsShape(), Sheet::parts);
  private final Field<List<Tightening>> torques =
      list("torques", new TighteningShape(), Sheet::torques);
  private final Field<List<ServiceItem>> services =
      list("services", new ServiceItemShape(), Sheet::services);
  private final Field<Optional<Side>> pinchedFirst =
      optional("pinchedFirst", Words.of(Side.class), Sheet::pinchedFirst);

  @Override
  Sheet make(Got got) {
    return new Sheet(
        got.get(from),
        got.get(reason),
        got.get(settings),
        got.get(chambers),
        got.get(parts),
        got.get(torques),
        got.get(services),
        got.get(pinchedFirst));
  }
}
