package rutbook.json;

import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import rutbook.json.JsonFault.Expected;
import rutbook.json.JsonFault.Kind;

/** Values that are a plain number, or yes or no, in the file. */
final class Numbers {
  private static final int FIGURE_DIGITS = 6;

  static final Shape<Integer> WHOLE =
      new Shape<>() {
        @Override
        public Integer read(In in) throws IOException {
          return whole(in);
        }

        @Override
        public void write(Integer value, Out out) throws IOException {
          out.generator().writeNumber(value);
        }
      };

  static final Shape<OptionalInt> WHOLE_IF_KNOWN =
      new Shape<>() {
        @Override
        public OptionalInt read(In in) throws IOException {
          return OptionalInt.of(whole(in));
        }

        @Override
        public void write(OptionalInt value, Out out) throws IOException {
          out.generator().writeNumber(value.orElseThrow());
        }
      };

  static final Shape<OptionalDouble> NUMBER_IF_KNOWN =
      new Shape<>() {
        @Override
        public OptionalDouble read(In in) throws IOException {
          requireNumber(in);
          return OptionalDouble.of(in.parser().getDoubleValue());
        }

        @Override
        public void write(OptionalDouble value, Out out) throws IOException {
          out.generator().writeNumber(value.orElseThrow());
        }
      };

  /** A number kept digit by digit. */
  static final Shape<BigDecimal> DECIMAL =
      new Shape<>() {
        @Override
        public BigDecimal read(In in) throws IOException {
          requireNumber(in);
          return in.parser().getDecimalValue();
        }

        @Override
        public void write(BigDecimal value, Out out) throws IOException {
          out.generator().writeNumber(value);
        }
      };

  /** A computed figure, to six digits: more than anything on a bike is known to. */
  static final Writes<Double> FIGURE =
      (value, out) -> {
        BigDecimal figure = new BigDecimal(value).round(new MathContext(FIGURE_DIGITS));
        BigDecimal plain = figure.signum() == 0 ? BigDecimal.ZERO : figure.stripTrailingZeros();
        out.generator().writeNumber(plain.toPlainString());
      };

  static final Shape<Boolean> YES_OR_NO =
      new Shape<>() {
        @Override
        public Boolean read(In in) throws IOException {
          if (in.token() != JsonToken.VALUE_TRUE && in.token() != JsonToken.VALUE_FALSE) {
            throw in.wrongType(Expected.YES_OR_NO);
          }
          return in.token() == JsonToken.VALUE_TRUE;
        }

        @Override
        public void write(Boolean value, Out out) throws IOException {
          out.generator().writeBoolean(value);
        }
      };

  private Numbers() {}

  private static int whole(In in) throws IOException {
    in.require(JsonToken.VALUE_NUMBER_INT, Expected.WHOLE_NUMBER);
    String text = in.parser().getText();
    try {
      return Integer.parseInt(text);
    } catch (NumberFormatException tooLarge) {
      throw in.fault(Kind.BAD_VALUE, text, Expected.WHOLE_NUMBER, List.of(), tooLarge);
    }
  }

  private static void requireNumber(In in) throws IOException {
    if (in.token() != JsonToken.VALUE_NUMBER_INT && in.token() != JsonToken.VALUE_NUMBER_FLOAT) {
      throw in.wrongType(Expected.NUMBER);
    }
  }
}
