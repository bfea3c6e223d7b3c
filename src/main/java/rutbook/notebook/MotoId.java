package rutbook.notebook;

/** Names a moto of a session. */
public record MotoId(String text) implements Id {
  public MotoId {
    Id.check(text);
  }

  @Override
  public String toString() {
    return text;
  }
}
