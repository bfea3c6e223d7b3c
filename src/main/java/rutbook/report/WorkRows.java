package rutbook.report;

import java.util.ArrayList;
import java.util.List;

/** The steps of a work sheet, with boxes where something is written or ticked. */
final class WorkRows {
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
                      Markup.element("td").styled("boxes").holding(boxes(step.boxes()))));
    }
    return Markup.element("table").styled("work").holding(body);
  }

  private static List<Markup> what(Card.Step step) {
    List<Markup> parts = new ArrayList<>();
    parts.add(Markup.element("span").styled("do").saying(step.what()));
    step.values().forEach(value -> parts.add(Markup.element("span").styled("value").saying(value)));
    step.cautions()
        .forEach(caution -> parts.add(Markup.element("span").styled("caution").saying(caution)));
    return parts;
  }

  private static List<Markup> boxes(List<String> names) {
    List<Markup> parts = new ArrayList<>();
    for (String name : names) {
      if (!name.isEmpty()) {
        parts.add(Markup.element("span").styled("label").saying(name));
      }
      parts.add(Markup.element("span").styled(name.isEmpty() ? "tick" : "box").saying("\u00A0"));
    }
    return parts;
  }
}
