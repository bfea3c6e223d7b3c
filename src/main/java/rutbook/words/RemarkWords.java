package rutbook.words;

import rutbook.notebook.Sheet;
import rutbook.rebuild.Remark;
import rutbook.units.Duration;

/** What physics and rules have to say beside a step: a sense with its figure, never clicks. */
public final class RemarkWords {
  private static final String AREA = "Remarks";

  /** Within this of one, two viscosities or rates are said to be the same. */
  private static final double SAME = 0.02;

  private final Phrases phrases;
  private final FigureWords figures;
  private final ReadingWords readings;
  private final ChangeWords changes;

  public RemarkWords(Phrases phrases) {
    this.phrases = phrases;
    this.figures = new FigureWords(phrases);
    this.readings = new ReadingWords(phrases);
    this.changes = new ChangeWords(phrases);
  }

  /**
   * @param sheet that the plan is for
   */
  public String remark(Sheet sheet, Remark remark) {
    if (remark instanceof Remark.Curve curve) {
      return phrases.say(
          AREA,
          curve.estimate() ? "curve.assumed" : "curve",
          figures.share(curve.endAirForce()),
          figures.share(curve.totalEnergy()));
    }
    if (remark instanceof Remark.NoCurve lacking) {
      return phrases.say(AREA, "no-curve", figures.needs(lacking.needs()));
    }
    if (remark instanceof Remark.MakesUp makesUp) {
      return makesUp(makesUp);
    }
    if (remark instanceof Remark.Viscosity viscosity) {
      return viscosity(viscosity);
    }
    if (remark instanceof Remark.NoViscosity lacking) {
      return phrases.say(AREA, "NoViscosity." + lacking.why().name());
    }
    if (remark instanceof Remark.SpringRatio spring) {
      String name =
          sheet.setting(spring.setting()).map(readings::setting).orElse(spring.setting().text());
      return phrases.say(
          AREA,
          spring.ratio() > 1 ? "spring.stiffer" : "spring.softer",
          phrases.sentence(name),
          figures.share(spring.ratio() - 1));
    }
    Remark.RunningIn running = (Remark.RunningIn) remark;
    return phrases.say(
        AREA,
        "running-in",
        phrases.amounts().number(running.hours().least().doubleIn(Duration.HOUR), 1),
        phrases.amounts().number(running.hours().most().doubleIn(Duration.HOUR), 1));
  }

  private String makesUp(Remark.MakesUp makesUp) {
    String setting = phrases.sentence(readings.setting(makesUp.setting()));
    String change = changes.change(makesUp.setting(), makesUp.from(), makesUp.to());
    return switch (makesUp.basis()) {
      case CURVE ->
          phrases.say(
              AREA, "makes-up.CURVE", setting, change, figures.part(makesUp.part().orElse(1)));
      case SAG_WORKSHEET -> phrases.say(AREA, "makes-up.SAG_WORKSHEET", setting, change);
      case RULE, OWN_MOTOS ->
          phrases.say(
              AREA,
              "makes-up." + makesUp.basis().name(),
              setting,
              change,
              makesUp.against().map(phrases::name).orElse(""));
    };
  }

  private String viscosity(Remark.Viscosity viscosity) {
    double ratio = viscosity.ratio();
    String key =
        viscosity.old().id().equals(viscosity.now().id())
            ? "viscosity.fresh"
            : Math.abs(ratio - 1) < SAME
                ? "viscosity.same"
                : ratio > 1 ? "viscosity.thicker" : "viscosity.thinner";
    return phrases.say(
        AREA,
        key,
        viscosity.now().name(),
        viscosity.old().name(),
        phrases.amounts().number(ratio, 2),
        viscosity.temperature());
  }
}
