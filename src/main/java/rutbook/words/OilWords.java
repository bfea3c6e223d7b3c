package rutbook.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.figures.Figure;
import rutbook.figures.LevelFigures;
import rutbook.figures.OilFigures;
import rutbook.figures.OilStanding;
import rutbook.notebook.Oil;
import rutbook.physics.IndexAnswer;
import rutbook.physics.ViscosityIndex;
import rutbook.units.Amount;

/** The oils of the shelf by the standards, and what another one does. */
public final class OilWords {
  private static final String AREA = "Figures";
  private static final double SAME = 0.02;

  private final Phrases phrases;

  public OilWords(Phrases phrases) {
    this.phrases = phrases;
  }

  /** Viscosity at 40 and 100 °C and at the temperature asked for, index and grade of each oil. */
  public Table shelf(List<OilStanding> oils, Amount temperature) {
    List<List<String>> rows = new ArrayList<>();
    for (OilStanding oil : oils) {
      rows.add(
          List.of(
              phrases.safe(oil.oil().name()),
              number(oil.oil().kv40()),
              number(oil.oil().kv100()),
              number(oil.at().found().map(OilFigures.At::viscosity)),
              index(oil.index()),
              oil.grade()
                  .map(Enum::name)
                  .map(name -> "VG " + name.substring(2))
                  .orElse(phrases.say(AREA, "none"))));
    }
    Table table =
        new Table(
            List.of(
                phrases.say(AREA, "column.oil"),
                phrases.say(AREA, "column.at-40"),
                phrases.say(AREA, "column.at-100"),
                phrases.say(AREA, "column.at", temperature),
                phrases.say(AREA, "column.index"),
                phrases.say(AREA, "column.grade")),
            rows);
    return new FigureWords(phrases).aligned(table, 1);
  }

  private String number(Optional<Amount> viscosity) {
    return viscosity.map(phrases.amounts()::numberOf).orElse(phrases.say(AREA, "none"));
  }

  private String index(Figure<IndexAnswer> index) {
    if (index.found().isEmpty() || !(index.found().get() instanceof ViscosityIndex found)) {
      return phrases.say(AREA, "none");
    }
    String whole = String.valueOf(found.whole());
    return found.estimate() ? phrases.say(AREA, "about", whole) : whole;
  }

  /** Why an oil has no index; empty when it has one, or lacks a viscosity. */
  public Optional<String> noIndex(OilStanding oil) {
    return oil.index()
        .found()
        .filter(IndexAnswer.None.class::isInstance)
        .map(
            none ->
                phrases.say(
                    AREA, "NoIndex." + ((IndexAnswer.None) none).why().name(), oil.oil().name()));
  }

  /** One oil against another: a sense with its figure, never clicks. */
  public String ratio(Oil old, Oil now, OilFigures.Ratio ratio) {
    String key =
        Math.abs(ratio.ratio() - 1) < SAME
            ? "viscosity.same"
            : ratio.ratio() > 1 ? "viscosity.thicker" : "viscosity.thinner";
    return phrases.say(
        "Remarks",
        key,
        now.name(),
        old.name(),
        phrases.amounts().number(ratio.ratio(), 2),
        ratio.temperature());
  }

  /** A blend at the three temperatures, an estimate. */
  public String blend(Oil first, Oil second, OilFigures.Blended blend) {
    return phrases.say(
        AREA,
        "blend",
        new FigureWords(phrases).part(blend.part()),
        first.name(),
        second.name(),
        blend.at40(),
        blend.at100(),
        blend.at().viscosity(),
        blend.at().temperature());
  }

  /** A change of level as a volume. */
  public String level(LevelFigures level) {
    return phrases.say(AREA, "level", level.step(), level.volume());
  }
}
