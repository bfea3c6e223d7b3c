package rutbook.physics;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Optional;

/**
 * The viscosity grades of ISO 3448: a middle at 40 °C and ten per cent either way, with gaps
 * between them. A "W" label is no such grade.
 */
public enum ViscosityGrade {
  VG2("2.2"),
  VG3("3.2"),
  VG5("4.6"),
  VG7("6.8"),
  VG10("10"),
  VG15("15"),
  VG22("22"),
  VG32("32"),
  VG46("46"),
  VG68("68"),
  VG100("100"),
  VG150("150"),
  VG220("220"),
  VG320("320"),
  VG460("460"),
  VG680("680"),
  VG1000("1000"),
  VG1500("1500"),
  VG2200("2200"),
  VG3200("3200");

  private final BigDecimal middle;

  ViscosityGrade(String middle) {
    this.middle = new BigDecimal(middle);
  }

  /** Least viscosity at 40 °C, mm²/s. */
  public double least() {
    return middle.multiply(new BigDecimal("0.9")).doubleValue();
  }

  /** Middle of the grade at 40 °C, mm²/s. */
  public double middle() {
    return middle.doubleValue();
  }

  /** Greatest viscosity at 40 °C, mm²/s. */
  public double most() {
    return middle.multiply(new BigDecimal("1.1")).doubleValue();
  }

  /** The grade of a viscosity at 40 °C in mm²/s, ends included; empty in a gap or outside all. */
  public static Optional<ViscosityGrade> of(double kv40) {
    Given.within("viscosity at 40 °C", kv40, D341.LEAST, 1e6);
    return Arrays.stream(values())
        .filter(grade -> kv40 >= grade.least() && kv40 <= grade.most())
        .findFirst();
  }
}
