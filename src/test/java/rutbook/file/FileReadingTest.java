package rutbook.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rutbook.file.ForgetfulDisk.Quirk;

class FileReadingTest {
  private static final Path FOLDER = ForgetfulDisk.FOLDER;

  private final ForgetfulDisk disk = new ForgetfulDisk(Quirk.NONE);
  private final FileReading reading = new FileReading(disk);

  @Test
  void theBytesAreReadAndNothingElseHappens() {
    disk.put(FOLDER.resolve("a.rut"), Page.of(1));

    assertThat(reading.read(FOLDER.resolve("a.rut"), FileReading.LIMIT).result().orElseThrow())
        .isEqualTo(Page.of(1));
    assertThat(disk.steps()).containsExactly("stat a.rut", "read a.rut");
  }

  @Test
  void whatIsLargerThanTheLimitIsNotEvenRead() {
    Path file = FOLDER.resolve("a.rut");
    disk.put(file, new byte[11]);

    assertThat(reading.read(file, 10).fault()).contains(new FileFault.TooLarge(file, 11, 10));
    assertThat(reading.read(file, 11).fault()).isEmpty();
    assertThat(disk.steps()).containsExactly("stat a.rut", "stat a.rut", "read a.rut");
  }

  @Test
  void aFoldersFilesAreListedByNameWithoutFoldersAndHiddenOnes() {
    for (String name : List.of("c.RUT", "a.rut", ".hidden.rut", "b.txt")) {
      disk.put(FOLDER.resolve(name), Page.of(1));
    }
    disk.addFolder(FOLDER.resolve("d.rut"));
    disk.put(FOLDER.resolve("d.rut").resolve("inside.rut"), Page.of(1));

    assertThat(reading.filesIn(FOLDER, ".rut").result().orElseThrow())
        .containsExactly(FOLDER.resolve("a.rut"), FOLDER.resolve("c.RUT"));
  }

  @Test
  void aFolderThatIsNoneOrCannotBeListedIsAFault() {
    Path file = FOLDER.resolve("a.rut");
    Path missing = FOLDER.resolve("missing");
    disk.put(file, Page.of(1));
    assertThat(reading.filesIn(file, ".rut").fault()).contains(new FileFault.NotAFolder(file));
    assertThat(reading.filesIn(missing, ".rut").fault()).contains(new FileFault.Missing(missing));
    disk.trouble(step -> Optional.of(new IOException("Input/output error")));
    assertThat(reading.filesIn(FOLDER, ".rut").fault())
        .contains(new FileFault.Unreadable(FOLDER, "Input/output error"));
  }
}
