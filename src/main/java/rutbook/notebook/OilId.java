package rutbook.notebook;

/** Names an oil on the shelf. */
public record OilId(String text) implements Id {
  public OilId {
    Id.check(text);
  }

  @Override
  public String toString() {
    return text;
  }
}
