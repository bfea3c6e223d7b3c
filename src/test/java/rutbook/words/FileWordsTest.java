package rutbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import rutbook.file.FileFault;
import rutbook.units.Display;

class FileWordsTest {
  private static final Path FILE = Path.of("season.rutbook");
  private static final List<FileFault> ONE_OF_EACH =
      List.of(
          new FileFault.Missing(FILE),
          new FileFault.IsFolder(FILE),
          new FileFault.NotAFolder(FILE),
          new FileFault.TooLarge(FILE, (64L << 20) + 1, 64L << 20),
          new FileFault.Unreadable(FILE, "EIO"),
          new FileFault.ChangedBehindOurBack(FILE, Instant.EPOCH, Instant.EPOCH.plusSeconds(3600)),
          new FileFault.Locked(FILE),
          new FileFault.CannotLock(FILE, "ENOLCK"),
          new FileFault.DiskFull(FILE, 1),
          new FileFault.ReadOnly(FILE),
          new FileFault.FolderGone(FILE),
          new FileFault.BadName("season?", "?"),
          new FileFault.AlreadyThere(FILE),
          new FileFault.NoSafeReplace(FILE),
          new FileFault.NotMade("thrown"),
          new FileFault.Failed(FILE, "EWHAT"));

  private final FileWords words = new FileWords(Phrases.english(Display.METRIC), ZoneOffset.UTC);

  @Test
  void everyFaultHasASentenceOfItsOwn() {
    assertThat(ONE_OF_EACH.stream().map(Object::getClass).toList())
        .containsExactlyInAnyOrderElementsOf(
            Arrays.asList(FileFault.class.getPermittedSubclasses()));
    assertThat(ONE_OF_EACH.stream().map(words::sentence))
        .doesNotHaveDuplicates()
        .allMatch(sentence -> sentence.endsWith("."))
        .noneMatch(sentence -> sentence.contains("{"));
  }

  @Test
  void aFileJustTooLargeIsNotSaidToFit() {
    assertThat(words.sentence(ONE_OF_EACH.get(3)))
        .isEqualTo("“season.rutbook” has 65 MiB, a notebook has at most 64 MiB: it was not read.");
  }
}
