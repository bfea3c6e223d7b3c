package rutbook.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import rutbook.file.ForgetfulDisk.Quirk;
import rutbook.units.Display;
import rutbook.words.FileWords;
import rutbook.words.Phrases;

/**
 * A rider goes on editing while something is wrong with the disk: it is told in a sentence, what
 * was saved stays, and once the trouble is over everything is saved.
 */
class TroubleToldTest {
  private static final Path FOLDER = ForgetfulDisk.FOLDER;
  private static final Path FILE = FOLDER.resolve("season.rut");
  private static final FileWords WORDS =
      new FileWords(Phrases.english(Display.METRIC), ZoneOffset.UTC);

  private final ForgetfulDisk disk = new ForgetfulDisk(Quirk.NONE);
  private final DurableFile durable = new DurableFile(disk, millis -> {});
  private final HandClock clock = new HandClock();
  private final HandLater later = new HandLater();
  private final List<SaveState> told = new ArrayList<>();
  private NotebookFile file;
  private Autosaver<Integer> saver;

  @BeforeEach
  void aNotebookIsOpen() {
    disk.put(FILE, Page.of(1));
    open(FILE);
  }

  private void open(Path path) {
    file = NotebookFile.open(disk, durable, path, clock).result().orElseThrow().file();
    saver =
        new Autosaver<>(
            Page::of, file::save, new Autosaver.Means(later, Runnable::run, clock), told::add);
  }

  private void edit(int number) {
    saver.changed(number);
    later.pass(Duration.ofSeconds(2));
  }

  private String toldInASentence() {
    assertThat(saver.state()).isInstanceOf(SaveState.Failed.class);
    String sentence = WORDS.sentence(((SaveState.Failed) saver.state()).fault());
    assertThat(sentence).endsWith(".").contains("“");
    return sentence;
  }

  private void onTheDiskIs(int number) {
    assertThat(Page.number(disk.bytes(FILE))).isEqualTo(OptionalInt.of(number));
  }

  /** Three edits in trouble, then two minutes without it. */
  private String through(String step, IOException what) {
    edit(2);
    onTheDiskIs(2);
    disk.trouble(each -> each.equals(step) ? Optional.of(what) : Optional.empty());
    edit(3);
    edit(4);
    String sentence = toldInASentence();
    onTheDiskIs(2);
    edit(5);
    disk.trouble(each -> Optional.empty());
    later.pass(Duration.ofMinutes(2));
    assertThat(saver.state()).isInstanceOf(SaveState.Saved.class);
    onTheDiskIs(5);
    return sentence;
  }

  @Test
  void aFullDisk() {
    assertThat(through("write", new FaultException(new FileFault.DiskFull(FILE, 9))))
        .contains("There is no room for “", "season.rut”")
        .contains("the last saved version is safe");
  }

  @Test
  void aReadOnlyFolder() {
    assertThat(through("draft", new AccessDeniedException(FILE.toString())))
        .contains("season.rut” may not be written");
  }

  @Test
  void aPermissionThatIsLost() {
    assertThat(through("isWritable", new AccessDeniedException(FILE.toString())))
        .contains("season.rut” may not be written");
    assertThat(through("read", new AccessDeniedException(FILE.toString())))
        .contains("season.rut” is there but cannot be read");
  }

  @Test
  void aDeviceThatFails() {
    assertThat(through("force", new IOException("Input/output error")))
        .contains("could not be read or written");
  }

  @Test
  void aFolderThatIsRemovedAndPutBack() {
    disk.removeFolder(FOLDER);
    edit(2);
    assertThat(toldInASentence()).contains("is no longer there");
    edit(3);
    disk.addFolder(FOLDER);
    disk.put(FILE, Page.of(1));
    later.pass(Duration.ofMinutes(2));
    onTheDiskIs(3);
  }

  @Test
  void aFileThatASyncToolReplaced() {
    disk.put(FILE, Page.of(70));
    edit(2);
    assertThat(toldInASentence()).contains("changed by another program", "Nothing was overwritten");
    edit(3);
    later.pass(Duration.ofHours(1));
    onTheDiskIs(70);
    Path copy = file.keepAsCopy(Page.of(3), "mine").result().orElseThrow().file().path();
    assertThat(Page.number(disk.bytes(copy))).isEqualTo(OptionalInt.of(3));
    onTheDiskIs(70);
  }

  @Test
  void aClockThatJumpsBack() {
    edit(2);
    clock.move(Duration.ofDays(-400));
    edit(3);
    edit(4);
    assertThat(saver.state()).isInstanceOf(SaveState.Saved.class);
    onTheDiskIs(4);
    clock.move(Duration.ofDays(800));
    edit(5);
    onTheDiskIs(5);
    assertThat(file.backups().newestReadable(Page::readable)).isPresent();
  }

  @Test
  void aSecondProgram() {
    Outcome<NotebookFile.Opened> second = NotebookFile.open(disk, durable, FILE, clock);
    assertThat(WORDS.sentence(second.fault().orElseThrow())).contains("open in another Rutbook");
    edit(2);
    onTheDiskIs(2);
  }

  @Test
  void aLinkIsFollowedAndStays() {
    file.close();
    Path link = FOLDER.resolve("link.rut");
    disk.link(link, FILE);
    open(link);
    edit(2);
    onTheDiskIs(2);
    assertThat(disk.names(FOLDER)).doesNotContain("link.rut");
    assertThat(file.path()).isEqualTo(FILE);
  }

  @Test
  void aSlowDisk() {
    disk.trouble(
        step -> {
          if (step.equals("force") && told.stream().noneMatch(TroubleToldTest::isSlow)) {
            later.pass(Autosaver.SLOW);
          }
          return Optional.empty();
        });
    edit(2);
    assertThat(told).anyMatch(TroubleToldTest::isSlow);
    assertThat(WORDS.slow()).contains("The disk is slow").endsWith(".");
    assertThat(saver.state()).isInstanceOf(SaveState.Saved.class);
    onTheDiskIs(2);
  }

  @Test
  void aBackupThatCannotBeMade() {
    disk.trouble(
        step ->
            step.equals("makeFolder")
                ? Optional.of(new AccessDeniedException(FILE.toString()))
                : Optional.empty());
    edit(2);
    onTheDiskIs(2);
    FileFault why = ((SaveState.Saved) saver.state()).noBackup().orElseThrow();
    assertThat(WORDS.noBackup(why)).contains("are saved", "no backup", "may not be written");
  }

  private static boolean isSlow(SaveState state) {
    return state instanceof SaveState.Waiting waiting && waiting.slow();
  }
}
