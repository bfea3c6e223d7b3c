package rutbook.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rutbook.edit.Editor;
import rutbook.edit.ShelfEdit;
import rutbook.file.Autosaver;
import rutbook.file.RealDisk;
import rutbook.file.SettingsFile;
import rutbook.json.NotebookJson;
import rutbook.notebook.Bench;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookId;
import rutbook.notebook.Track;
import rutbook.notebook.TrackId;
import rutbook.ui.NotebookFiles.Answer;
import rutbook.units.Display;
import rutbook.words.Phrases;

/** Opening, copying and settling on a real disk; nothing is saved until it is asked for. */
class DiskFilesTest {
  @TempDir Path folder;
  private final Editor editor = new Editor(Notebook.empty(new NotebookId("none")));
  private DiskFiles files;
  private Runnable unlisten;
  private Remembered remembered;
  private int ids;

  @BeforeEach
  void start() {
    RealDisk disk = new RealDisk(System.getProperty("os.name"));
    Clock clock = Clock.systemUTC();
    remembered = new Remembered(new SettingsFile(disk, folder.resolve("window.properties")));
    DiskFiles.Means means =
        new DiskFiles.Means(
            disk,
            clock,
            new Codec(NotebookJson::read, NotebookJson::write, Throwable::getMessage),
            new Autosaver.Means((wait, task) -> () -> {}, Runnable::run, clock),
            Runnable::run,
            () -> "new-" + ids++);
    files = new DiskFiles(means, Phrases.english(Display.METRIC), remembered, state -> {});
    unlisten = editor.listen(files::changed);
  }

  @AfterEach
  void end() {
    unlisten.run();
    files.close();
  }

  private Path path(String name) {
    return folder.resolve(name + ".rutbook");
  }

  private static Answer answer(Consumer<Consumer<Answer>> asked) {
    List<Answer> answers = new ArrayList<>();
    asked.accept(answers::add);
    assertThat(answers).as("one answer").hasSize(1);
    return answers.get(0);
  }

  /** As the window does: what is opened is what is edited from now on. */
  private Answer shown(Consumer<Consumer<Answer>> asked) {
    Answer answer = answer(asked);
    if (answer instanceof Answer.Opened opened) {
      editor.open(opened.notebook());
    }
    return answer;
  }

  private Notebook startNew(String name) {
    assertThat(shown(it -> files.startNew(path(name), it))).isInstanceOf(Answer.Opened.class);
    return editor.present();
  }

  private void ride(String track) {
    editor.make(
        new ShelfEdit.PutTrack(
            new Track(new TrackId(track), track, Optional.empty(), Optional.empty(), "")));
  }

  private Notebook onDisk(String name) throws IOException {
    return NotebookJson.read(Files.readAllBytes(path(name)));
  }

  private Answer.Refused settled() {
    return (Answer.Refused) answer(files::settle);
  }

  private Answer way(String label) {
    Answer.Refused refused = settled();
    return shown(
        refused.ways().stream()
            .filter(way -> way.label().equals(label))
            .findFirst()
            .orElseThrow()
            .take());
  }

  private Optional<String> closing() {
    List<Optional<String>> answers = new ArrayList<>();
    files.beforeClosing(answers::add);
    return answers.get(0);
  }

  @Test
  void aNewNotebookIsAFileAtOnceAndTheLatestOfTheRecent() throws IOException {
    Notebook first = startNew("first");
    assertThat(onDisk("first")).isEqualTo(first);
    assertThat(files.current()).contains(path("first"));
    assertThat(files.folder()).contains(folder);
    assertThat(files.isSample()).isFalse();
    startNew("second");
    assertThat(files.recent()).containsExactly(path("second"), path("first"));
    assertThat(remembered.recent()).isEqualTo(files.recent());
    byte[] before = Files.readAllBytes(path("first"));
    assertThat(answer(it -> files.startNew(path("first"), it)))
        .as("none is replaced")
        .isInstanceOf(Answer.Refused.class);
    assertThat(Files.readAllBytes(path("first"))).isEqualTo(before);
    assertThat(files.current()).contains(path("second"));
  }

  @Test
  void whatIsOpenIsSavedBeforeAnotherTakesItsPlace() throws IOException {
    startNew("first");
    ride("mine");
    Notebook mine = editor.present();
    assertThat(onDisk("first")).isNotEqualTo(mine);
    startNew("second");
    assertThat(onDisk("first")).isEqualTo(mine);
    assertThat(shown(it -> files.open(path("first"), it)))
        .isInstanceOfSatisfying(
            Answer.Opened.class,
            opened -> {
              assertThat(opened.notebook()).isEqualTo(mine);
              assertThat(opened.path()).isEqualTo(path("first"));
            });
    assertThat(closing()).isEmpty();
  }

  @Test
  void whatCannotBeSavedKeepsItsPlace() throws IOException {
    startNew("first");
    startNew("second");
    ride("mine");
    Notebook mine = editor.present();
    Files.copy(path("first"), path("second"), StandardCopyOption.REPLACE_EXISTING);
    assertThat(shown(it -> files.open(path("first"), it))).isInstanceOf(Answer.Refused.class);
    assertThat(files.current()).contains(path("second"));
    assertThat(files.present().orElseThrow().notebook()).isEqualTo(mine);
    assertThat(closing()).isPresent();
  }

  @Test
  void aCopyIsANotebookOfItsOwnAndTheOpenOneStaysOpen() throws IOException {
    Notebook first = startNew("first");
    ride("mine");
    assertThat(answer(it -> files.copyTo(path("copy"), it))).isEqualTo(new Answer.Done());
    assertThat(onDisk("copy").id()).isNotEqualTo(first.id());
    assertThat(onDisk("copy").copiedAs(first.id())).isEqualTo(editor.present());
    assertThat(files.current()).contains(path("first"));
    byte[] copy = Files.readAllBytes(path("copy"));
    ride("more");
    assertThat(answer(it -> files.copyTo(path("copy"), it)))
        .as("none is replaced")
        .isInstanceOf(Answer.Refused.class);
    assertThat(Files.readAllBytes(path("copy"))).isEqualTo(copy);
  }

  /** Another program wrote the file: mine is kept beside it, theirs stays as it is. */
  @Test
  void mineIsKeptAsACopyBesideTheirs() throws IOException {
    startNew("other");
    ride("theirs");
    Notebook theirs = editor.present();
    startNew("first");
    ride("mine");
    Notebook mine = editor.present();
    byte[] written = NotebookJson.write(theirs);
    Files.write(path("first"), written);
    assertThat(closing()).isPresent();
    assertThat(settled().ways()).hasSize(2);
    assertThat(way("Keep mine as a copy"))
        .isInstanceOfSatisfying(
            Answer.Opened.class,
            opened -> {
              assertThat(opened.notebook()).isEqualTo(mine);
              assertThat(opened.path()).isNotEqualTo(path("first"));
              assertThat(opened.path().getFileName().toString()).contains("(mine)");
            });
    assertThat(Files.readAllBytes(path("first"))).isEqualTo(written);
    assertThat(closing()).isEmpty();
  }

  @Test
  void theirsIsOpenedInstead() throws IOException {
    Notebook first = startNew("first");
    ride("mine");
    Notebook theirs = first.with(Display.US);
    Files.write(path("first"), NotebookJson.write(theirs));
    assertThat(closing()).isPresent();
    assertThat(way("Open the other version"))
        .isInstanceOfSatisfying(
            Answer.Opened.class, opened -> assertThat(opened.notebook()).isEqualTo(theirs));
    assertThat(editor.present()).isEqualTo(theirs);
    assertThat(answer(files::settle)).isEqualTo(new Answer.Done());
  }

  @Test
  void aFileThatIsGoneIsPutBack() throws IOException {
    startNew("first");
    ride("mine");
    Files.delete(path("first"));
    assertThat(closing()).isPresent();
    assertThat(way("Put the file back")).isEqualTo(new Answer.Done());
    assertThat(closing()).isEmpty();
    assertThat(onDisk("first")).isEqualTo(editor.present());
  }

  @Test
  void whatIsNowhereIsNotGivenUpForAnother() throws IOException {
    startNew("first");
    end();
    start();
    Notebook sample = Bench.notebook();
    files.startUnsaved(sample);
    editor.open(sample);
    assertThat(files.current()).isEmpty();
    assertThat(closing().orElseThrow()).contains("in this window only");
    assertThat(settled().sentence()).contains("in this window only");
    ride("mine");
    assertThat(answer(it -> files.open(path("first"), it))).isInstanceOf(Answer.Refused.class);
    assertThat(shown(it -> files.copyTo(path("kept"), it))).isInstanceOf(Answer.Opened.class);
    assertThat(onDisk("kept")).isEqualTo(editor.present());
    assertThat(files.current()).contains(path("kept"));
    assertThat(closing()).isEmpty();
  }

  @Test
  void whatIsNowhereAndUntouchedMayMakePlace() {
    startNew("first");
    end();
    start();
    files.startUnsaved(Bench.notebook());
    assertThat(shown(it -> files.open(path("first"), it))).isInstanceOf(Answer.Opened.class);
  }

  @Test
  void whatIsNoNotebookIsRefusedAndNeverTouched() throws IOException {
    startNew("first");
    Files.writeString(path("torn"), "{\"format\": 1, \"id");
    assertThat(shown(it -> files.open(path("torn"), it))).isInstanceOf(Answer.Refused.class);
    assertThat(Files.readString(path("torn"))).isEqualTo("{\"format\": 1, \"id");
    assertThat(files.current()).contains(path("first"));
    assertThat(shown(it -> files.open(path("nothing"), it))).isInstanceOf(Answer.Refused.class);
    assertThat(files.recent()).containsExactly(path("first"));
  }

  /** What a backup has is offered where the file itself cannot be read, and comes back. */
  @Test
  void theNewestBackupThatCanBeReadIsOffered() throws IOException {
    startNew("first");
    ride("mine");
    Notebook mine = editor.present();
    startNew("second");
    shown(it -> files.open(path("first"), it));
    ride("more");
    startNew("third");
    Files.writeString(path("first"), "torn");
    Answer.Refused refused = (Answer.Refused) answer(it -> files.open(path("first"), it));
    assertThat(refused.ways()).hasSize(1);
    assertThat(shown(refused.ways().get(0).take()))
        .isInstanceOfSatisfying(
            Answer.Opened.class, opened -> assertThat(opened.notebook()).isEqualTo(mine));
    assertThat(files.current()).contains(path("first"));
  }
}
