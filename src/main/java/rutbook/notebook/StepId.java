package rutbook.notebook;

import java.util.Optional;

/**
 * Names a step of a rebuild plan; stable when the plan is computed again. It may name a setting and
 * a leg besides its kind, and is up to 120 letters long.
 */
public record StepId(String text) implements Id {
  private static final int LONGEST = 120;
  private static final String PLACING = "place:";

  public StepId {
    Id.check(text, LONGEST);
    if (text.startsWith(PLACING)) {
      Id.check(text.substring(PLACING.length()));
    }
  }

  /**
   * The step that puts a setting where it belongs: what is entered there is what is on the bike.
   */
  public static StepId placing(SettingId setting) {
    return new StepId(PLACING + setting.text());
  }

  /** The setting that this step puts somewhere, if it is such a step. */
  public Optional<SettingId> placed() {
    return text.startsWith(PLACING)
        ? Optional.of(new SettingId(text.substring(PLACING.length())))
        : Optional.empty();
  }

  @Override
  public String toString() {
    return text;
  }
}
