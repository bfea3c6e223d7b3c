package rutbook.words;

import java.util.ArrayList;
import java.util.List;
import rutbook.figures.SteeringFigures;
import rutbook.figures.SteeringSweep;
import rutbook.units.Amount;

/** Rake, trail and pitch over the height of the fork in its clamps. */
public final class SteeringWords {
  private static final String AREA = "Figures";

  private final Phrases phrases;

  public SteeringWords(Phrases phrases) {
    this.phrases = phrases;
  }

  /**
   * A row for each height that the sheet allows, thinned to about a dozen; the present is marked.
   */
  public Table sweep(SteeringSweep sweep) {
    List<List<String>> rows = new ArrayList<>();
    int every = Math.max(1, sweep.rows().size() / 12);
    for (int i = 0; i < sweep.rows().size(); i++) {
      SteeringSweep.Row row = sweep.rows().get(i);
      boolean present = row.tube().sameQuantity(sweep.present());
      if (present || i % every == 0) {
        rows.add(row(row.tube(), row.steering(), present));
      }
    }
    Table table =
        new Table(
            List.of(
                phrases.say(AREA, "column.tube"),
                phrases.say(AREA, "column.rake"),
                phrases.say(AREA, "column.trail"),
                phrases.say(AREA, "column.normal-trail"),
                phrases.say(AREA, "column.pitch"),
                phrases.say(AREA, "column.wheelbase")),
            rows);
    return new FigureWords(phrases).aligned(table, 0);
  }

  private List<String> row(Amount tube, SteeringFigures steering, boolean present) {
    return List.of(
        phrases.say(AREA, present ? "tube.now" : "tube", tube),
        phrases.amounts().amount(steering.rake()),
        phrases.amounts().amount(steering.trail()),
        phrases.amounts().amount(steering.normalTrail()),
        pitch(steering.noseDown()),
        phrases.amounts().amount(steering.wheelbase()));
  }

  /** Pitch with its sense: "0.17° nose down". */
  public String pitch(Amount noseDown) {
    Amount size = noseDown.withValue(noseDown.value().abs());
    return switch (noseDown.value().signum()) {
      case 1 -> phrases.say(AREA, "nose.down", size);
      case -1 -> phrases.say(AREA, "nose.up", size);
      default -> phrases.say(AREA, "nose.level");
    };
  }
}
