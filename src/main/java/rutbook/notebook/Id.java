package rutbook.notebook;

import java.util.regex.Pattern;

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
  Pattern FORM = Pattern.compile("[A-Za-z0-9][A-Za-z0-9.:_-]{0,79}");

  String text();

  /**
   * @throws NotebookException when the text is no id
   */
  static void check(String text) {
    check(text, FORM);
  }

  static void check(String text, Pattern form) {
    if (!form.matcher(text).matches()) {
      throw new NotebookException(Fault.BAD_ID, text);
    }
  }
}
