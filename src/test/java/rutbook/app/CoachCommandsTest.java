package rutbook.app;

import static org.assertj.core.api.Assertions.assertThat;
import static rutbook.app.Ran.run;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rutbook.json.NotebookJson;
import rutbook.json.SetupJson;
import rutbook.notebook.Answer;
import rutbook.notebook.Entry;
import rutbook.notebook.Notebook;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Timeline;
import rutbook.samples.Samples;
import rutbook.share.CoachPart;
import rutbook.share.SetupFile;
import rutbook.share.Suggested;

/** The rider's two commands as the program runs them, on a real disk, with a coach in between. */
class CoachCommandsTest {
  @TempDir private Path folder;
  private Path season;
  private Path setup;

  @BeforeEach
  void aSeason() throws IOException {
    season = Files.write(folder.resolve("season.rutbook"), NotebookJson.write(Samples.season()));
    setup = folder.resolve("to-coach.setup.json");
  }

  private Notebook notebook() throws IOException {
    return NotebookJson.read(Files.readAllBytes(season));
  }

  private SetupFile handedOver() throws IOException {
    assertThat(run("hand-over", season, "now", "baseline", "--to", setup).exit()).isZero();
    return SetupJson.read(Files.readAllBytes(setup)).file();
  }

  /** The coach: two clicks at the first clicker, and a word. */
  private Setting coach(SetupFile file) throws IOException {
    Setting clicker =
        file.sheet().settings().stream()
            .filter(each -> each.id().equals(new SettingId("fork-compression")))
            .findFirst()
            .orElseThrow();
    Reading to =
        file.asked()
            .setup()
            .reading(clicker.id())
            .orElseThrow()
            .map(amount -> amount.minus(clicker.scale().step()));
    CoachPart part = CoachPart.of("Jorun").with(new Suggested(clicker.id(), to, "for the whoops"));
    Files.write(setup, SetupJson.write(file.with(part.handedBackOn(LocalDate.of(2026, 11, 2)))));
    return clicker;
  }

  @Test
  void aPreviewSaysWhatWouldBeInTheFileAndWritesNothing() throws IOException {
    byte[] before = Files.readAllBytes(season);
    Ran ran = run("hand-over", season, "2026-10-17#2", "--preview");
    assertThat(ran.exit()).isZero();
    assertThat(ran.out()).contains("without the name of the place", "Not in it: lap times.");
    assertThat(Files.readAllBytes(season)).isEqualTo(before);
    try (Stream<Path> all = Files.list(folder)) {
      assertThat(all).containsExactly(season);
    }
  }

  @Test
  void handingOverLeavesAFileAndARecordOfTheSameChecksum() throws IOException {
    SetupFile file = handedOver();
    List<Entry.HandedOver> records =
        notebook().entries().stream()
            .filter(Entry.HandedOver.class::isInstance)
            .map(Entry.HandedOver.class::cast)
            .filter(each -> each.handOver().equals(file.handOver().id()))
            .toList();
    assertThat(records).hasSize(1);
    assertThat(records.get(0).sha256()).isEqualTo(SetupJson.checksum(file));
    assertThat(records.get(0).snapshot()).isEqualTo(file.snapshot());
    Ran again = run("hand-over", season, "--to", setup);
    assertThat(again.exit()).isEqualTo(2);
    assertThat(again.errors()).contains("already there");
    assertThat(notebook().entries()).hasSize(Samples.season().entries().size() + 1);
  }

  @Test
  void theAnswerIsLookedAtThenTakenAndNotTakenTwice() throws IOException {
    Setting clicker = coach(handedOver());
    byte[] before = Files.readAllBytes(season);
    Ran looked = run("take-back", season, setup);
    assertThat(looked.exit()).as("%s", looked).isZero();
    assertThat(looked.out())
        .contains("From Jorun", "It stands as you handed it over.", "“for the whoops”")
        .contains("The notebook was not changed");
    assertThat(Files.readAllBytes(season)).isEqualTo(before);
    Ran taken = run("take-back", season, setup, "--accept", clicker.name());
    assertThat(taken.exit()).as("%s", taken).isZero();
    Notebook after = notebook();
    Timeline timeline = Timeline.of(after, after.bikes().get(0).id());
    SetupFile file = SetupJson.read(Files.readAllBytes(setup)).file();
    Reading wished = file.coach().orElseThrow().proposals().get(0).to();
    assertThat(timeline.now().reading(clicker.id())).contains(wished);
    Ran twice = run("take-back", season, setup, "--keep");
    assertThat(twice.exit()).isEqualTo(2);
    assertThat(twice.errors()).contains("already taken back");
    assertThat(notebook()).isEqualTo(after);
  }

  @Test
  void aProposalIsDeclinedWithAWord() throws IOException {
    Setting clicker = coach(handedOver());
    Ran ran = run("take-back", season, setup, "--decline", clicker.id().text() + "=too firm");
    assertThat(ran.exit()).as("%s", ran).isZero();
    Notebook after = notebook();
    Entry.Advice advice = (Entry.Advice) after.entries().get(after.entries().size() - 1);
    assertThat(advice.proposals().get(0).answer()).isEqualTo(new Answer.Declined("too firm"));
  }

  @Test
  void whatDoesNotFitIsRefusedInASentenceAndAsJson() throws IOException {
    Setting clicker = coach(handedOver());
    byte[] whole = Files.readAllBytes(setup);
    byte[] before = Files.readAllBytes(season);
    Ran unknown = run("take-back", season, setup, "--accept", "wing");
    assertThat(unknown.exit()).isEqualTo(2);
    assertThat(unknown.errors()).contains("“wing”", clicker.name());
    String text = new String(whole, StandardCharsets.UTF_8);
    Files.writeString(setup, text.replace("whoops", "whoop5"));
    Ran damaged = run("take-back", season, setup, "--keep", "--json");
    assertThat(damaged.exit()).isEqualTo(3);
    JsonNode answer = new ObjectMapper().readTree(damaged.out());
    assertThat(answer.path("fault").path("kind").asText()).isEqualTo("checksum");
    Files.write(setup, NotebookJson.write(Samples.firstDay()));
    assertThat(run("take-back", season, setup).errors()).contains("to-coach.setup.json");
    Path other = folder.resolve("first.rutbook");
    Files.write(other, NotebookJson.write(Samples.firstDay()));
    Files.write(setup, whole);
    Ran elsewhere = run("take-back", other, setup, "--keep");
    assertThat(elsewhere.exit()).isEqualTo(2);
    assertThat(elsewhere.errors()).contains("handed over by Imke Varrel");
    assertThat(Files.readAllBytes(season)).isEqualTo(before);
  }

  @Test
  void aQuestionTooLongForAFileIsRefusedInASentence() throws IOException {
    Ran ran = run("hand-over", season, "--to", setup, "--ask", "x".repeat(20_001));
    assertThat(ran.exit()).isEqualTo(2);
    assertThat(ran.errors()).contains("Question: 20,001");
    assertThat(setup).doesNotExist();
    assertThat(run("hand-over", season, "--to", setup, "--with", "wheels").exit()).isEqualTo(2);
    assertThat(run("hand-over", season, "--to", folder.resolve("x.json")).exit()).isEqualTo(2);
    assertThat(notebook()).isEqualTo(Samples.season());
  }
}
