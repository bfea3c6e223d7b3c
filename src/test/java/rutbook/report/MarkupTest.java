package rutbook.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.StringReader;
import javax.xml.parsers.DocumentBuilderFactory;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;
import rutbook.words.SafeText;

class MarkupTest {

  private static Element parsed(String xml) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(xml)))
        .getDocumentElement();
  }

  @Property(tries = 500, seed = "41")
  void whateverWasTypedIsReadAsTextAndNothingElse(@ForAll String typed) throws Exception {
    Markup.Element written = Markup.element("p").with("title", typed).saying(typed);
    Element read = parsed(MarkupText.of(written));
    assertThat(read.getTextContent()).isEqualTo(SafeText.line(typed));
    assertThat(read.getAttribute("title")).isEqualTo(SafeText.line(typed));
    assertThat(read.getChildNodes().getLength()).isLessThanOrEqualTo(1);
  }

  @Test
  void whatIsNoCharacterIsShownAsItsNumber() throws Exception {
    Markup.Element written = Markup.element("p").saying("a\uFFFE\uD800b\u202Ec");
    assertThat(parsed(MarkupText.of(written)).getTextContent())
        .isEqualTo("a<U+FFFE><U+D800>b<U+202E>c");
  }

  @Test
  void aStyleSheetCannotBeEndedFromWithin() {
    assertThatThrownBy(() -> new Markup.Style("p { } </style>"))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Markup.element("p onclick=x"))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
