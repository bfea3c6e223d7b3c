package rutbook.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.NotEmpty;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import rutbook.file.ForgetfulDisk.Quirk;

class SettingsFileTest {
  private static final Path FILE = ForgetfulDisk.FOLDER.resolve("config").resolve("window.txt");

  private final ForgetfulDisk disk = new ForgetfulDisk(Quirk.NONE);
  private final SettingsFile settings = new SettingsFile(disk, FILE);

  private void onDisk(String text) {
    disk.addFolder(FILE.getParent());
    disk.put(FILE, text.getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void whatIsStoredComesBack() {
    assertThat(settings.store(Map.of("theme", "sun", "recent.1", "C:\\März\\a=b.rut")).fault())
        .isEmpty();

    assertThat(settings.load()).isEqualTo(Map.of("theme", "sun", "recent.1", "C:\\März\\a=b.rut"));
    assertThat(new String(disk.bytes(FILE), StandardCharsets.UTF_8))
        .isEqualTo("recent.1=C\\:\\\\März\\\\a\\=b.rut\ntheme=sun\n");
  }

  @Property(seed = "20260503", tries = 300)
  void anyNamesAndValuesComeBack(@ForAll @Size(max = 8) Map<@NotEmpty String, String> any) {
    Map<String, String> expressible = new HashMap<>();
    any.forEach((name, value) -> expressible.put(whole(name), whole(value)));
    ForgetfulDisk fresh = new ForgetfulDisk(Quirk.NONE);
    SettingsFile file = new SettingsFile(fresh, FILE);
    file.store(expressible);

    assertThat(file.load()).isEqualTo(expressible);
  }

  /** Without halves of characters, which no encoding can hold. */
  private static String whole(String text) {
    return new String(text.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8);
  }

  @Property(seed = "20260503", tries = 300)
  void rubbishIsReadWithoutComplaint(@ForAll byte[] rubbish) {
    ForgetfulDisk fresh = new ForgetfulDisk(Quirk.NONE);
    fresh.addFolder(FILE.getParent());
    fresh.put(FILE, rubbish);

    assertThat(WindowSettings.from(new SettingsFile(fresh, FILE).load())).isNotNull();
  }

  @Test
  void noFileIsNoSettings() {
    assertThat(settings.load()).isEmpty();
  }

  @Test
  void aBadLineCostsOnlyItself() {
    onDisk("theme=sun\nbroken=\\u12zz\ntext.percent=125\n");

    assertThat(settings.load()).isEqualTo(Map.of("theme", "sun", "text.percent", "125"));
  }

  @Test
  void aFileThatCannotBeReadOrIsMuchTooLongIsNoSettings() {
    onDisk("theme=sun\n".repeat(200_000));
    assertThat(settings.load()).isEmpty();
    onDisk("theme=sun\n");
    disk.trouble(step -> Optional.of(new AccessDeniedException("no")));
    assertThat(settings.load()).isEmpty();
  }

  @Test
  void aFolderThatMayNotBeMadeIsAFault() {
    disk.trouble(
        step ->
            step.equals("makeFolder")
                ? Optional.of(new AccessDeniedException("no"))
                : Optional.empty());

    assertThat(settings.store(Map.of("theme", "sun")).fault())
        .contains(new FileFault.ReadOnly(FILE));
  }
}
