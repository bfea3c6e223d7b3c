package rutbook.riders;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import rutbook.notebook.Bench;
import rutbook.notebook.Bite;
import rutbook.notebook.Bounds;
import rutbook.notebook.Change;
import rutbook.notebook.Conditions;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Feel;
import rutbook.notebook.Head;
import rutbook.notebook.Moto;
import rutbook.notebook.Notebook;
import rutbook.notebook.Reading;
import rutbook.notebook.Ready;
import rutbook.notebook.Role;
import rutbook.notebook.Section;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Symptom;
import rutbook.notebook.When;
import rutbook.reasoning.Complaint;
import rutbook.reasoning.Doses;
import rutbook.reasoning.Rule;
import rutbook.reasoning.RuleBook;

/** A rider with a hidden best setup and hidden effects, who rates what the bike does. */
final class SimulatedRider {
  /** What makes a rider harder to serve than the rules expect. */
  enum Kind {
    LINEAR,
    CURVED,
    ROUGHENING,
    LAZY_NOTES,
    COARSE_RATINGS,
    WRONG_RULES,
    MIXTURE;

    boolean is(Kind kind) {
      return this == kind || this == MIXTURE;
    }
  }

  static final double RATING_NOISE = 0.6;
  static final double FLIPPED = 0.08;
  static final double FLIPPED_WRONG = 0.25;
  static final double ZERO = 0.12;
  static final double SPREAD = 0.4;
  static final double ROUGHENS = 0.12;
  static final double CURVE = 0.04;

  /** What riders of the bench rate: twelve complaints, with the answer to the deciding question. */
  private static final List<Feel> RATED =
      List.of(
          feel(End.FRONT, Section.SQUARE_EDGES, Symptom.HARSH, Bite.DEFLECTS, When.FIRST_BUMP),
          feel(End.FRONT, Section.LANDING, Symptom.BOTTOMS, null, null),
          feel(End.FRONT, Section.CORNER_ENTRY, Symptom.DIVES, null, null),
          feel(End.FRONT, Section.BRAKING_BUMPS, Symptom.PACKS, Bite.DEFLECTS, null),
          feel(End.FRONT, Section.MID_CORNER, Symptom.PUSHES, null, null),
          feel(End.FRONT, Section.STRAIGHT, Symptom.HEADSHAKE, null, null),
          feel(End.REAR, Section.SQUARE_EDGES, Symptom.KICKS, null, When.FIRST_BUMP),
          feel(End.REAR, Section.WHOOPS, Symptom.PACKS, null, null),
          feel(End.REAR, Section.LANDING, Symptom.BOTTOMS, null, null),
          feel(End.REAR, Section.ROLLERS, Symptom.WALLOWS, null, null),
          feel(End.REAR, Section.CORNER_EXIT, Symptom.SQUATS, null, null),
          feel(End.REAR, Section.ACCELERATION_BUMPS, Symptom.NO_DRIVE, null, null));

  private static final List<Role> MOVED =
      List.of(
          Role.FORK_COMPRESSION,
          Role.FORK_REBOUND,
          Role.FORK_OIL,
          Role.TUBE_ABOVE_CLAMP,
          Role.SHOCK_LOW_SPEED,
          Role.SHOCK_HIGH_SPEED,
          Role.SHOCK_REBOUND,
          Role.SHOCK_PRELOAD);

  private final Kind kind;
  private final Random chance;
  private final List<Setting> settings;
  private final double[][] effect;
  private final double[] best;
  private final double[] at;
  private final double[] ease;
  private Setup setup = Bench.setup();
  private final List<Moto> motos = new ArrayList<>();
  private final double start;

  SimulatedRider(Kind kind, RuleBook book, long seed) {
    this.kind = kind;
    this.chance = new Random(seed);
    settings = Bench.settings().stream().filter(each -> MOVED.contains(each.role())).toList();
    effect = new double[RATED.size()][settings.size()];
    ease = new double[RATED.size()];
    best = new double[settings.size()];
    at = new double[settings.size()];
    double first;
    do {
      draw(book);
      first = discomfort();
    } while (first < 3);
    start = first;
  }

  private static Feel feel(End end, Section section, Symptom symptom, Bite bite, When when) {
    return new Feel(end, section, symptom, 0, Optional.ofNullable(bite), Optional.ofNullable(when));
  }

  private void draw(RuleBook book) {
    double flipped = kind.is(Kind.WRONG_RULES) ? FLIPPED_WRONG : FLIPPED;
    for (int s = 0; s < RATED.size(); s++) {
      ease[s] = -0.2 - 0.6 * chance.nextDouble();
      for (int j = 0; j < settings.size(); j++) {
        double size = 0;
        for (Rule rule : book.rules()) {
          if (rule.role() == settings.get(j).role() && holds(rule, RATED.get(s))) {
            size += rule.size();
          }
        }
        double spread = Math.exp(SPREAD * chance.nextGaussian());
        double draw = chance.nextDouble();
        effect[s][j] = draw < ZERO ? 0 : draw < ZERO + flipped ? -size * spread : size * spread;
      }
    }
    for (int j = 0; j < settings.size(); j++) {
      at[j] = 0;
      int away = 3 + chance.nextInt(4);
      int wish = chance.nextDouble() < 0.5 ? (chance.nextBoolean() ? away : -away) : 0;
      best[j] = room(settings.get(j), wish);
    }
  }

  private static boolean holds(Rule rule, Feel feel) {
    return rule.concerns(Complaint.of(feel))
        && (rule.bite().isEmpty() || rule.bite().equals(feel.bite()))
        && (rule.when().isEmpty() || rule.when().equals(feel.when()));
  }

  /** True severity of a complaint with the setup as it is, without the day's roughening. */
  private double severity(int s) {
    double sum = ease[s];
    for (int j = 0; j < settings.size(); j++) {
      double off = at[j] - best[j];
      sum +=
          effect[s][j] * off
              + (kind.is(Kind.CURVED) ? CURVE * Math.abs(effect[s][j]) * off * off : 0);
    }
    return sum;
  }

  /** Summed true severity, roughening left out. */
  double discomfort() {
    double sum = 0;
    for (int s = 0; s < RATED.size(); s++) {
      sum += Math.max(0, severity(s));
    }
    return sum;
  }

  double start() {
    return start;
  }

  boolean solved() {
    return discomfort() < start / 4;
  }

  /** The true discomfort that would be left after a change. */
  double after(Setting setting, int doses) {
    int j = settings.indexOf(setting);
    at[j] += doses;
    double then = discomfort();
    at[j] -= doses;
    return then;
  }

  /** Whether no complaint is truly 2 or more, or no change of two doses would gain a quarter. */
  boolean nothingToGain() {
    return maxSeverity() < 2
        || settings.stream()
            .allMatch(
                setting ->
                    Math.min(after(setting, room(setting, 2)), after(setting, room(setting, -2)))
                        > discomfort() - 0.25);
  }

  double maxSeverity() {
    return IntStream.range(0, RATED.size()).mapToDouble(this::severity).max().orElse(0);
  }

  /** A step towards the hidden best setup, the farthest setting first. */
  Optional<Method.Choice> towardsBest(int most) {
    return IntStream.range(0, settings.size())
        .filter(j -> Math.abs(best[j] - at[j]) >= 1)
        .boxed()
        .max(Comparator.comparingDouble(j -> Math.abs(best[j] - at[j])))
        .map(
            j -> {
              double off = Math.max(-most, Math.min(most, best[j] - at[j]));
              return Method.choice(this, settings.get(j), (int) off);
            });
  }

  /** The doses of a wished change that fit inside the limits, 0 to the wish. */
  int room(Setting setting, int wish) {
    Reading now = setup.reading(setting.id()).orElseThrow();
    double moved = Doses.of(setting, moved(setting, wish)).orElseThrow();
    return (int) Math.round(moved - Doses.of(setting, now).orElseThrow());
  }

  /** Doses from the start, by setting. */
  double[] at() {
    return at.clone();
  }

  /** Rides a moto with some changes made before it. */
  void ride(List<Change> changes) {
    setup = setup.after(changes);
    for (int j = 0; j < settings.size(); j++) {
      Setting setting = settings.get(j);
      at[j] =
          Doses.of(setting, setup.reading(setting.id()).orElseThrow()).orElseThrow()
              - Doses.of(setting, Bench.setup().reading(setting.id()).orElseThrow()).orElseThrow();
    }
    double rougher = kind.is(Kind.ROUGHENING) ? ROUGHENS * motos.size() : 0;
    List<Feel> feel = new ArrayList<>();
    for (int s = 0; s < RATED.size(); s++) {
      double felt = severity(s) + rougher + RATING_NOISE * chance.nextGaussian();
      int rating = (int) Math.max(0, Math.min(5, Math.round(felt)));
      if (kind.is(Kind.COARSE_RATINGS)) {
        rating = Math.min(4, 2 * (int) Math.round(Math.max(0, felt) / 2));
      }
      if (!kind.is(Kind.LAZY_NOTES) || rating >= 2) {
        feel.add(RATED.get(s).withSeverity(rating));
      }
    }
    motos.add(Bench.moto("m" + motos.size(), changes, feel));
  }

  /** All that was ridden, every check done: no gate stands. */
  Notebook notebook() {
    Entry.Session session = Bench.session("s", Bench.SPRING, Bench.HOLLOW, Bench.setup(), motos);
    Conditions conditions = session.conditions();
    Conditions ready =
        new Conditions(
            conditions.ground(),
            conditions.moisture(),
            conditions.roughness(),
            conditions.air(),
            Set.of(Ready.values()));
    return Bench.notebook()
        .with(
            new Entry.SagMeasured(
                Head.of(new EntryId("sag"), Bench.BIKE, Bench.SPRING, 0),
                End.REAR,
                Optional.of(Bench.mm("104")),
                Optional.of(Bench.mm("33")),
                Optional.empty(),
                Optional.empty(),
                Optional.empty()))
        .with(session.withConditions(ready));
  }

  List<Setting> settings() {
    return settings;
  }

  Setup setup() {
    return setup;
  }

  /** The last ratings, by complaint. */
  Map<Complaint, Feel> felt() {
    Map<Complaint, Feel> felt = new LinkedHashMap<>();
    motos.get(motos.size() - 1).report().feel().forEach(each -> felt.put(Complaint.of(each), each));
    return felt;
  }

  /** A reading moved by doses and held inside the limits. */
  Reading moved(Setting setting, int doses) {
    Reading now = setup.reading(setting.id()).orElseThrow();
    rutbook.units.Amount dose = Doses.dose(setting).orElseThrow();
    rutbook.units.Amount by =
        dose.withValue(
            dose.value()
                .multiply(java.math.BigDecimal.valueOf((long) doses * Doses.sign(setting))));
    return Bounds.hold(Bench.sheet(), setting, now.map(amount -> amount.plus(by)));
  }
}
