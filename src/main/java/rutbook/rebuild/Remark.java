package rutbook.rebuild;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rutbook.figures.Need;
import rutbook.notebook.Oil;
import rutbook.notebook.Range;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Symptom;
import rutbook.units.Amount;

/** What physics or reasoning has to say beside a step: a figure and whether it is an estimate. */
public sealed interface Remark {
  /** Where a figure comes from. */
  enum Basis {
    /** The force-travel curve of the fork. */
    CURVE,
    /** The straight-line model of the sag worksheet. */
    SAG_WORKSHEET,
    /** A rule of the trade. */
    RULE,
    OWN_MOTOS
  }

  /**
   * What a held fill does to the fork, relative to the wanted one: -0.04 is 4 % less.
   *
   * @param endAirForce change of the air force at the end of the travel
   * @param totalEnergy change of the energy over the whole travel
   * @param estimate whether something was assumed besides the model itself
   */
  record Curve(double endAirForce, double totalEnergy, boolean estimate) implements Remark {}

  /** There is no curve to say what a held setting does, and what it would need. */
  record NoCurve(List<Need> needs) implements Remark {
    public NoCurve {
      needs = List.copyOf(needs);
    }
  }

  /**
   * Another setting that can make up for a shortfall, itself inside its limits.
   *
   * @param part of the missing energy that it gives back by the curve; empty by a rule
   * @param against the symptom that it is good for, by a rule
   */
  record MakesUp(
      Setting setting,
      Reading from,
      Reading to,
      Basis basis,
      OptionalDouble part,
      Optional<Symptom> against)
      implements Remark {
    MakesUp held(Reading at) {
      return new MakesUp(setting, from, at, basis, part, against);
    }
  }

  /**
   * Viscosity of the new oil over that of the old one; above one is slower, and firmer at low
   * speed. A sense with its figure, never clicks.
   *
   * @param temperature of the oil, taken to be that when ridden
   */
  record Viscosity(Oil old, Oil now, double ratio, Amount temperature) implements Remark {}

  /** What new oil does is not known. */
  record NoViscosity(Why why) implements Remark {
    /** What is missing. */
    public enum Why {
      /** The oil that comes out was never noted. */
      OLD_OIL_NOT_NOTED,
      /** The oil that goes in is not noted. */
      NEW_OIL_NOT_NOTED,
      /** One of the two has no viscosities on the shelf that make a line. */
      VISCOSITY_NOT_ON_SHELF
    }
  }

  /** Rate of the spring fitted over that of the baseline. */
  record SpringRatio(SettingId setting, double ratio) implements Remark {}

  /** New parts settle: hours to be marked as running in; common practice. */
  record RunningIn(Range hours) implements Remark {}
}
