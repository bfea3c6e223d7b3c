package rutbook.ui.bike;

import java.util.Optional;
import rutbook.notebook.Parts;
import rutbook.notebook.Range;
import rutbook.notebook.SagWindows;
import rutbook.notebook.Sheet;
import rutbook.ui.controls.AskText;
import rutbook.ui.controls.Keys;
import rutbook.units.Amount;
import rutbook.units.Dimension;

/** The sag wished for: windows, which do not bind. */
final class WindowsForm extends SheetForm {
  private final Window rearRace;
  private final Window rearFree;
  private final Window frontRace;

  /** From and to, of one sag. */
  private record Window(AskText<Optional<Amount>> least, AskText<Optional<Amount>> most) {}

  WindowsForm(BikeDesk desk, Runnable close) {
    super(desk, "windows-form", desk.text("windows.form"), close);
    SagWindows now = desk.model().sheet().parts().sag();
    say(Keys.prose(desk.text("windows.hint"), "soft"));
    rearRace = window("rear-race", now.rearRace());
    rearFree = window("rear-free", now.rearFree());
    frontRace = window("front-race", now.frontRace());
  }

  private Window window(String id, Optional<Range> now) {
    say(Keys.label(desk().text("windows." + id), "strong"));
    return new Window(
        ask(length(id + "-least", "range.from", now.map(Range::least))),
        ask(length(id + "-most", "range.to", now.map(Range::most))));
  }

  private AskText<Optional<Amount>> length(String id, String label, Optional<Amount> now) {
    return fields().amount(id, label, now, Dimension.LENGTH);
  }

  private Optional<Range> read(Window window) {
    Optional<Amount> least = take(window.least());
    Optional<Amount> most = take(window.most());
    if (least.isEmpty() && most.isEmpty()) {
      return Optional.empty();
    }
    if (least.isEmpty() || most.isEmpty()) {
      throw new Refused(
          least.isEmpty() ? window.least() : window.most(), desk().text("setting.wish.both"));
    }
    return Optional.of(blame(window.most(), () -> new Range(least.get(), most.get())));
  }

  @Override
  Sheet next(Sheet sheet) {
    SagWindows next = new SagWindows(read(rearRace), read(rearFree), read(frontRace));
    Parts parts = sheet.parts();
    return sheet.withParts(new Parts(parts.fork(), parts.shock(), parts.geometry(), next));
  }
}
