package rutbook.cli;

import rutbook.json.JsonException;
import rutbook.json.SetupJson;
import rutbook.words.JsonWords;
import rutbook.words.Phrases;

/** Reads setup files for the commands. */
final class SetupReading {
  private SetupReading() {}

  /**
   * @throws Refusal with the sentence about what is wrong with it
   */
  static SetupJson.Read read(Pen pen, String name, Phrases phrases) {
    byte[] bytes = pen.bytes(name);
    try {
      return SetupJson.read(bytes);
    } catch (JsonException noSetup) {
      String what = new JsonWords(phrases).sentence(noSetup);
      throw Refusal.file(phrases.say("Cli", "file-fault", name, what), noSetup.fault());
    }
  }
}
