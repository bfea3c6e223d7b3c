package rutbook.notebook;

/** Names a bike within a notebook. */
public record BikeId(String text) implements Id {
  public BikeId {
    Id.check(text);
  }

  @Override
  public String toString() {
    return text;
  }
}
