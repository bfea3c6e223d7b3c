package rutbook.json;

import java.util.Optional;
import rutbook.notebook.AirLeg;
import rutbook.notebook.ForkKind;
import rutbook.notebook.ForkParts;
import rutbook.units.Amount;

/** How the fork is built. */
final class ForkPartsShape extends RecordShape<ForkParts> {
  private final Field<ForkKind> kind = required("kind", Words.of(ForkKind.class), ForkParts::kind);
  private final Field<Optional<Amount>> travel =
      optional("travel", AmountShape.AMOUNT, ForkParts::travel);
  private final Field<Optional<Amount>> sealDiameter =
      optional("sealDiameter", AmountShape.AMOUNT, ForkParts::sealDiameter);
  private final Field<Optional<Amount>> tubeBore =
      optional("tubeBore", AmountShape.AMOUNT, ForkParts::tubeBore);
  private final Field<Optional<Amount>> cartridgeRod =
      optional("cartridgeRod", AmountShape.AMOUNT, ForkParts::cartridgeRod);
  private final Field<Optional<Amount>> springSteel =
      optional("springSteel", AmountShape.AMOUNT, ForkParts::springSteel);
  private final Field<Optional<AirLeg>> airLeg =
      optional("airLeg", new AirLegShape(), ForkParts::airLeg);
  private final Field<String> valving = note("valving", ForkParts::valving);

  @Override
  ForkParts make(Got got) {
    return new ForkParts(
        got.get(kind),
        got.get(travel),
        got.get(sealDiameter),
        got.get(tubeBore),
        got.get(cartridgeRod),
        got.get(springSteel),
        got.get(airLeg),
        got.get(valving));
  }

  /** The gas chambers of an air leg. */
  private static final class AirLegShape extends RecordShape<AirLeg> {
    private final Field<Amount> pistonDiameter =
        required("pistonDiameter", AmountShape.AMOUNT, AirLeg::pistonDiameter);
    private final Field<Amount> positiveVolume =
        required("positiveVolume", AmountShape.AMOUNT, AirLeg::positiveVolume);
    private final Field<Amount> negativeVolume =
        required("negativeVolume", AmountShape.AMOUNT, AirLeg::negativeVolume);

    @Override
    AirLeg make(Got got) {
      return new AirLeg(got.get(pistonDiameter), got.get(positiveVolume), got.get(negativeVolume));
    }
  }
}
