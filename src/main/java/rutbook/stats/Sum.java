package rutbook.stats;

/** A sum that keeps the digits a plain one loses (Neumaier 1974). */
final class Sum {

  private double sum;
  private double lost;

  void add(double value) {
    double next = sum + value;
    lost += Math.abs(sum) >= Math.abs(value) ? (sum - next) + value : (value - next) + sum;
    sum = next;
  }

  double value() {
    return sum + lost;
  }
}
