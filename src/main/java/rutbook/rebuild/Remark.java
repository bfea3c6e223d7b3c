package rutbook.rebuild;

import rutbook.notebook.Range;
import rutbook.notebook.Reading;
import rutbook.notebook.SettingId;
import rutbook.units.Amount;

/** What physics or reasoning has to say beside a step: a figure and whether it is an estimate. */
public sealed interface Remark {
  /** Where a figure comes from. */
  enum Basis {
    CURVE,
    RULE,
    OWN_MOTOS
  }

  /**
   * What a held fill does to the fork, relative to the wanted one: -0.04 is 4 % less.
   *
   * @param endAirForce change of the air force at the end of the travel
   * @param totalEnergy change of the energy over the whole travel
   */
  record Curve(double endAirForce, double totalEnergy, boolean estimate) implements Remark {}

  /** Another setting that can make up for a shortfall, itself inside its limits. */
  record MakesUp(SettingId setting, Reading from, Reading to, Basis basis, boolean estimate)
      implements Remark {}

  /** Viscosity of the new oil over that of the old one at riding temperature. */
  record Viscosity(double ratio, Amount temperature, boolean estimate) implements Remark {}

  /** Rate of the spring fitted over that of the baseline. */
  record SpringRatio(SettingId setting, double ratio) implements Remark {}

  /** New parts settle: hours to be marked as running in; common practice. */
  record RunningIn(Range hours) implements Remark {}
}
