package rutbook.ui.rebuild;

import java.time.LocalDate;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import rutbook.edit.EntryEdit;
import rutbook.edit.SessionStart;
import rutbook.notebook.Bike;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Head;
import rutbook.notebook.Hours;
import rutbook.notebook.NotebookException;
import rutbook.ui.Desk;
import rutbook.ui.controls.AskText;
import rutbook.ui.controls.Keys;
import rutbook.units.Amount;
import rutbook.units.AmountException;
import rutbook.units.AmountText;
import rutbook.units.Duration;

/** A new hour meter, or the old one reset: what it read last and what it reads first. */
final class MeterForm extends VBox {
  private final Desk desk;
  private final Bike bike;
  private final Hours hours;
  private final AskText<Amount> oldReads;
  private final AskText<Amount> newReads;
  private final Label error = Keys.prose("", "error");
  private final Runnable close;

  MeterForm(Desk desk, Bike bike, Runnable close) {
    super(8);
    this.desk = desk;
    this.bike = bike;
    this.hours = desk.timeline(bike.id()).hours();
    this.close = close;
    setId("meter-form");
    getStyleClass().add("wash");
    oldReads = ask("meter-old", "meter.old", hours.meter().map(this::written).orElse(""));
    newReads = ask("meter-new", "meter.new", written(Amount.of(0, Duration.HOUR)));
    error.setId("meter-error");
    error.managedProperty().bind(error.textProperty().isNotEmpty());
    getChildren()
        .addAll(
            Keys.label(desk.text("meter.title"), "card-title"),
            Keys.prose(desk.text("meter.how", hours.total()), "soft"),
            new HBox(12, oldReads, newReads),
            error,
            new HBox(
                8,
                Keys.mainKey("meter-save", desk.text("meter.save"), this::save),
                Keys.key("meter-cancel", desk.text("meter.cancel"), close)));
  }

  private String written(Amount amount) {
    return desk.settingWords().amount(amount);
  }

  private AskText<Amount> ask(String id, String text, String before) {
    return new AskText<>(
        id,
        desk.text(text),
        before,
        typed -> AmountText.parse(typed, Duration.HOUR, desk.words().locale()));
  }

  private void save() {
    oldReads.refuse("");
    newReads.refuse("");
    Optional<Amount> old = read(oldReads);
    Optional<Amount> next = read(newReads);
    if (old.isEmpty() || next.isEmpty()) {
      return;
    }
    Optional<Amount> last = hours.meter();
    if (last.isPresent() && old.get().compareQuantity(last.get()) < 0) {
      oldReads.refuse(desk.text("meter.backwards", written(last.get())));
      return;
    }
    try {
      desk.make(new EntryEdit.Add(new Entry.MeterChange(head(), old.get(), next.get())))
          .ifPresentOrElse(this::refused, close);
    } catch (NotebookException beyond) {
      refused(beyond);
    }
  }

  /** Today; after all that is written down, where a clock is behind. */
  private Head head() {
    LocalDate last = desk.timeline(bike.id()).lastDay().orElse(desk.today());
    LocalDate day = last.isAfter(desk.today()) ? last : desk.today();
    return Head.of(
        new EntryId(desk.ids().next()),
        bike.id(),
        day,
        SessionStart.orderOn(desk.notebook(), bike, day));
  }

  private void refused(NotebookException fault) {
    error.setText(desk.settingWords().refusal(fault));
  }

  private Optional<Amount> read(AskText<Amount> asked) {
    try {
      return Optional.of(asked.read());
    } catch (AmountException noAmount) {
      asked.refuse(desk.words().fault(noAmount));
      return Optional.empty();
    }
  }
}
