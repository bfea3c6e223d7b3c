package rutbook.report;

import java.util.Set;

/**
 * Markup as text that a browser reads as HTML and the maker of PDF as XML: elements without an end
 * close themselves, all others have one.
 */
final class MarkupText {
  private static final Set<String> WITHOUT_END = Set.of("meta", "br", "hr", "col");

  private final StringBuilder out = new StringBuilder();

  private MarkupText() {}

  /** A whole document. */
  static String document(Markup.Element html) {
    MarkupText text = new MarkupText();
    text.out.append("<!DOCTYPE html>\n");
    text.write(html);
    return text.out.append('\n').toString();
  }

  static String of(Markup markup) {
    MarkupText text = new MarkupText();
    text.write(markup);
    return text.out.toString();
  }

  private void write(Markup markup) {
    if (markup instanceof Markup.Text text) {
      escape(text.text());
    } else if (markup instanceof Markup.Style style) {
      out.append("<style>\n").append(style.css()).append("</style>");
    } else {
      element((Markup.Element) markup);
    }
  }

  private void element(Markup.Element element) {
    out.append('<').append(element.name());
    element
        .attributes()
        .forEach(
            (name, value) -> {
              out.append(' ').append(name).append("=\"");
              escape(value);
              out.append('"');
            });
    if (WITHOUT_END.contains(element.name())) {
      out.append("/>");
      return;
    }
    out.append('>');
    element.children().forEach(this::write);
    out.append("</").append(element.name()).append('>');
    if (endsALine(element.name())) {
      out.append('\n');
    }
  }

  private static boolean endsALine(String name) {
    return Set.of("head", "title", "header", "section", "tr", "table", "p", "li", "ul", "footer")
        .contains(name);
  }

  private void escape(String text) {
    for (int i = 0; i < text.length(); i++) {
      char each = text.charAt(i);
      switch (each) {
        case '&' -> out.append("&amp;");
        case '<' -> out.append("&lt;");
        case '>' -> out.append("&gt;");
        case '"' -> out.append("&quot;");
        case '\'' -> out.append("&#39;");
        default -> out.append(each);
      }
    }
  }
}
