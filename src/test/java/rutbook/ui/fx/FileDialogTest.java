package rutbook.ui.fx;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The name of a file to be made, with the dialog of the system played by its answers. */
class FileDialogTest {
  @TempDir Path folder;
  private final List<Path> offered = new ArrayList<>();

  private Optional<Path> toSave(String... typed) {
    Iterator<String> answers = Arrays.asList(typed).iterator();
    return FileDialog.toSave(
        ".rutbook",
        Files::exists,
        () -> Optional.ofNullable(answers.next()).map(folder::resolve),
        offered::add);
  }

  @Test
  void aNameWithoutTheEndingGetsIt() {
    assertThat(toSave("bike")).contains(folder.resolve("bike.rutbook"));
    assertThat(toSave("bike.rutbook")).contains(folder.resolve("bike.rutbook"));
    assertThat(offered).isEmpty();
  }

  @Test
  void aFileThatIsThereIsOnlyChosenByItsWholeName() throws IOException {
    Files.createFile(folder.resolve("bike.rutbook"));
    assertThat(toSave("bike", "bike.rutbook")).contains(folder.resolve("bike.rutbook"));
    assertThat(offered).containsExactly(folder.resolve("bike.rutbook"));
  }

  @Test
  void whoThinksBetterOfItAtTheSecondQuestionLeavesTheFile() throws IOException {
    Files.createFile(folder.resolve("bike.rutbook"));
    assertThat(toSave("bike", null)).isEmpty();
    assertThat(toSave("bike", "other")).contains(folder.resolve("other.rutbook"));
  }
}
