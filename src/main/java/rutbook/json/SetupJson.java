package rutbook.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rutbook.json.JsonFault.Expected;
import rutbook.json.JsonFault.Kind;
import rutbook.json.SetupFileShape.WithChecksum;
import rutbook.share.SetupFile;

/**
 * The setup file: bytes to a checked value and back. Its checksum is the SHA-256 of the canonical
 * text without the checksum itself. What it says:
 *
 * <ul>
 *   <li>it fits: the file is as the last program wrote it, whatever happened to its spaces; a fault
 *       that is found all the same was written so by another program
 *   <li>it does not fit: damaged on the way, or changed by hand; refused
 *   <li>it is not there: written by hand or by another program on purpose; read, and told
 * </ul>
 *
 * <p>It is no signature: whoever writes a file can write its checksum.
 */
public final class SetupJson {
  /** The format that is written; older ones are brought up to it when read. */
  public static final int FORMAT = 1;

  private static final SetupFileShape SHAPE = new SetupFileShape();
  private static final Upgrades UPGRADES = new Upgrades(FORMAT, Map.of());

  private SetupJson() {}

  /**
   * What was read.
   *
   * @param hasChecksum whether a checksum stood in it, which fitted
   */
  public record Read(SetupFile file, boolean hasChecksum) {
    /** Of what the rider handed over, to hold against the own record. */
    public String ridersChecksum() {
      return checksum(file.asHandedOver());
    }
  }

  /**
   * UTF-8, indented, in a stable order, with its checksum and a line end at the end.
   *
   * @throws JsonException when it becomes larger than a setup file may be
   */
  public static byte[] write(SetupFile file) {
    return bytes(new WithChecksum(file, Optional.of(checksum(file))));
  }

  /** The checksum that the file has when it is written. */
  public static String checksum(SetupFile file) {
    JsonNode tree = tree(bytes(new WithChecksum(file, Optional.empty()))).orElseThrow();
    return Canonical.sha256(tree);
  }

  private static byte[] bytes(WithChecksum whole) {
    return Out.fileBytes(ReadingLimits.SETUP_BYTES, out -> SHAPE.write(whole, out));
  }

  /**
   * Reads strictly, after the checksum was looked at.
   *
   * @throws JsonException with line, column and path, the two formats when the file is newer, or
   *     the two checksums when they differ
   */
  public static Read read(byte[] file) {
    return read(file, UPGRADES);
  }

  /** Reads with the given steps; a step keeps the checksum, which is that of the older text. */
  static Read read(byte[] file, Upgrades upgrades) {
    byte[] bytes = WholeText.checked(file, ReadingLimits.SETUP_BYTES);
    byte[] newest = upgrades.toNewest(bytes);
    tree(bytes).ifPresent(SetupJson::requireChecksum);
    WithChecksum whole = WholeText.read(newest, SHAPE);
    return new Read(whole.file(), whole.checksum().isPresent());
  }

  private static void requireChecksum(JsonNode tree) {
    JsonNode written = tree.path(SetupFileShape.CHECKSUM);
    if (!tree.isObject() || !written.isTextual()) {
      return;
    }
    ObjectNode rest = ((ObjectNode) tree).deepCopy();
    rest.remove(SetupFileShape.CHECKSUM);
    String fits = Canonical.sha256(rest);
    if (!fits.equals(written.textValue())) {
      throw new JsonException(
          new JsonFault(
              Kind.CHECKSUM, 0, 0, "", written.textValue(), Expected.NOTHING, List.of(fits)));
    }
  }

  /** Empty when it is no JSON, or a field stands twice: the strict reading says where. */
  private static Optional<JsonNode> tree(byte[] bytes) {
    try {
      return Optional.of(Trees.MAPPER.readTree(bytes));
    } catch (JsonProcessingException noTree) {
      return Optional.empty();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }
}
