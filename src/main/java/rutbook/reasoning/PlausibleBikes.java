package rutbook.reasoning;

import java.util.List;

/**
 * Bikes as they may truly be, all in keeping with the rules and with what was ridden: how bad each
 * complaint is now, and what a dose of each setting does to it. Chances are shares of them.
 */
record PlausibleBikes(List<Bike> bikes) {
  /**
   * One that may be true.
   *
   * @param here severity of each complaint with today's setup, below 0 when comfortably absent
   * @param effect severity points per dose, by complaint and setting
   * @param left severity of each complaint today at the most comfortable setup
   * @param rules how many rules hold on it, and on bikes like it
   */
  record Bike(double[] here, double[][] effect, double[] left, RuleTrust rules) {}

  PlausibleBikes {
    bikes = List.copyOf(bikes);
  }
}
