package rutbook.json;

import java.util.Optional;
import java.util.OptionalInt;
import rutbook.notebook.Carrier;
import rutbook.notebook.Datum;
import rutbook.notebook.Limits;
import rutbook.notebook.Range;
import rutbook.notebook.Role;
import rutbook.notebook.Scale;
import rutbook.notebook.Sense;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Work;
import rutbook.units.Amount;

/** A thing on the bike that can be set. */
final class SettingShape extends RecordShape<Setting> {
  private final Field<SettingId> id = required("id", Ids.SETTING, Setting::id);
  private final Field<String> name = required("name", Texts.TEXT, Setting::name);
  private final Field<Role> role = required("role", Words.of(Role.class), Setting::role);
  private final Field<Carrier> carrier =
      required("carrier", Words.of(Carrier.class), Setting::carrier);
  private final Field<Scale> scale = required("scale", new ScaleShape(), Setting::scale);
  private final Field<Work> work = required("work", Words.of(Work.class), Setting::work);

  @Override
  Setting make(Got got) {
    return new Setting(
        got.get(id), got.get(name), got.get(role), got.get(carrier), got.get(scale), got.get(work));
  }

  /** How it is counted. */
  private static final class ScaleShape extends RecordShape<Scale> {
    private final Field<Limits> limits = required("limits", new LimitsShape(), Scale::limits);
    private final Field<Optional<Range>> wish = optional("wish", new RangeShape(), Scale::wish);
    private final Field<Amount> step = required("step", AmountShape.AMOUNT, Scale::step);
    private final Field<Datum> datum = required("datum", Words.of(Datum.class), Scale::datum);
    private final Field<Sense> greater = required("greater", Words.of(Sense.class), Scale::greater);
    private final Field<OptionalInt> total =
        usually(OptionalInt.empty(), "total", Numbers.WHOLE_IF_KNOWN, Scale::total);

    @Override
    Scale make(Got got) {
      return new Scale(
          got.get(limits),
          got.get(wish),
          got.get(step),
          got.get(datum),
          got.get(greater),
          got.get(total));
    }
  }
}
