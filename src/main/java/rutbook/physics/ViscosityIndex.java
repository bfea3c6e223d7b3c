package rutbook.physics;

import rutbook.physics.ReferenceOils.Reference;

/**
 * Viscosity index of ASTM D2270: how little an oil thins between 40 and 100 °C.
 *
 * @param value unrounded
 * @param procedure A up to 100, B above
 * @param estimate true when the reference came from between carried rows of the standard's table
 */
public record ViscosityIndex(double value, Procedure procedure, boolean estimate)
    implements IndexAnswer {

  /** The two calculations of the standard. */
  public enum Procedure {
    A,
    B
  }

  /** The index as the standard reports it: a whole number, halves to the even one. */
  public long whole() {
    return (long) Math.rint(value);
  }

  /**
   * The index of an oil.
   *
   * @param kv40 mm²/s at 40 °C, above kv100, at most 1e6
   * @param kv100 mm²/s at 100 °C, 0.21 to 1000
   * @return the index; none below 2 mm²/s at 100 °C, nor where procedure A would need a row that is
   *     not carried
   */
  public static IndexAnswer of(double kv40, double kv100) {
    Given.within("viscosity at 100 °C", kv100, D341.LEAST, 1000);
    Given.within("viscosity at 40 °C", kv40, Math.nextUp(kv100), 1e6);
    if (kv100 < ReferenceOils.THINNEST) {
      return new None(Why.TOO_THIN);
    }
    Reference reference = ReferenceOils.at(kv100);
    if (kv40 <= reference.h()) {
      return new ViscosityIndex(
          procedureB(reference.h(), kv40, kv100), Procedure.B, reference.estimate());
    }
    if (reference.l().isEmpty()) {
      return new None(Why.ROW_NOT_CARRIED);
    }
    double l = reference.l().getAsDouble();
    return new ViscosityIndex(procedureA(l, reference.h(), kv40), Procedure.A, false);
  }

  /** {@code VI = 100 (L − U)/(L − H)}, all at 40 °C in mm²/s; L must be above H. */
  static double procedureA(double l, double h, double kv40) {
    return 100 * (l - kv40) / (l - h);
  }

  /** {@code VI = (10^N − 1)/0.00715 + 100}. */
  static double procedureB(double h, double kv40, double kv100) {
    return (Math.pow(10, exponentB(h, kv40, kv100)) - 1) / 0.00715 + 100;
  }

  /** {@code N = (log H − log U)/log Y}. */
  static double exponentB(double h, double kv40, double kv100) {
    return (Math.log10(h) - Math.log10(kv40)) / Math.log10(kv100);
  }
}
