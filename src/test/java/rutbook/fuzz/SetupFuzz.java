package rutbook.fuzz;

import rutbook.json.JsonException;
import rutbook.json.SetupJson;
import rutbook.share.SetupFile;
import rutbook.units.Display;
import rutbook.words.JsonWords;
import rutbook.words.Phrases;

/** Any bytes as a setup file: one that is written and read again, or a sentence. */
public final class SetupFuzz {
  private static final JsonWords WORDS = new JsonWords(Phrases.english(Display.METRIC));

  private SetupFuzz() {}

  public static void fuzzerTestOneInput(byte[] bytes) {
    SetupFile file;
    try {
      file = SetupJson.read(bytes).file();
    } catch (JsonException refused) {
      Sentences.require(WORDS.sentence(refused));
      return;
    }
    SetupJson.Read again = SetupJson.read(SetupJson.write(file));
    if (!again.file().equals(file) || !again.hasChecksum()) {
      throw new AssertionError("another setup file when it is read again");
    }
  }
}
