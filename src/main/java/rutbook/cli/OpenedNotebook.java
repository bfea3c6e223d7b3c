package rutbook.cli;

import rutbook.notebook.Bike;
import rutbook.notebook.Notebook;
import rutbook.notebook.Timeline;
import rutbook.units.Display;
import rutbook.words.ChangeWords;
import rutbook.words.CompareWords;
import rutbook.words.Phrases;
import rutbook.words.PlanWords;
import rutbook.words.ReadingWords;

/** A notebook with the bike in question and the words for it. */
record OpenedNotebook(Notebook notebook, Bike bike, Phrases phrases) {

  static OpenedNotebook of(Notebook notebook, String bikeName, Display display) {
    Phrases phrases = Phrases.english(display);
    return new OpenedNotebook(notebook, bike(notebook, bikeName, phrases), phrases);
  }

  private static Bike bike(Notebook notebook, String name, Phrases phrases) {
    if (notebook.bikes().isEmpty()) {
      throw Refusal.use(phrases.say("Cli", "no-bike"));
    }
    if (name.isEmpty() && notebook.bikes().size() == 1) {
      return notebook.bikes().get(0);
    }
    String names =
        String.join(
            ", ", notebook.bikes().stream().map(each -> phrases.safe(each.name())).toList());
    return notebook.bikes().stream()
        .filter(each -> each.name().equalsIgnoreCase(name) || each.id().text().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                Refusal.use(
                    phrases.say(
                        "Cli", name.isEmpty() ? "which-bike" : "no-such-bike", name, names)));
  }

  Timeline timeline() {
    return Timeline.of(notebook, bike.id());
  }

  ReadingWords readings() {
    return new ReadingWords(phrases);
  }

  ChangeWords changes() {
    return new ChangeWords(phrases);
  }

  CompareWords comparing() {
    return new CompareWords(phrases);
  }

  PlanWords planning() {
    return new PlanWords(phrases);
  }

  String say(String key, Object... facts) {
    return phrases.say("Cli", key, facts);
  }
}
