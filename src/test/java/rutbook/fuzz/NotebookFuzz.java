package rutbook.fuzz;

import rutbook.json.JsonException;
import rutbook.json.NotebookJson;
import rutbook.notebook.Notebook;
import rutbook.units.Display;
import rutbook.words.JsonWords;
import rutbook.words.Phrases;

/** Any bytes as a notebook's file: a notebook that is written and read again, or a sentence. */
public final class NotebookFuzz {
  private static final JsonWords WORDS = new JsonWords(Phrases.english(Display.METRIC));

  private NotebookFuzz() {}

  public static void fuzzerTestOneInput(byte[] bytes) {
    Notebook notebook;
    try {
      notebook = NotebookJson.read(bytes);
    } catch (JsonException refused) {
      Sentences.require(WORDS.sentence(refused));
      return;
    }
    if (!NotebookJson.read(NotebookJson.write(notebook)).equals(notebook)) {
      throw new AssertionError("another notebook when it is read again");
    }
  }
}
