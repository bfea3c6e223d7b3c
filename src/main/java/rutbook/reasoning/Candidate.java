package rutbook.reasoning;

import rutbook.notebook.Reading;
import rutbook.notebook.Setting;

/**
 * A change that may be chosen, and what it promises.
 *
 * @param place of the setting among those with doses
 */
record Candidate(
    int place, Setting setting, Reading from, Reading to, int doses, Outlook.Prospect prospect) {
  /** Expected drop of the summed severity after the work. */
  double net() {
    return prospect.gain() - Outlook.cost(setting.work());
  }

  Explanations.Move move() {
    return new Explanations.Move(place, doses);
  }

  Telling.Explanation explains(double chance) {
    return new Telling.Explanation(setting, from, to, chance);
  }
}
