package rutbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;

class LanguageTest {
  @Test
  void theSystemsLanguageIsSpokenWhereItIsOneOfOurs() {
    assertThat(Language.of(Locale.forLanguageTag("de-AT"))).isEqualTo(Language.GERMAN);
    assertThat(Language.of(Locale.US)).isEqualTo(Language.ENGLISH);
    assertThat(Language.of(Locale.forLanguageTag("eo"))).isEqualTo(Language.ENGLISH);
    assertThat(Language.of(Locale.ROOT)).isEqualTo(Language.ENGLISH);
  }

  @Test
  void aTagNamesALanguageAndAnythingElseNone() {
    for (Language language : Language.values()) {
      assertThat(Language.tagged(language.tag())).contains(language);
    }
    assertThat(Language.tagged("")).isEmpty();
    assertThat(Language.tagged("DE")).isEmpty();
  }

  @Test
  void eachHasItsOwnName() {
    assertThat(Language.ENGLISH.ownName()).isEqualTo("English");
    assertThat(Language.GERMAN.ownName()).isEqualTo("Deutsch");
  }
}
