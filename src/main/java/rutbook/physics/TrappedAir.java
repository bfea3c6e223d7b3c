package rutbook.physics;

/**
 * The pressure of the air closed in at full extension and of the air outside, both absolute, Pa.
 * Bled where it is ridden the two are the same and the leg pushes with nothing at full extension.
 */
public record TrappedAir(double inside, double outside) {

  public TrappedAir {
    Given.pressure("trapped air", inside);
    Given.pressure("outside air", outside);
  }

  /** Air bled at this absolute pressure in Pa and ridden in it. */
  public static TrappedAir bledAt(double pressure) {
    return new TrappedAir(pressure, pressure);
  }
}
