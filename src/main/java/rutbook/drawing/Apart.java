package rutbook.drawing;

/** Keeps labels apart: each as near to where it belongs as its neighbours allow. */
final class Apart {
  private Apart() {}

  /**
   * Places at least so far apart, in the order given, inside bounds where they fit at all; where
   * they do not, they are spread evenly and closer.
   *
   * @param wanted rising
   */
  static double[] places(double[] wanted, double apart, double least, double most) {
    int count = wanted.length;
    double[] places = wanted.clone();
    if (count < 2) {
      return places;
    }
    double distance = Math.min(apart, (most - least) / (count - 1));
    for (int i = 1; i < count; i++) {
      places[i] = Math.max(places[i], places[i - 1] + distance);
    }
    places[count - 1] = Math.min(places[count - 1], most);
    for (int i = count - 2; i >= 0; i--) {
      places[i] = Math.min(places[i], places[i + 1] - distance);
    }
    double under = Math.max(0, least - places[0]);
    places[0] += under;
    for (int i = 1; i < count; i++) {
      places[i] = Math.max(places[i], places[i - 1] + distance);
    }
    return places;
  }
}
