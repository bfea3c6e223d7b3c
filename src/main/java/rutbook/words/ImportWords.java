package rutbook.words;

import java.util.ArrayList;
import java.util.List;
import rutbook.imports.ImportException;
import rutbook.imports.NotTaken;
import rutbook.notebook.NotebookException;
import rutbook.units.AmountException;

/** What is told of a table that is imported: why not, and row by row what is not taken. */
public final class ImportWords {
  private static final String AREA = "Imports";

  private final Phrases phrases;
  private final FaultWords faults;

  public ImportWords(Phrases phrases) {
    this.phrases = phrases;
    this.faults = new FaultWords(phrases);
  }

  /** The text under a key, with the facts put into their places. */
  public String text(String key, Object... facts) {
    return phrases.say(AREA, key, facts);
  }

  /** Why nothing can be made of a file. */
  public String sentence(ImportException thrown) {
    return phrases.say(AREA, "fault." + thrown.fault().name(), thrown.facts().toArray());
  }

  /** One row, or one cell of a row, that is not taken. */
  public String notTaken(NotTaken each) {
    String why = phrases.say(AREA, "why." + each.why().name(), each.cell(), because(each));
    return each.isWholeRow()
        ? phrases.say(AREA, "line", each.line(), why)
        : phrases.say(AREA, "line.of", each.line(), each.of(), why);
  }

  private String because(NotTaken each) {
    return each.because().map(this::because).orElse("");
  }

  private String because(IllegalArgumentException thrown) {
    if (thrown instanceof AmountException amount) {
      return faults.sentence(amount);
    }
    return thrown instanceof NotebookException refused ? faults.what(refused) : "";
  }

  /** A row that is taken with readings beyond the sheet, which are kept as found. */
  public List<String> beyond(int line, List<NotebookException> beyond) {
    List<String> said = new ArrayList<>();
    for (NotebookException each : beyond) {
      said.add(phrases.say(AREA, "beyond", line, faults.what(each)));
    }
    return said;
  }
}
