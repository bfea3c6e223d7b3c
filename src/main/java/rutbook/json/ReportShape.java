package rutbook.json;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import rutbook.notebook.Feel;
import rutbook.notebook.Lap;
import rutbook.notebook.Report;
import rutbook.notebook.TravelUsed;
import rutbook.units.Amount;

/** What the rider came back with. */
final class ReportShape extends RecordShape<Report> {
  private final Field<List<Lap>> laps =
      usually(List.of(), "laps", new ListShape<>(new LapShape(), true), Report::laps);
  private final Field<OptionalInt> trust =
      usually(OptionalInt.empty(), "trust", Numbers.WHOLE_IF_KNOWN, Report::trust);
  private final Field<List<Feel>> feel = list("feel", new FeelShape(), Report::feel);
  private final Field<TravelUsed> travel =
      usually(TravelUsed.NOT_NOTED, "travel", new TravelShape(), Report::travel);
  private final Field<Boolean> doubtful =
      usually(false, "doubtful", Numbers.YES_OR_NO, Report::doubtful);

  @Override
  Report make(Got got) {
    return new Report(
        got.get(laps), got.get(trust), got.get(feel), got.get(travel), got.get(doubtful));
  }

  /** How far an end went. */
  private static final class TravelShape extends RecordShape<TravelUsed> {
    {
      onOneLine();
    }

    private final Field<Optional<Amount>> front =
        optional("front", AmountShape.AMOUNT, TravelUsed::front);
    private final Field<Optional<Amount>> rear =
        optional("rear", AmountShape.AMOUNT, TravelUsed::rear);

    @Override
    TravelUsed make(Got got) {
      return new TravelUsed(got.get(front), got.get(rear));
    }
  }
}
