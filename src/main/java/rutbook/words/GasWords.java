package rutbook.words;

import java.util.ArrayList;
import java.util.List;
import rutbook.figures.GasFigures;

/** Gas after a move: gauge and absolute, and what is to be done about it. */
public final class GasWords {
  private static final String AREA = "Figures";

  private final Phrases phrases;
  private final FigureWords figures;

  public GasWords(Phrases phrases) {
    this.phrases = phrases;
    this.figures = new FigureWords(phrases);
  }

  public String name(GasFigures.Line line) {
    String body =
        line.setting()
            .map(setting -> phrases.safe(setting.name()))
            .orElseGet(() -> phrases.say(AREA, "Body." + line.body().name()));
    return line.leg().map(leg -> phrases.say(AREA, "leg", body, phrases.name(leg))).orElse(body);
  }

  /** Gauge before and after, the difference, and the absolute pressure, of each that has one. */
  public Table moves(List<GasFigures.Line> lines) {
    List<List<String>> rows = new ArrayList<>();
    for (GasFigures.Line line : lines) {
      line.moved()
          .found()
          .ifPresent(
              moved ->
                  rows.add(
                      List.of(
                          phrases.sentence(name(line)),
                          phrases.amounts().amount(moved.before().gauge()),
                          phrases.amounts().amount(moved.after().gauge()),
                          phrases.amounts().signed(moved.difference()),
                          phrases.amounts().amount(moved.after().absolute()))));
    }
    Table table =
        new Table(
            List.of(
                "",
                phrases.say(AREA, "column.gauge-before"),
                phrases.say(AREA, "column.gauge-after"),
                phrases.say(AREA, "column.difference"),
                phrases.say(AREA, "column.absolute-after")),
            rows);
    return figures.aligned(table, 1);
  }

  /** What to do about each body of gas, once; and what is not known. */
  public List<String> notes(List<GasFigures.Line> lines) {
    List<String> notes = new ArrayList<>();
    for (GasFigures.Line line : lines) {
      String note = phrases.say(AREA, "BodyNote." + line.body().name());
      if (!notes.contains(note)) {
        notes.add(note);
      }
      if (!line.moved().needs().isEmpty() && line.body() != GasFigures.Body.RESERVOIR) {
        notes.add(
            phrases.say(
                AREA, "lacks", phrases.sentence(name(line)), figures.needs(line.moved().needs())));
      }
    }
    return notes;
  }
}
