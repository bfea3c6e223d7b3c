package rutbook.notebook;

/** What names a thing across edits and files: 1 to 80 letters, digits, dots, dashes and colons. */
public sealed interface Id
    permits NotebookId,
        RiderId,
        BikeId,
        TrackId,
        OilId,
        SettingId,
        ChamberId,
        ServiceId,
        EntryId,
        MotoId,
        ProposalId,
        HandOverId,
        StepId {
  int LONGEST = 80;

  String text();

  /**
   * @throws NotebookException when the text is no id
   */
  static void check(String text) {
    check(text, LONGEST);
  }

  static void check(String text, int longest) {
    if (text.isEmpty() || text.length() > longest || !isLetterOrDigit(text.charAt(0))) {
      throw new NotebookException(Fault.BAD_ID, text);
    }
    for (int i = 1; i < text.length(); i++) {
      char each = text.charAt(i);
      if (!isLetterOrDigit(each) && ".:_-".indexOf(each) < 0) {
        throw new NotebookException(Fault.BAD_ID, text);
      }
    }
  }

  private static boolean isLetterOrDigit(char each) {
    return each >= 'a' && each <= 'z' || each >= 'A' && each <= 'Z' || each >= '0' && each <= '9';
  }
}
