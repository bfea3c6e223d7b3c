package rutbook.json;

import java.util.Optional;
import rutbook.notebook.ForkParts;
import rutbook.notebook.Geometry;
import rutbook.notebook.Parts;
import rutbook.notebook.Range;
import rutbook.notebook.SagWindows;
import rutbook.notebook.ShockParts;
import rutbook.units.Amount;

/** What is built into the bike. */
final class PartsShape extends RecordShape<Parts> {
  private final Field<ForkParts> fork = required("fork", new ForkPartsShape(), Parts::fork);
  private final Field<ShockParts> shock = required("shock", new ShockPartsShape(), Parts::shock);
  private final Field<Geometry> geometry =
      usually(Geometry.unknown(), "geometry", new GeometryShape(), Parts::geometry);
  private final Field<SagWindows> sag =
      usually(SagWindows.none(), "sag", new SagShape(), Parts::sag);

  @Override
  Parts make(Got got) {
    return new Parts(got.get(fork), got.get(shock), got.get(geometry), got.get(sag));
  }

  /** Steering geometry as far as it is known. */
  private static final class GeometryShape extends RecordShape<Geometry> {
    private final Field<Optional<Amount>> rake =
        optional("rake", AmountShape.AMOUNT, Geometry::rake);
    private final Field<Optional<Amount>> forkOffset =
        optional("forkOffset", AmountShape.AMOUNT, Geometry::forkOffset);
    private final Field<Optional<Amount>> frontRadius =
        optional("frontRadius", AmountShape.AMOUNT, Geometry::frontRadius);
    private final Field<Optional<Amount>> rearRadius =
        optional("rearRadius", AmountShape.AMOUNT, Geometry::rearRadius);
    private final Field<Optional<Amount>> wheelbase =
        optional("wheelbase", AmountShape.AMOUNT, Geometry::wheelbase);

    @Override
    Geometry make(Got got) {
      return new Geometry(
          got.get(rake),
          got.get(forkOffset),
          got.get(frontRadius),
          got.get(rearRadius),
          got.get(wheelbase));
    }
  }

  /** The sag wished for. */
  private static final class SagShape extends RecordShape<SagWindows> {
    private final Field<Optional<Range>> rearRace =
        optional("rearRace", new RangeShape(), SagWindows::rearRace);
    private final Field<Optional<Range>> rearFree =
        optional("rearFree", new RangeShape(), SagWindows::rearFree);
    private final Field<Optional<Range>> frontRace =
        optional("frontRace", new RangeShape(), SagWindows::frontRace);

    @Override
    SagWindows make(Got got) {
      return new SagWindows(got.get(rearRace), got.get(rearFree), got.get(frontRace));
    }
  }
}
