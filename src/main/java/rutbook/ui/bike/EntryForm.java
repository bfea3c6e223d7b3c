package rutbook.ui.bike;

import java.time.LocalDate;
import java.util.Optional;
import rutbook.edit.EntryEdit;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Head;
import rutbook.ui.controls.AskText;
import rutbook.units.Amount;
import rutbook.units.Duration;

/** A form over one entry of the bike: its day, the hour meter and a note, besides what it is. */
abstract class EntryForm<E extends Entry> extends Form {
  private final Optional<E> before;
  private AskText<LocalDate> day;
  private AskText<Optional<Amount>> meter;
  private AskText<String> note;

  EntryForm(BikeDesk desk, String id, String title, Optional<E> before, Runnable close) {
    super(desk, id, title, close);
    this.before = before;
  }

  final Optional<E> before() {
    return before;
  }

  /** The questions that every entry has; where they stand is for the form to say. */
  final void askDayAndMeter(String id) {
    day =
        ask(
            fields()
                .day(
                    id + "-day",
                    "entry.day",
                    before.map(Entry::day).orElse(desk().desk().today())));
    meter =
        ask(
            fields()
                .maybeIn(
                    id + "-meter",
                    "entry.meter",
                    before.flatMap(entry -> entry.head().meter()),
                    () -> Duration.HOUR));
  }

  final void askNote(String id) {
    note =
        wide(
            fields()
                .line(
                    id + "-note",
                    "entry.note",
                    before.map(entry -> entry.head().note()).orElse("")));
    if (before.isPresent()) {
      key(id + "-remove", desk().text("remove"), this::remove);
    }
  }

  /** The entry with the answers in it; throws {@link Refused} where they cannot be. */
  abstract E next(Head head);

  @Override
  final void save() {
    E next = next(head());
    Optional<String> refused =
        desk().make(before.isPresent() ? new EntryEdit.Correct(next) : new EntryEdit.Add(next));
    refused.ifPresentOrElse(this::refuse, this::close);
  }

  private Head head() {
    LocalDate on = take(day);
    Optional<Amount> reads = take(meter);
    Head head =
        before
            .map(entry -> moved(entry.head(), on))
            .orElseGet(
                () ->
                    blame(
                        day,
                        () ->
                            Head.of(
                                new EntryId(desk().desk().ids().next()),
                                desk().model().bike().id(),
                                on,
                                desk().orderOn(on))));
    Head withMeter = blame(meter, () -> head.withMeter(reads));
    return blame(note, () -> withMeter.withNote(take(note)));
  }

  private Head moved(Head head, LocalDate on) {
    return head.day().equals(on) ? head : blame(day, () -> head.on(on, desk().orderOn(on)));
  }

  private void remove() {
    before.ifPresent(
        entry ->
            desk()
                .make(new EntryEdit.Remove(entry.id()))
                .ifPresentOrElse(this::refuse, this::close));
  }
}
