package rutbook.notebook;

/** Names a rider within a notebook. */
public record RiderId(String text) implements Id {
  public RiderId {
    Id.check(text);
  }

  @Override
  public String toString() {
    return text;
  }
}
