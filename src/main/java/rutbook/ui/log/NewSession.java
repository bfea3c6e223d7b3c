package rutbook.ui.log;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import rutbook.edit.Edit;
import rutbook.edit.EntryEdit;
import rutbook.edit.SessionStart;
import rutbook.edit.ShelfEdit;
import rutbook.notebook.Bike;
import rutbook.notebook.Conditions;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Head;
import rutbook.notebook.Moto;
import rutbook.notebook.MotoId;
import rutbook.notebook.MotoKind;
import rutbook.notebook.Report;
import rutbook.notebook.Rider;
import rutbook.notebook.RiderId;
import rutbook.notebook.Track;
import rutbook.notebook.TrackId;
import rutbook.ui.Desk;
import rutbook.ui.Place;
import rutbook.ui.controls.Keys;
import rutbook.units.Amount;
import rutbook.units.AmountException;
import rutbook.units.AmountText;
import rutbook.units.Duration;

/** The few questions of a new session: where, when, what the meter read. */
final class NewSession extends VBox {
  private final Desk desk;
  private final Bike bike;
  private final Runnable close;
  private final ComboBox<String> track = new ComboBox<>();
  private final TextField day = new TextField();
  private final TextField meter = new TextField();
  private final Label error = Keys.prose("", "error");

  NewSession(Desk desk, Bike bike, Runnable close) {
    super(10);
    this.desk = desk;
    this.bike = bike;
    this.close = close;
    setId("new-session");
    getStyleClass().add("wash");
    track();
    day.setId("new-day");
    day.setText(desk.today().toString());
    day.setPrefColumnCount(9);
    meter.setId("new-meter");
    meter.setPrefColumnCount(6);
    error.setId("new-error");
    HBox fields =
        new HBox(
            12,
            field("new.track", track),
            field("new.day", day),
            field("new.meter", meter),
            Keys.mainKey("new-start", desk.text("new.start"), this::start),
            Keys.key("new-cancel", desk.text("new.cancel"), close));
    fields.setAlignment(Pos.BOTTOM_LEFT);
    getChildren()
        .addAll(
            Keys.label(desk.text("new.title"), "card-title"),
            fields,
            Keys.label(desk.text("new.as.left"), "soft"));
  }

  private VBox field(String key, javafx.scene.control.Control control) {
    Label label = Keys.label(desk.text(key), "group-title");
    label.setLabelFor(control);
    control.getStyleClass().add("large-target");
    return new VBox(3, label, control);
  }

  private void track() {
    track.setId("new-track");
    track.setEditable(true);
    track.setPrefWidth(220);
    track.getItems().setAll(desk.notebook().shelf().tracks().stream().map(Track::name).toList());
    SessionStart.last(desk.notebook(), bike)
        .flatMap(session -> desk.notebook().shelf().track(session.track()))
        .or(() -> desk.notebook().shelf().tracks().stream().findFirst())
        .ifPresent(last -> track.setValue(last.name()));
  }

  private void start() {
    String name = track.getEditor().getText().strip();
    if (name.isEmpty()) {
      refuse(desk.text("new.no.track"), track);
      return;
    }
    Optional<LocalDate> typedDay = typedDay();
    if (typedDay.isEmpty()) {
      refuse(desk.text("new.bad.date", desk.today().toString()), day);
      return;
    }
    if (typedDay.get().isBefore(bike.sheets().get(0).from())) {
      refuse(desk.text("new.bad.day", bike.sheets().get(0).from()), day);
      return;
    }
    Optional<Amount> hours;
    try {
      hours =
          meter.getText().isBlank()
              ? Optional.empty()
              : Optional.of(
                  AmountText.parse(meter.getText(), Duration.HOUR, desk.words().locale()));
    } catch (AmountException none) {
      refuse(desk.text("new.bad.meter"), meter);
      return;
    }
    make(name, typedDay.get(), hours);
  }

  private Optional<LocalDate> typedDay() {
    try {
      return Optional.of(LocalDate.parse(day.getText().strip()));
    } catch (DateTimeException none) {
      return Optional.empty();
    }
  }

  private void make(String trackName, LocalDate on, Optional<Amount> hours) {
    List<Edit> edits = new ArrayList<>();
    TrackId trackId = trackId(trackName, edits);
    RiderId rider = rider(edits);
    EntryId id = new EntryId(desk.ids().next());
    Head head =
        Head.of(id, bike.id(), on, SessionStart.orderOn(desk.notebook(), bike, on))
            .withMeter(hours);
    Moto first =
        new Moto(
            new MotoId(desk.ids().next()),
            MotoKind.MOTO,
            List.of(),
            Report.EMPTY,
            Optional.empty(),
            "");
    edits.add(
        new EntryEdit.Add(
            new Entry.Session(
                head,
                trackId,
                rider,
                Conditions.NOT_NOTED,
                SessionStart.asLeft(desk.notebook(), bike, on),
                List.of(first),
                Optional.empty())));
    Edit edit = edits.size() == 1 ? edits.get(0) : new Edit.Together(edits);
    desk.make(edit)
        .ifPresentOrElse(
            refused -> refuse(desk.text("refused.other", refused.getMessage()), track),
            () -> {
              close.run();
              desk.go(new Place.Session(id));
            });
  }

  /** The track of that name, or a new one put on the shelf. */
  private TrackId trackId(String name, List<Edit> edits) {
    String wanted = name.toLowerCase(Locale.ROOT);
    Optional<Track> known =
        desk.notebook().shelf().tracks().stream()
            .filter(each -> each.name().toLowerCase(Locale.ROOT).equals(wanted))
            .findFirst();
    if (known.isPresent()) {
      return known.get().id();
    }
    TrackId id = new TrackId(desk.ids().next());
    edits.add(new ShelfEdit.PutTrack(new Track(id, name, Optional.empty(), Optional.empty(), "")));
    return id;
  }

  /** Who rode last, or the first rider, or a new one where there is none yet. */
  private RiderId rider(List<Edit> edits) {
    Optional<RiderId> known =
        SessionStart.last(desk.notebook(), bike)
            .map(Entry.Session::rider)
            .or(() -> desk.notebook().shelf().riders().stream().findFirst().map(Rider::id));
    if (known.isPresent()) {
      return known.get();
    }
    RiderId id = new RiderId(desk.ids().next());
    edits.add(new ShelfEdit.PutRider(new Rider(id, desk.text("new.rider"), List.of())));
    return id;
  }

  private void refuse(String sentence, Node field) {
    error.setText(sentence);
    if (!getChildren().contains(error)) {
      getChildren().add(2, error);
    }
    field.requestFocus();
  }

  @Override
  public void requestFocus() {
    track.requestFocus();
  }
}
