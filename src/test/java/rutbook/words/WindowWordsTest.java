package rutbook.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.util.Arrays;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rutbook.edit.Edit;
import rutbook.notebook.Entry;
import rutbook.notebook.Section;
import rutbook.notebook.Symptom;
import rutbook.units.AmountException;

class WindowWordsTest {
  private final WindowWords words = new WindowWords(Locale.ENGLISH);
  private final ResourceBundle bundle =
      ResourceBundle.getBundle("rutbook.words.Window", Locale.ENGLISH);

  private static Stream<Class<?>> leaves(Class<?> kind) {
    return kind.isSealed()
        ? Arrays.stream(kind.getPermittedSubclasses()).flatMap(WindowWordsTest::leaves)
        : Stream.of(kind);
  }

  @Test
  void everyEditHasAName() {
    assertThat(leaves(Edit.class))
        .allSatisfy(
            edit ->
                assertThatCode(
                        () ->
                            bundle.getString(
                                "edit."
                                    + edit.getName()
                                        .substring(edit.getName().lastIndexOf('.') + 1)
                                        .replace('$', '.')))
                    .doesNotThrowAnyException());
  }

  @Test
  void everyKindOfEntrySectionSymptomAndAmountFaultHasAName() {
    assertThat(leaves(Entry.class))
        .allSatisfy(kind -> assertThat(words.text("kind." + kind.getSimpleName())).isNotBlank());
    for (Section section : Section.values()) {
      assertThat(words.name(section)).isNotBlank();
    }
    for (Symptom symptom : Symptom.values()) {
      assertThat(words.name(symptom)).isNotBlank();
    }
    for (AmountException.Fault fault : AmountException.Fault.values()) {
      assertThat(words.fault(new AmountException(fault, "x"))).isNotBlank();
    }
  }

  @Test
  void lapsAreWrittenAsRidersSayThem() {
    assertThat(words.lap(114_600)).isEqualTo("1:54.6");
    assertThat(words.lap(114_000)).isEqualTo("1:54.0");
    assertThat(words.lap(61_234)).isEqualTo("1:01.234");
    assertThat(words.lap(42_050)).isEqualTo("42.05");
  }
}
