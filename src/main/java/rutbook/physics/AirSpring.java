package rutbook.physics;

import java.util.List;

/**
 * The air of one fork leg: every body of trapped gas that pushes on it, and the air outside.
 *
 * <p>Our model on published gas laws, an estimate: no friction, no oil vapour, no stretch.
 *
 * @param columns the trapped gas; none is a leg open to the air and pushes with nothing
 * @param outside absolute pressure of the air outside, Pa
 * @param travel full stroke, m, above zero; no column may be solid there
 */
public record AirSpring(List<GasColumn> columns, double outside, double travel) {

  public AirSpring {
    columns = List.copyOf(columns);
    Given.pressure("outside pressure", outside);
    Given.within("travel", travel, 1e-3, 2);
    for (GasColumn column : columns) {
      column.pressureAt(travel, Polytropic.SLOW);
    }
  }

  /** Force in N at a stroke of 0 to full travel, m, with a polytropic exponent of 1 to 5/3. */
  public double force(double stroke, double exponent) {
    inside(stroke);
    double sum = 0;
    for (GasColumn column : columns) {
      sum += column.force(stroke, exponent, outside);
    }
    return sum;
  }

  /** Work in J from one stroke to another, closed form; negative when the second is less. */
  public double energy(double from, double to, double exponent) {
    inside(from);
    inside(to);
    double sum = 0;
    for (GasColumn column : columns) {
      sum += column.energy(to, exponent, outside) - column.energy(from, exponent, outside);
    }
    return sum;
  }

  /** Stiffness in N/m at a stroke. */
  public double rate(double stroke, double exponent) {
    inside(stroke);
    double sum = 0;
    for (GasColumn column : columns) {
      sum += column.rate(stroke, exponent);
    }
    return sum;
  }

  private void inside(double stroke) {
    Given.within("stroke", stroke, 0, travel);
  }
}
