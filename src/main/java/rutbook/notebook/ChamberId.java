package rutbook.notebook;

/** Names an oil chamber across the sheets of one bike. */
public record ChamberId(String text) implements Id {
  public ChamberId {
    Id.check(text);
  }

  @Override
  public String toString() {
    return text;
  }
}
