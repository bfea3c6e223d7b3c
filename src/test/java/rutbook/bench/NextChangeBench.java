package rutbook.bench;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import rutbook.json.RulesJson;
import rutbook.notebook.Bench;
import rutbook.notebook.Bounds;
import rutbook.notebook.Change;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Feel;
import rutbook.notebook.Head;
import rutbook.notebook.Moto;
import rutbook.notebook.Notebook;
import rutbook.notebook.Reading;
import rutbook.notebook.Section;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Symptom;
import rutbook.reasoning.Doses;
import rutbook.reasoning.Ledger;
import rutbook.reasoning.NextChange;
import rutbook.reasoning.RuleBook;

/**
 * How long the next change and the ledger take: a season of 150 motos, then up to 10,000, every
 * setting of the bench's bike moved in turn and eighteen complaints rated in every moto.
 */
public final class NextChangeBench {
  private static final int MOTOS_A_DAY = 4;

  private NextChangeBench() {}

  public static void main(String[] arguments) {
    RuleBook rules = RulesJson.ofTheTrade();
    double[] seconds = new double[4];
    int[] sizes = {150, 1_000, 3_000, 10_000};
    for (int i = 0; i < sizes.length; i++) {
      Notebook notebook = ridden(sizes[i]);
      seconds[i] = best(() -> NextChange.of(notebook, Bench.BIKE, rules).suggestions().size());
      double ledger = best(() -> Ledger.of(notebook, Bench.BIKE, rules).rows().size());
      System.out.printf(
          Locale.ROOT,
          "%6d motos: next change %.1f ms, ledger %.1f ms%n",
          sizes[i],
          1000 * seconds[i],
          1000 * ledger);
    }
    System.out.printf(
        Locale.ROOT,
        "growth exponent from 1,000 to 10,000: %.2f%n",
        Math.log10(seconds[3] / seconds[1]));
  }

  private static double best(java.util.function.IntSupplier work) {
    double best = Double.POSITIVE_INFINITY;
    for (int round = 0; round < 7; round++) {
      long start = System.nanoTime();
      if (work.getAsInt() < 0) {
        throw new IllegalStateException();
      }
      best = Math.min(best, (System.nanoTime() - start) / 1e9);
    }
    return best;
  }

  /** A notebook of many days, everything rated, one setting moved before every moto. */
  public static Notebook ridden(int motos) {
    Random random = new Random(5);
    List<Setting> settings =
        Bench.settings().stream().filter(each -> Doses.dose(each).isPresent()).toList();
    List<Entry> entries = new ArrayList<>();
    entries.add(Bench.baseline(Bench.setup()));
    Setup setup = Bench.setup();
    for (int day = 0; day * MOTOS_A_DAY < motos; day++) {
      List<Moto> ofDay = new ArrayList<>();
      Setup start = setup;
      for (int moto = 0; moto < MOTOS_A_DAY; moto++) {
        Setting setting = settings.get(random.nextInt(settings.size()));
        Reading base = Bench.setup().reading(setting.id()).orElseThrow();
        var dose = Doses.dose(setting).orElseThrow();
        var by =
            dose.withValue(
                dose.value().multiply(java.math.BigDecimal.valueOf(random.nextInt(5) - 2)));
        Reading to = Bounds.hold(Bench.sheet(), setting, base.map(each -> each.plus(by)));
        List<Change> changes = List.of(Change.of(setting.id(), to));
        setup = setup.after(changes);
        ofDay.add(Bench.moto("m" + moto, changes, feel(random)));
      }
      LocalDate date = Bench.SPRING.plusDays(day);
      Entry.Session session =
          Bench.session("s" + day, date, day % 3 == 0 ? Bench.DUNE : Bench.HOLLOW, start, ofDay);
      entries.add(session.with(Head.of(new EntryId("s" + day), Bench.BIKE, date, 0)));
    }
    Notebook empty = Bench.notebook();
    return Notebook.of(empty.id(), empty.shelf(), entries, List.of(), empty.display());
  }

  private static List<Feel> feel(Random random) {
    List<Feel> feel = new ArrayList<>();
    for (Symptom symptom : Symptom.values()) {
      int rating = Math.max(0, random.nextInt(8) - 3);
      feel.add(Feel.of(End.FRONT, Section.CORNER_ENTRY, symptom, rating));
    }
    return feel;
  }
}
