package rutbook.json;

import java.io.IOException;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rutbook.json.JsonFault.Expected;
import rutbook.json.JsonFault.Kind;
import rutbook.units.Dimension;
import rutbook.units.Display;
import rutbook.units.Unit;

/** The unit shown for each kind of quantity: {@code {"volume": "mL", …}}. */
final class DisplayShape extends RecordShape<Display> {
  private final List<Field<Unit>> units = Stream.of(Dimension.values()).map(this::unit).toList();

  private Field<Unit> unit(Dimension dimension) {
    return required(
        Words.word(dimension), new UnitShape(dimension), display -> display.unit(dimension));
  }

  @Override
  Display make(Got got) {
    return new Display(
        units.stream()
            .map(got::get)
            .collect(Collectors.toMap(Unit::dimension, Function.identity())));
  }

  /** The sign of a unit of one dimension. */
  record UnitShape(Dimension dimension) implements Shape<Unit> {
    @Override
    public Unit read(In in) throws IOException {
      String sign = in.text(Expected.WORD);
      List<Unit> known = Unit.of(dimension);
      return known.stream()
          .filter(unit -> unit.symbol().equals(sign))
          .findFirst()
          .orElseThrow(
              () ->
                  in.fault(
                      Kind.UNKNOWN_WORD,
                      sign,
                      Expected.WORD,
                      known.stream().map(Unit::symbol).toList()));
    }

    @Override
    public void write(Unit unit, Out out) throws IOException {
      out.text(unit.symbol());
    }
  }
}
