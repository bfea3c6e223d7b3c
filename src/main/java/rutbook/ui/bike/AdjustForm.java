package rutbook.ui.bike;

import java.util.List;
import java.util.Optional;
import rutbook.notebook.Change;
import rutbook.notebook.Entry;
import rutbook.notebook.Head;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Sheet;
import rutbook.ui.controls.AskText;

/** A setting put to something else between rides: at home, in the paddock, on the bench. */
final class AdjustForm extends EntryForm<Entry.Adjusted> {
  private final Legs legs;
  private final AskText<String> why;

  AdjustForm(BikeDesk desk, Setting setting, Runnable close) {
    super(desk, "adjust-form", desk.text("adjust.form", setting.name()), Optional.empty(), close);
    legs = new Legs(this, setting, desk.model().now(setting));
    why = wide(fields().line("adjust-why", "adjust.why", ""));
    askDayAndMeter("adjust");
    askNote("adjust");
  }

  @Override
  Entry.Adjusted next(Head head) {
    Sheet sheet = blame(why, () -> desk().model().bike().sheetOn(head.day()));
    Reading to =
        legs.read(sheet)
            .orElseThrow(() -> new Refused(legs.first(), desk().text("adjust.nothing")));
    Change change =
        blame(why, () -> new Change(legs.setting().id(), to, Optional.empty(), take(why)));
    return new Entry.Adjusted(head, List.of(change));
  }
}
