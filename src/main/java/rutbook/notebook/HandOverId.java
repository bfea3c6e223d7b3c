package rutbook.notebook;

/** Names one handing over of a setup, so that advice finds its way back. */
public record HandOverId(String text) implements Id {
  public HandOverId {
    Id.check(text);
  }

  @Override
  public String toString() {
    return text;
  }
}
