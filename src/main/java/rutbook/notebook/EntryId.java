package rutbook.notebook;

/** Names an entry of the notebook. */
public record EntryId(String text) implements Id {
  public EntryId {
    Id.check(text);
  }

  @Override
  public String toString() {
    return text;
  }
}
