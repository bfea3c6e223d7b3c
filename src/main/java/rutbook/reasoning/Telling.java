package rutbook.reasoning;

import rutbook.notebook.Reading;
import rutbook.notebook.Setting;

/**
 * Two explanations that the motos cannot tell apart yet, and how one ride with a change tells them.
 *
 * @param complaint whose rating tells
 * @param under what a rating below the limit speaks for
 * @param over what a rating above it speaks for
 * @param limit severity, 0.5 to 4.5
 * @param mistaken chance that one rating speaks for the wrong one, 0 to 0.25
 */
public record Telling(
    Complaint complaint, Explanation under, Explanation over, double limit, double mistaken) {
  /**
   * What may be the remedy.
   *
   * @param chance that this change of all would help most, 0 to 1
   */
  public record Explanation(Setting setting, Reading from, Reading to, double chance) {}
}
