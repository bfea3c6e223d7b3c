package rutbook.report;

import java.util.ArrayList;
import java.util.List;

/** The steps of a work sheet, with boxes where something is written or ticked. */
final class WorkRows {
  private static final String TICKED = "\u00D7";

  private WorkRows() {}

  static Markup.Element table(Card.Work work) {
    Markup.Element body = Markup.element("tbody");
    for (Card.Step step : work.list()) {
      body =
          body.holding(
              Markup.element("tr")
                  .holding(
                      Markup.element("td").styled("number").saying(String.valueOf(step.number())),
                      Markup.element("th").with("scope", "row").styled("what").holding(what(step)),
                      Markup.element("td").styled("boxes").holding(answers(step))));
    }
    return Markup.element("table").styled("work").holding(body);
  }

  private static List<Markup> what(Card.Step step) {
    List<Markup> parts = new ArrayList<>();
    parts.add(Markup.element("span").styled("do").saying(step.what()));
    if (!step.values().isEmpty()) {
      parts.add(line("value", step.values()));
    }
    if (!step.cautions().isEmpty()) {
      parts.add(line("caution", step.cautions()));
    }
    return parts;
  }

  private static Markup.Element line(String classes, List<String> texts) {
    Markup.Element line = Markup.element("div").styled("line");
    for (String text : texts) {
      line =
          line.holding(Markup.element("span").styled(classes).saying(text), new Markup.Text(" "));
    }
    return line;
  }

  /** What is done stands ticked with what was entered; what is not has its boxes. */
  private static List<Markup> answers(Card.Step step) {
    return step.done().isEmpty()
        ? boxes(step.boxes())
        : List.of(
            Markup.element("span").styled("entered").saying(step.done()),
            new Markup.Text(" "),
            Markup.element("span").styled("tick").saying(TICKED));
  }

  private static List<Markup> boxes(List<String> names) {
    List<Markup> parts = new ArrayList<>();
    for (String name : names) {
      parts.add(Markup.element("span").styled("slot").holding(box(name)));
      parts.add(new Markup.Text(" "));
    }
    return parts;
  }

  private static List<Markup> box(String name) {
    if (name.isEmpty()) {
      return List.of(empty("tick"));
    }
    return name.isBlank()
        ? List.of(empty("box wide"))
        : List.of(Markup.element("span").styled("label").saying(name), empty("box"));
  }

  private static Markup empty(String classes) {
    return Markup.element("span").styled(classes).saying("\u00A0");
  }
}
