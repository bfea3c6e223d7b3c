package rutbook.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rutbook.notebook.AnyNotebook;
import rutbook.notebook.Dice;
import rutbook.notebook.Shared;
import rutbook.share.SetupFile;
import rutbook.share.SetupFiles;

/**
 * What opened once opens for ever, setup files too. The golden file is never made again: a newer
 * format gets one of its own, and a step from the one before.
 */
class SetupFormatsTest {
  private static byte[] golden() throws IOException {
    try (InputStream in = SetupFormatsTest.class.getResourceAsStream("format-1.setup.json")) {
      return in.readAllBytes();
    }
  }

  @Test
  void format1IsReadAndWrittenBackByteForByte() throws IOException {
    SetupJson.Read read = SetupJson.read(golden());
    assertThat(read.hasChecksum()).isTrue();
    assertThat(SetupJson.write(read.file())).isEqualTo(golden());
    assertThat(PublishedSchema.SETUP.faults(golden())).isEmpty();
    assertThat(read.file().coach().orElseThrow().proposals()).hasSizeGreaterThan(3);
  }

  /** Found once, and kept: by it a rider's record of a handing over is told to be of this file. */
  @Test
  void theChecksumsOfFormat1StayWhatTheyAre() throws IOException {
    JsonNode tree = new ObjectMapper().readTree(golden());
    SetupFile file = SetupJson.read(golden()).file();
    assertThat(SetupJson.checksum(file)).isEqualTo(tree.path("checksum").asText());
    assertThat(SetupJson.checksum(file.asHandedOver())).isEqualTo(RIDERS_CHECKSUM);
  }

  private static final String RIDERS_CHECKSUM =
      "3137f55f04b37858ac1a2553defdecfb710ab5fd8e2af39a55834765a2ab1eb6";

  /** From a format that never left this test, in which the coach was called the adviser. */
  @Test
  void anOlderFormatIsBroughtUpAfterItsOwnChecksumWasLookedAt() throws IOException {
    ObjectNode old = (ObjectNode) Trees.MAPPER.readTree(golden());
    old.put("format", 0).set("adviser", old.remove("coach"));
    old.remove("checksum");
    old.put("checksum", Canonical.sha256(old));
    Upgrades fromZero =
        new Upgrades(
            1,
            Map.of(
                0,
                tree -> {
                  ObjectNode file = (ObjectNode) tree;
                  file.set("coach", file.remove("adviser"));
                  return file;
                }));
    SetupJson.Read read = SetupJson.read(Trees.MAPPER.writeValueAsBytes(old), fromZero);
    assertThat(read).isEqualTo(SetupJson.read(golden()));
  }

  /** Writes the golden file of a format that is new; never one that is there. */
  public static void main(String[] arguments) throws IOException {
    Path file =
        Path.of("src/test/resources/rutbook/json/format-" + SetupJson.FORMAT + ".setup.json");
    SetupFile whole = SetupFiles.whole(AnyNotebook.whole(), EnumSet.allOf(Shared.class));
    SetupFile advised = SetupFiles.advised(whole, new Dice(new Random(3)));
    SetupFile golden = advised.with(advised.coach().orElseThrow().advising("One at a time."));
    Files.write(file, SetupJson.write(golden), java.nio.file.StandardOpenOption.CREATE_NEW);
    System.out.println(SetupJson.checksum(golden.asHandedOver()));
  }
}
