package rutbook.notebook;

/** Names one notebook; a copy of the sample gets a new one. */
public record NotebookId(String text) implements Id {
  public NotebookId {
    Id.check(text);
  }

  @Override
  public String toString() {
    return text;
  }
}
