package rutbook.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rutbook.report.Card.Block;

/** The one template: a card as a page that needs nothing from outside and runs no script. */
public final class CardHtml {
  private static final Markup SPACE = new Markup.Text(" ");

  private final Locale language;

  public CardHtml(Locale language) {
    this.language = language;
  }

  /** A file of its own: opens on a phone, prints on the paper that is in the printer. */
  public String page(Card card) {
    return MarkupText.document(document(card, Resources.text("card.css")));
  }

  /** The document with a style sheet. */
  Markup.Element document(Card card, String css) {
    Markup.Element head =
        Markup.element("head")
            .holding(
                Markup.element("meta").with("charset", "utf-8"),
                Markup.element("meta")
                    .with("name", "viewport")
                    .with("content", "width=device-width, initial-scale=1"),
                Markup.element("meta").with("name", "description").with("content", about(card)),
                Markup.element("title").saying(card.title()),
                new Markup.Style(css));
    return Markup.element("html").with("lang", language.toLanguageTag()).holding(head, body(card));
  }

  private static String about(Card card) {
    return card.under().isEmpty() ? card.title() : card.under().get(0);
  }

  private static Markup.Element body(Card card) {
    List<Markup> parts = new ArrayList<>();
    parts.add(header(card));
    card.blocks().forEach(block -> parts.add(section(block)));
    if (!card.cautions().isEmpty()) {
      parts.add(cautions(card.cautions()));
    }
    return Markup.element("body").styled(Density.of(card).style()).holding(parts);
  }

  private static Markup.Element header(Card card) {
    Markup.Element title = Markup.element("h1").holding(Markup.own(card.title()));
    List<Markup> lines = new ArrayList<>(List.of(title));
    card.under().forEach(line -> lines.add(Markup.element("p").saying(line)));
    return Markup.element("header").holding(lines);
  }

  private static Markup.Element cautions(List<String> cautions) {
    Markup.Element list = Markup.element("ul");
    for (String caution : cautions) {
      list = list.holding(Markup.element("li").saying(caution));
    }
    return Markup.element("footer").styled("cautions").holding(list);
  }

  private static Markup.Element section(Block block) {
    List<Markup> parts = new ArrayList<>();
    if (!block.title().isEmpty()) {
      parts.add(Markup.element("h2").saying(block.title()));
    }
    if (block instanceof Card.Rulers rulers) {
      parts.add(RulerRows.table(rulers));
    } else if (block instanceof Card.Lines lines) {
      lines.list().forEach(line -> parts.add(Markup.element("p").saying(line)));
    } else if (block instanceof Card.Pieces pieces) {
      parts.add(pieces(pieces));
    } else if (block instanceof Card.Table table) {
      parts.add(table(table));
    } else if (block instanceof Card.Figure figure) {
      parts.add(figure(figure));
    } else if (block instanceof Card.Legend legend) {
      parts.add(legend(legend));
    } else if (block instanceof Card.Work work) {
      parts.add(WorkRows.table(work));
    }
    // A section without a heading is only a division of the page.
    return Markup.element(block.title().isEmpty() ? "div" : "section")
        .styled(name(block))
        .holding(parts);
  }

  private static String name(Block block) {
    return block.getClass().getSimpleName().toLowerCase(Locale.ROOT);
  }

  private static Markup.Element pieces(Card.Pieces pieces) {
    Markup.Element line = Markup.element("p");
    for (String piece : pieces.list()) {
      line = line.holding(Markup.element("span").styled("piece").saying(piece), SPACE);
    }
    return line;
  }

  private static Markup.Element table(Card.Table table) {
    Markup.Element head = Markup.element("tr");
    for (String title : table.head()) {
      head = head.holding(Markup.element("th").with("scope", "col").saying(title));
    }
    Markup.Element body = Markup.element("tbody");
    for (List<String> cells : table.list()) {
      Markup.Element row = Markup.element("tr");
      for (int i = 0; i < cells.size(); i++) {
        row =
            row.holding(
                i == 0
                    ? Markup.element("th").with("scope", "row").saying(cells.get(i))
                    : Markup.element("td").saying(cells.get(i)));
      }
      body = body.holding(row);
    }
    return Markup.element("table")
        .styled("plain")
        .holding(Markup.element("thead").holding(head), body);
  }

  private static Markup.Element figure(Card.Figure figure) {
    Markup.Element drawn =
        Markup.element("div")
            .styled("picture")
            .holding(SvgDrawing.of(figure.picture().drawing(), figure.picture().said()));
    List<Markup> parts = new ArrayList<>(List.of(drawn));
    figure.under().forEach(line -> parts.add(Markup.element("p").saying(line)));
    return Markup.element("div").holding(parts);
  }

  private static Markup.Element legend(Card.Legend legend) {
    Markup.Element line = Markup.element("p").styled("marks");
    for (Card.Picture mark : legend.marks()) {
      Markup.Element drawn = SvgDrawing.of(mark.drawing(), mark.said());
      line =
          line.holding(
              Markup.element("span").styled("mark").holding(drawn).saying(" " + mark.said()),
              SPACE);
    }
    return line;
  }
}
