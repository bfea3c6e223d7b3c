package rutbook.physics;

/** Turns of a preload collar and what they do to sag. Preload does not change the rate. */
public final class Preload {

  private Preload() {}

  /**
   * Change of race sag in m by one turn more of preload, {@code pitch / MR}: about 3 mm for a pitch
   * of 1 mm and spring over wheel 1/3. More preload is less sag.
   *
   * @param pitch of the collar's thread, m, 0.1 to 10 mm
   */
  public static double sagPerTurn(double pitch, MotionRatio ratio) {
    return pitch(pitch) / ratio.springOverWheel();
  }

  /** Turns for a change of sag in m: positive is more preload, which is less sag. */
  public static double turns(double sagLess, double pitch, MotionRatio ratio) {
    return Given.within("change of sag", sagLess, -1, 1) / sagPerTurn(pitch, ratio);
  }

  /** Preload in m that leaves a sag, when spring and preload together compress this far. */
  public static double forSag(double compression, double sag) {
    return Given.within("spring compression", compression, 0, 2) - Given.length("sag", sag);
  }

  private static double pitch(double pitch) {
    return Given.within("thread pitch", pitch, 1e-4, 1e-2);
  }
}
