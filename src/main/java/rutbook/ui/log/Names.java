package rutbook.ui.log;

import rutbook.notebook.Feel;
import rutbook.words.WindowWords;

/** How the pages of the Log name what was felt. */
final class Names {
  private Names() {}

  /** Such as "rear kicks, braking bumps". */
  static String of(WindowWords words, Feel feel) {
    return words.text(
        "feel.symptom",
        words.name(feel.end()),
        words.name(feel.symptom()),
        words.name(feel.section()));
  }
}
