package rutbook.notebook;

/** Names a setting across the sheets of one bike; a new datum or unit is a new id. */
public record SettingId(String text) implements Id {
  public SettingId {
    Id.check(text);
  }

  @Override
  public String toString() {
    return text;
  }
}
