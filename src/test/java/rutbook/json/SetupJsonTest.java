package rutbook.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import rutbook.notebook.AnyNotebook;
import rutbook.notebook.Dice;
import rutbook.notebook.Notebook;
import rutbook.notebook.Notebooks;
import rutbook.notebook.Shared;
import rutbook.samples.Samples;
import rutbook.share.SetupFile;
import rutbook.share.SetupFiles;

class SetupJsonTest {
  private static final SetupFile SEASON =
      SetupFiles.advised(
          SetupFiles.whole(Samples.season(), EnumSet.allOf(Shared.class)), new Dice(new Random(8)));

  private static String written() {
    return new String(SetupJson.write(SEASON), StandardCharsets.UTF_8);
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static JsonFault fault(String text) {
    try {
      SetupJson.read(utf8(text));
      throw new AssertionError("was read");
    } catch (JsonException refused) {
      return refused.fault();
    }
  }

  @Property(tries = 100, seed = "41")
  void anySetupFileIsWrittenAsTheSchemaSaysAndReadBackTheSame(
      @ForAll long notebook, @ForAll long seed) {
    Dice dice = new Dice(new Random(seed));
    SetupFile file =
        SetupFiles.whole(Notebooks.of(notebook, dice.below(30)), dice.some(Shared.class));
    readBack(file);
    readBack(SetupFiles.advised(file, dice));
  }

  private static void readBack(SetupFile file) {
    byte[] bytes = SetupJson.write(file);
    SetupJson.Read read = SetupJson.read(bytes);
    assertThat(read).isEqualTo(new SetupJson.Read(file, true));
    assertThat(SetupJson.write(read.file())).isEqualTo(bytes);
    assertThat(read.ridersChecksum()).isEqualTo(SetupJson.checksum(file.asHandedOver()));
    assertThat(PublishedSchema.SETUP.faults(bytes)).isEmpty();
  }

  @Test
  void aFileWithEverythingShowsEveryFieldThereIs() throws IOException {
    Notebook notebook = AnyNotebook.whole();
    SetupFile whole = SetupFiles.whole(notebook, EnumSet.allOf(Shared.class));
    SetupFile advised = SetupFiles.advised(whole, new Dice(new Random(3)));
    SetupFile file = advised.with(advised.coach().orElseThrow().advising("One at a time."));
    FieldsSeen seen = new FieldsSeen();
    seen.look(new SetupFileShape(), new ObjectMapper().readTree(SetupJson.write(file)));
    // The time of day and what a change follows stay at home.
    assertThat(seen.missing())
        .containsExactlyInAnyOrder(
            ChangeShape.class.getName() + " proposal",
            SessionShape.class.getName() + " time",
            SagMeasuredShape.class.getName() + " time");
  }

  @Test
  void anotherLayoutIsTheSameFile() throws IOException {
    ObjectMapper mapper = new ObjectMapper();
    String dense = mapper.writeValueAsString(mapper.readTree(written())).replace("\n", "\r\n");
    assertThat(SetupJson.read(utf8("\uFEFF" + dense))).isEqualTo(new SetupJson.Read(SEASON, true));
    ObjectNode turned = mapper.createObjectNode();
    ObjectNode tree = (ObjectNode) mapper.readTree(written());
    java.util.List<String> names = new java.util.ArrayList<>();
    tree.fieldNames().forEachRemaining(name -> names.add(0, name));
    names.forEach(name -> turned.set(name, tree.get(name)));
    assertThat(SetupJson.read(mapper.writeValueAsBytes(turned)).file()).isEqualTo(SEASON);
  }

  @Test
  void oneDigitThatFlippedOnTheWayIsToldByTheChecksum() {
    String text = written();
    int at = text.indexOf(" clicks\"") - 1;
    String flipped = text.substring(0, at) + (text.charAt(at) == '7' ? '8' : '7');
    assertThat(fault(flipped + text.substring(at + 1)).kind()).isEqualTo(JsonFault.Kind.CHECKSUM);
  }

  @Test
  void whoTakesTheChecksumOutSaysThatItWasChangedOnPurpose() {
    String text = written().replaceAll(",\\s*\"checksum\": \"[0-9a-f]{64}\"", "");
    assertThat(SetupJson.read(utf8(text))).isEqualTo(new SetupJson.Read(SEASON, false));
    assertThat(text).doesNotContain("checksum");
  }

  /** Whole, so that it is not damage, and of a kind that is not known here. */
  @Test
  void aFieldThatAnotherProgramAddedIsToldByItsPlaceSinceTheChecksumFits() throws IOException {
    ObjectMapper mapper = new ObjectMapper();
    ObjectNode tree = (ObjectNode) mapper.readTree(written());
    tree.put("wheels", 2).remove("checksum");
    tree.put("checksum", Canonical.sha256(tree));
    JsonFault fault = fault(mapper.writerWithDefaultPrettyPrinter().writeValueAsString(tree));
    assertThat(fault.kind()).isEqualTo(JsonFault.Kind.UNKNOWN_FIELD);
    assertThat(fault.found()).isEqualTo("wheels");
    assertThat(fault.line()).isPositive();
  }

  @Test
  void aNewerFormatIsRefusedWithBothNumbers() {
    JsonFault fault = fault(written().replace("\"format\": 1", "\"format\": 2"));
    assertThat(fault.kind()).isEqualTo(JsonFault.Kind.NEWER_FORMAT);
    assertThat(fault.found() + " " + fault.allowed()).isEqualTo("2 [1]");
  }

  @Test
  void aNotebookIsNoSetupFile() {
    byte[] notebook = NotebookJson.write(Samples.firstDay());
    assertThatThrownBy(() -> SetupJson.read(notebook))
        .isInstanceOfSatisfying(
            JsonException.class,
            thrown -> assertThat(thrown.fault().allowed()).containsExactly("setup"));
  }

  @Test
  void moreThanEightMebibytesAreNotLookedInto() {
    JsonFault fault = fault(written() + " ".repeat(8 << 20));
    assertThat(fault.kind()).isEqualTo(JsonFault.Kind.TOO_LARGE);
  }
}
