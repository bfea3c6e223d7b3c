package rutbook.ui;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The messages are those of the system's loader, as Java passes them on. */
class MissingLibraryTest {
  @Test
  void theLibraryThatIsNotThereIsNamedWithItsPackage() {
    Throwable thrown =
        new RuntimeException(
            new UnsatisfiedLinkError(
                "/tmp/cache/libjavafx_font_pango.so: libpangoft2-1.0.so.0: cannot open shared object"
                    + " file: No such file or directory"));
    assertThat(MissingLibrary.sentence(thrown))
        .contains(
            "The window's tests need the system library libpangoft2-1.0.so.0: on Debian and Ubuntu"
                + " install the package libpangoft2-1.0-0.");
  }

  @Test
  void whateverElseGoesWrongIsLeftAsItIs() {
    assertThat(MissingLibrary.sentence(new IllegalStateException("no such page"))).isEmpty();
  }
}
