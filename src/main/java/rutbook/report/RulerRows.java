package rutbook.report;

import java.util.ArrayList;
import java.util.List;

/** The settings of a card: name, number, ruler and what is said of it, one row each. */
final class RulerRows {
  /** A longer reading is set smaller, on two lines if need be. */
  private static final int ONE_LINE = 13;

  private static final int COLUMNS = 4;

  private RulerRows() {}

  static Markup.Element table(Card.Rulers rulers) {
    Markup.Element body = Markup.element("tbody");
    boolean told = rulers.list().stream().anyMatch(row -> !row.todo().isEmpty());
    for (Card.Row row : rulers.list()) {
      body = body.holding(row(row));
      if (!row.effects().isEmpty()) {
        body = body.holding(effects(row.effects()));
      }
    }
    return Markup.element("table").styled(told ? "settings told" : "settings").holding(body);
  }

  private static Markup.Element row(Card.Row row) {
    Markup.Element name =
        Markup.element("th").with("scope", "row").styled("name").holding(Markup.own(row.name()));
    Markup.Element reading =
        Markup.element("td")
            .styled(row.reading().length() > ONE_LINE ? "reading long" : "reading")
            .saying(row.reading());
    Markup.Element ruler = Markup.element("td").styled("drawn");
    if (row.ruler().isPresent()) {
      Card.Picture picture = row.ruler().get();
      ruler = ruler.holding(SvgDrawing.of(picture.drawing(), picture.said()));
    }
    Markup.Element line = Markup.element("tr");
    List<Markup> cells = new ArrayList<>();
    cells.add(small(name, "aside", row.aside()));
    cells.add(small(reading, "aside", row.other()));
    if (!row.todo().isEmpty()) {
      cells.add(
          Markup.element("td")
              .styled(row.todo().done() ? "todo done" : "todo")
              .saying(row.todo().text()));
    }
    cells.add(ruler);
    cells.add(Markup.element("td").styled("note").holding(note(row)));
    return (row.effects().isEmpty() ? line : line.styled("explained")).holding(cells);
  }

  /** A row of its own under the setting, as wide as the page. */
  private static Markup.Element effects(List<String> effects) {
    Markup.Element cell = Markup.element("td").with("colspan", String.valueOf(COLUMNS));
    for (String effect : effects) {
      cell = cell.holding(Markup.element("p").saying(effect));
    }
    return Markup.element("tr").styled("effects").holding(cell);
  }

  private static Markup.Element small(Markup.Element cell, String classes, String text) {
    return text.isEmpty()
        ? cell
        : cell.holding(new Markup.Text(" "), Markup.element("span").styled(classes).saying(text));
  }

  private static List<Markup> note(Card.Row row) {
    List<Markup> parts = new ArrayList<>();
    if (!row.alarm().isEmpty()) {
      parts.add(Markup.element("strong").saying(row.alarm()));
      parts.add(new Markup.Text(" "));
    }
    parts.add(new Markup.Text(row.note()));
    return parts;
  }
}
