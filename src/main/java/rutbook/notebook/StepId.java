package rutbook.notebook;

import java.util.Optional;

/** Names a step of a rebuild plan; stable when the plan is computed again. */
public record StepId(String text) implements Id {
  private static final String PLACING = "place:";

  public StepId {
    Id.check(text);
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
