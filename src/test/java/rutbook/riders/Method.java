package rutbook.riders;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import rutbook.notebook.Bench;
import rutbook.notebook.Change;
import rutbook.notebook.Feel;
import rutbook.notebook.Setting;
import rutbook.reasoning.NextChange;
import rutbook.reasoning.Rule;
import rutbook.reasoning.RuleBook;
import rutbook.reasoning.Suggestion;

/** A way to choose the next change after a moto; the rider makes it and rides again. */
interface Method {
  /**
   * What to change, and the chance that it was said to help, if the method says one.
   *
   * @param finer whether the method says that nothing has to be changed: for who wants more
   */
  record Choice(
      Change change, Setting setting, int doses, Optional<Double> chance, boolean finer) {}

  Optional<Choice> next(SimulatedRider rider, RuleBook book);

  /** The real code, by a rider who wants more even when told to leave it alone. */
  static Method reasoning() {
    return (rider, book) -> {
      NextChange next = NextChange.of(rider.notebook(), Bench.BIKE, book);
      return next.best().map(best -> taken(best, next.kind() == NextChange.Kind.LEAVE_ALONE));
    };
  }

  /** The real code, by a rider who leaves it alone when told to. */
  static Method resting() {
    Method reasoning = reasoning();
    return (rider, book) -> reasoning.next(rider, book).filter(each -> !each.finer());
  }

  private static Choice taken(Suggestion best, boolean finer) {
    return new Choice(
        Change.of(best.setting().id(), best.to()),
        best.setting(),
        best.doses(),
        Optional.of(best.chance()),
        finer);
  }

  /** The printed chart: the largest listed change for the worst complaint, taken back if worse. */
  static Method chart() {
    return new Method() {
      private Choice made;
      private int before;
      private final java.util.Set<String> spoilt = new java.util.HashSet<>();

      @Override
      public Optional<Choice> next(SimulatedRider rider, RuleBook book) {
        int total = rider.felt().values().stream().mapToInt(Feel::severity).sum();
        if (made != null && total > before) {
          spoilt.add(made.setting().id().text() + Integer.signum(made.doses()));
          Choice back = choice(rider, made.setting(), -made.doses());
          made = null;
          return Optional.of(back);
        }
        before = total;
        Optional<Choice> next =
            rider.felt().entrySet().stream()
                .filter(each -> each.getValue().severity() >= 1)
                .sorted(Comparator.comparingInt(each -> -each.getValue().severity()))
                .flatMap(
                    each ->
                        book.rules().stream()
                            .filter(rule -> rule.concerns(each.getKey()))
                            .sorted(Comparator.comparingDouble((Rule r) -> -Math.abs(r.size()))))
                .flatMap(rule -> listed(rider, rule).stream())
                .filter(c -> !spoilt.contains(c.setting().id().text() + Integer.signum(c.doses())))
                .findFirst();
        made = next.orElse(null);
        return next;
      }
    };
  }

  private static Optional<Choice> listed(SimulatedRider rider, Rule rule) {
    return rider.settings().stream()
        .filter(setting -> setting.role() == rule.role())
        .findFirst()
        .map(setting -> choice(rider, setting, rule.size() > 0 ? -2 : 2));
  }

  /** Any setting, two doses either way. */
  static Method random(long seed) {
    Random chance = new Random(seed);
    return (rider, book) -> {
      List<Setting> all = rider.settings();
      Setting setting = all.get(chance.nextInt(all.size()));
      return Optional.of(choice(rider, setting, chance.nextBoolean() ? 2 : -2));
    };
  }

  /**
   * Perfect knowledge of every effect under the same rules: one change of at most two doses a moto.
   * Takes the largest drop of the true discomfort; where none is left, a step towards the hidden
   * best setup.
   */
  static Method knowsTheTruth() {
    return (rider, book) -> {
      Choice best = null;
      double least = rider.discomfort() - 1e-9;
      for (Setting setting : rider.settings()) {
        for (int step : new int[] {-2, -1, 1, 2}) {
          int doses = rider.room(setting, step);
          double then = rider.after(setting, doses);
          if (doses != 0 && then < least) {
            least = then;
            best = choice(rider, setting, doses);
          }
        }
      }
      return best != null ? Optional.of(best) : rider.towardsBest(2);
    };
  }

  static Choice choice(SimulatedRider rider, Setting setting, int doses) {
    Change change = Change.of(setting.id(), rider.moved(setting, doses));
    return new Choice(change, setting, doses, Optional.empty(), false);
  }
}
