package rutbook.json;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.MotionRatio;
import rutbook.notebook.Range;
import rutbook.notebook.RatioConvention;
import rutbook.notebook.ShockParts;
import rutbook.units.Amount;

/** How the rear is built. */
final class ShockPartsShape extends RecordShape<ShockParts> {
  private final Field<Optional<Amount>> wheelTravel =
      optional("wheelTravel", AmountShape.AMOUNT, ShockParts::wheelTravel);
  private final Field<Optional<MotionRatio>> motionRatio =
      optional("motionRatio", new RatioShape(), ShockParts::motionRatio);
  private final Field<Optional<Amount>> springFreeLength =
      optional("springFreeLength", AmountShape.AMOUNT, ShockParts::springFreeLength);
  private final Field<Optional<Amount>> collarPitch =
      optional("collarPitch", AmountShape.AMOUNT, ShockParts::collarPitch);
  private final Field<List<Amount>> springsAtHand =
      usually(
          List.of(),
          "springsAtHand",
          new ListShape<>(AmountShape.AMOUNT, true),
          ShockParts::springsAtHand);
  private final Field<Boolean> chargedReservoir =
      required("chargedReservoir", Numbers.YES_OR_NO, ShockParts::chargedReservoir);
  private final Field<String> valving = note("valving", ShockParts::valving);
  private final Field<Optional<Range>> gasPressure =
      optional("gasPressure", new RangeShape(), ShockParts::gasPressure);

  @Override
  ShockParts make(Got got) {
    return new ShockParts(
        got.get(wheelTravel),
        got.get(motionRatio),
        got.get(springFreeLength),
        got.get(collarPitch),
        got.get(springsAtHand),
        got.get(chargedReservoir),
        got.get(valving),
        got.get(gasPressure));
  }

  /** A ratio and the way round it is written. */
  private static final class RatioShape extends RecordShape<MotionRatio> {
    {
      onOneLine();
    }

    private final Field<BigDecimal> value = required("value", Numbers.DECIMAL, MotionRatio::value);
    private final Field<RatioConvention> convention =
        required("convention", Words.of(RatioConvention.class), MotionRatio::convention);

    @Override
    MotionRatio make(Got got) {
      return new MotionRatio(got.get(value), got.get(convention));
    }
  }
}
