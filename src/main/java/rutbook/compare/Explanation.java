package rutbook.compare;

import java.util.OptionalInt;
import rutbook.notebook.End;
import rutbook.notebook.Ground;
import rutbook.notebook.Oil;
import rutbook.units.Amount;

/**
 * Something that sag or conditions explain of a comparison: reckoned from the bike's figures, or
 * plain sense; no rule of the trade and nothing from the rider's motos is in it.
 */
public sealed interface Explanation {

  /**
   * How high an end rides with the rider aboard.
   *
   * @param by more race sag on the second side; above zero it rides lower
   * @param beyondTape whether that is more than a tape may be out
   */
  record RidesAt(End end, Amount by, boolean beyondTape) implements Explanation {}

  /**
   * How the second side steers against the first: a rigid frame on its tyres.
   *
   * @param frontLower how much more the front is let down, by tube above clamp and race sag
   * @param rearLower the same of the rear, by race sag
   * @param rake above zero is slacker
   * @param trail above zero is more
   */
  record Steers(Amount frontLower, Amount rearLower, Amount rake, Amount trail)
      implements Explanation {}

  /** Rear race sag differs, though spring and preload of the shock are the same on both sides. */
  record NotBySetting(Amount by) implements Explanation {}

  /**
   * The fork's oil in warmer or colder air.
   *
   * @param air second side less the first
   * @param before oil in the fork on the first side
   * @param share by which it is thicker on the second side; below zero is thinner
   * @param ridden how warm the first side's oil is taken to be
   */
  record OilInAir(Amount air, Oil before, Oil after, double share, Amount ridden)
      implements Explanation {}

  /**
   * The air in a spring fork, if it was bled at each track.
   *
   * @param higher second track less the first
   * @param share by which it pushes more on the second side; below zero is less
   */
  record AirBled(Amount higher, double share) implements Explanation {}

  /**
   * Other ground on the second side, so that what was felt is not of the setup alone.
   *
   * @param rougher by how much of 5; below zero is smoother; empty when not noted on both
   */
  record OtherGround(Ground before, Ground after, OptionalInt rougher) implements Explanation {}

  /**
   * The same ground, rougher or smoother.
   *
   * @param by of 5, never zero
   */
  record Rougher(int by) implements Explanation {}
}
