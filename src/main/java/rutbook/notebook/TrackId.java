package rutbook.notebook;

/** Names a track within a notebook. */
public record TrackId(String text) implements Id {
  public TrackId {
    Id.check(text);
  }

  @Override
  public String toString() {
    return text;
  }
}
