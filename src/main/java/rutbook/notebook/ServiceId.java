package rutbook.notebook;

/** Names a service item across the sheets of one bike. */
public record ServiceId(String text) implements Id {
  public ServiceId {
    Id.check(text);
  }

  @Override
  public String toString() {
    return text;
  }
}
