package rutbook.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.figures.SagFigures;
import rutbook.units.Amount;
import rutbook.units.TurnUnit;

/** The sag worksheet: what was measured, what it says of the spring, what would meet both sags. */
public final class SagWords {
  private static final String AREA = "Figures";

  private final Phrases phrases;
  private final FigureWords figures;

  public SagWords(Phrases phrases) {
    this.phrases = phrases;
    this.figures = new FigureWords(phrases);
  }

  /** The measured sags, friction and wheel rate as name and value. */
  public Table measured(SagFigures sag) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(row("sag.race", sag.measured().race()));
    rows.add(row("sag.free", sag.measured().free()));
    sag.measured().friction().ifPresent(friction -> rows.add(row("sag.friction", friction)));
    rows.add(List.of(phrases.say(AREA, "sag.wheel-rate"), spread(sag.wheelRate())));
    rows.add(row("sag.wheel-rate-of-spring", sag.wheelRateOfSpring()));
    return new Table(List.of("", ""), rows);
  }

  private List<String> row(String key, Amount amount) {
    return List.of(phrases.say(AREA, key), phrases.amounts().amount(amount));
  }

  private String spread(SagFigures.Spread spread) {
    return phrases.say(
        AREA,
        "spread",
        phrases.amounts().amount(spread.middle()),
        phrases.amounts().numberOf(spread.least()),
        phrases.amounts().numberOf(spread.most()));
  }

  /** What free sag says of the spring, once race sag is right. */
  public String verdict(SagFigures sag) {
    return sag.verdict()
        .map(verdict -> phrases.say(AREA, "verdict." + verdict.name()))
        .orElseGet(() -> phrases.say(AREA, "verdict.none", sag.target().race()));
  }

  /** The spring that meets both targets, with its range, held at the sheet's limits. */
  public List<String> wanted(SagFigures sag) {
    SagFigures.Wanted wanted = sag.wanted();
    List<String> said = new ArrayList<>();
    if (Math.abs(wanted.share()) < 0.005) {
      return List.of(
          phrases.say(
              AREA,
              "wanted.same",
              sag.target().race(),
              sag.target().free(),
              spread(wanted.rate()),
              wanted.preload().preload()));
    }
    said.add(
        phrases.say(
            AREA,
            "wanted",
            sag.target().race(),
            sag.target().free(),
            spread(wanted.rate()),
            figures.share(wanted.share()),
            wanted.preload().preload()));
    if (!wanted.inside()) {
      said.add(
          wanted
              .held()
              .map(held -> phrases.say(AREA, "wanted.outside", held))
              .orElseGet(() -> phrases.say(AREA, "wanted.no-limits")));
    }
    return said;
  }

  /** Springs with race sag set to its target: preload, turns of the collar, free sag. */
  public Table springs(SagFigures sag) {
    List<List<String>> rows = new ArrayList<>();
    for (SagFigures.AtHand spring : sag.springs()) {
      rows.add(
          List.of(
              phrases.say(
                  AREA, spring.fitted() ? "spring.fitted" : "spring.at-hand", spring.rate()),
              phrases.amounts().amount(spring.preload().preload()),
              spring.preload().turns().map(this::turns).orElse(phrases.say(AREA, "none")),
              phrases.amounts().amount(spring.free()),
              phrases.say(AREA, spring.offered() ? "offered" : "not-offered")));
    }
    Table table =
        new Table(
            List.of(
                phrases.say(AREA, "column.spring"),
                phrases.say(AREA, "column.preload"),
                phrases.say(AREA, "column.turns"),
                phrases.say(AREA, "column.free-sag"),
                phrases.say(AREA, "column.limits")),
            rows);
    return figures.aligned(table, 0);
  }

  /** Turns of the collar with their sense: "1 turn more". */
  private String turns(Amount turns) {
    Amount size = turns.withValue(turns.value().abs());
    String text =
        phrases.amounts().amount(size.in(TurnUnit.TURN, 1, java.math.RoundingMode.HALF_UP));
    return turns.value().signum() == 0
        ? phrases.say(AREA, "turns.same")
        : phrases.say(AREA, turns.value().signum() > 0 ? "turns.more" : "turns.less", text);
  }

  /** What a turn of the collar does; why not where the sheet lacks its pitch. */
  public String collar(SagFigures sag) {
    Optional<SagFigures.Collar> collar = sag.collar();
    return collar
        .map(each -> phrases.say(AREA, "collar", each.pitch(), each.sagPerTurn()))
        .orElseGet(() -> phrases.say(AREA, "collar.unknown"));
  }
}
