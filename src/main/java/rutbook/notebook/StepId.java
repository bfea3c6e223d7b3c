package rutbook.notebook;

import java.util.List;
import java.util.Optional;

/**
 * Names a step of a rebuild plan; stable when the plan is computed again. It may name a setting and
 * a leg besides its kind, and is up to 120 letters long.
 */
public record StepId(String text) implements Id {
  private static final int LONGEST = 120;

  /** The step at which the hour meter is read. */
  public static final StepId METER = new StepId("hours");

  private static final String PLACING = "place:";
  private static final String FOUND = "shop-found:";

  public StepId {
    Id.check(text, LONGEST);
    for (String kind : List.of(PLACING, FOUND)) {
      if (text.startsWith(kind)) {
        Id.check(text.substring(kind.length()));
      }
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
    return about(PLACING);
  }

  /** The step that reads a setting as somebody else left it. */
  public static StepId finding(SettingId setting) {
    return new StepId(FOUND + setting.text());
  }

  /** The setting that this step reads as somebody else left it, if it is such a step. */
  public Optional<SettingId> found() {
    return about(FOUND);
  }

  private Optional<SettingId> about(String kind) {
    return text.startsWith(kind)
        ? Optional.of(new SettingId(text.substring(kind.length())))
        : Optional.empty();
  }

  @Override
  public String toString() {
    return text;
  }
}
