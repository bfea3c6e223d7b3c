package rutbook.json;

import java.util.Optional;
import rutbook.notebook.Carrier;
import rutbook.notebook.Chamber;
import rutbook.notebook.ChamberId;
import rutbook.notebook.ChamberVolume;
import rutbook.notebook.Measure;
import rutbook.notebook.Range;
import rutbook.units.Amount;

/** A place that holds oil. */
final class ChamberShape extends RecordShape<Chamber> {
  private final Field<ChamberId> id = required("id", Ids.CHAMBER, Chamber::id);
  private final Field<String> name = required("name", Texts.TEXT, Chamber::name);
  private final Field<Carrier> carrier =
      required("carrier", Words.of(Carrier.class), Chamber::carrier);
  private final Field<Measure> measure =
      required("measure", Words.of(Measure.class), Chamber::measure);
  private final Field<Range> limits = required("limits", new RangeShape(), Chamber::limits);
  private final Field<Optional<Amount>> nominal =
      optional("nominal", AmountShape.AMOUNT, Chamber::nominal);
  private final Field<Optional<ChamberVolume>> volume =
      optional("volume", new VolumeShape(), Chamber::volume);

  @Override
  Chamber make(Got got) {
    return new Chamber(
        got.get(id),
        got.get(name),
        got.get(carrier),
        got.get(measure),
        got.get(limits),
        got.get(nominal),
        got.get(volume));
  }

  /** How much it holds when empty. */
  private static final class VolumeShape extends RecordShape<ChamberVolume> {
    {
      onOneLine();
    }

    private final Field<Amount> volume =
        required("volume", AmountShape.AMOUNT, ChamberVolume::volume);
    private final Field<Boolean> measured =
        required("measured", Numbers.YES_OR_NO, ChamberVolume::measured);

    @Override
    ChamberVolume make(Got got) {
      return new ChamberVolume(got.get(volume), got.get(measured));
    }
  }
}
