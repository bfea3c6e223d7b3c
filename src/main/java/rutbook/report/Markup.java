package rutbook.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import rutbook.words.SafeText;

/**
 * Markup as a tree, so that no text can be taken for a tag: every text and attribute is escaped
 * when it is written, and characters that hide or turn the line are shown as their number.
 */
public sealed interface Markup {
  /** Text as it is read. */
  record Text(String text) implements Markup {
    public Text {
      text = SafeText.line(text);
    }
  }

  /** A style sheet; refused when something in it would end it. */
  record Style(String css) implements Markup {
    public Style {
      if (css.contains("<") || css.contains("&") || css.contains(">")) {
        throw new IllegalArgumentException("a style sheet with <, > or &");
      }
    }
  }

  /** An element with its attributes in order. */
  record Element(String name, Map<String, String> attributes, List<Markup> children)
      implements Markup {
    private static final Pattern NAME = Pattern.compile("[a-z][a-zA-Z0-9:-]*");

    public Element {
      Map<String, String> copied = new LinkedHashMap<>();
      attributes.forEach((key, value) -> copied.put(name(key), SafeText.line(value)));
      name = name(name);
      attributes = java.util.Collections.unmodifiableMap(copied);
      children = List.copyOf(children);
    }

    private static String name(String name) {
      if (!NAME.matcher(name).matches()) {
        throw new IllegalArgumentException("no name of an element or attribute: " + name);
      }
      return name;
    }

    /** With one more attribute, or another value of it. */
    Element with(String attribute, String value) {
      Map<String, String> next = new LinkedHashMap<>(attributes);
      next.put(attribute, value);
      return new Element(name, next, children);
    }

    Element with(String attribute, double value) {
      return with(attribute, Numbers.plain(value));
    }

    Element styled(String classes) {
      return classes.isEmpty() ? this : with("class", classes);
    }

    Element holding(Markup... more) {
      return holding(List.of(more));
    }

    Element holding(List<? extends Markup> more) {
      List<Markup> all = new ArrayList<>(children);
      all.addAll(more);
      return new Element(name, attributes, all);
    }

    Element saying(String text) {
      return holding(new Text(text));
    }
  }

  static Element element(String name) {
    return new Element(name, Map.of(), List.of());
  }

  /** Text that somebody typed: its direction is its own and does not turn its neighbours. */
  static Element own(String text) {
    return element("bdi").saying(text);
  }
}
