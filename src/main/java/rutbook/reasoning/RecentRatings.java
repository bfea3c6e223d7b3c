package rutbook.reasoning;

/**
 * The latest motos as numbers.
 *
 * @param x doses of each setting from the baseline, by moto and setting
 * @param here doses of each setting from the baseline as the bike is now
 * @param order of each moto within its day
 * @param orderNow of the last moto within today
 * @param day of each moto: 0 for today, numbered back
 * @param unsure steps of noise by which each moto is less sure than others, from 0
 * @param code of each complaint in each moto, see {@link RatingChances}
 */
record RecentRatings(
    double[][] x,
    double[] here,
    double[] order,
    double orderNow,
    int[] day,
    int[] unsure,
    int[][] code) {
  int motos() {
    return x.length;
  }

  int days() {
    int most = 0;
    for (int each : day) {
      most = Math.max(most, each);
    }
    return most + 1;
  }
}
