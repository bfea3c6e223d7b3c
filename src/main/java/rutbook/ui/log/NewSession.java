package rutbook.ui.log;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import rutbook.edit.SessionStart;
import rutbook.notebook.Bike;
import rutbook.notebook.Change;
import rutbook.notebook.Track;
import rutbook.notebook.TrackId;
import rutbook.ui.Desk;
import rutbook.ui.controls.Keys;
import rutbook.units.Amount;
import rutbook.units.AmountException;
import rutbook.units.AmountText;
import rutbook.units.Duration;

/** The few questions of a new session: where, when, what the meter read, what to start with. */
final class NewSession extends VBox {
  private final Desk desk;
  private final Bike bike;
  private final Runnable close;
  private final ComboBox<String> track = new ComboBox<>();
  private final TextField day = new TextField();
  private final TextField meter = new TextField();
  private final Label error = Keys.prose("", "error");
  private final Label note;
  private final ToggleButton ask;
  private final Button begin;
  private final StartChoice start;
  private final BooleanProperty choosing = new SimpleBooleanProperty();

  NewSession(Desk desk, Bike bike, Runnable close) {
    super(10);
    this.desk = desk;
    this.bike = bike;
    this.close = close;
    setId("new-session");
    addEventHandler(
        KeyEvent.KEY_PRESSED,
        event -> {
          if (event.getCode() == KeyCode.ESCAPE) {
            close.run();
            event.consume();
          }
        });
    getStyleClass().add("wash");
    track();
    day.setId("new-day");
    day.setText(desk.today().toString());
    day.setPrefColumnCount(9);
    meter.setId("new-meter");
    meter.setPrefColumnCount(6);
    error.setId("new-error");
    begin = Keys.mainKey("new-start", desk.text("new.start"), this::start);
    note = Keys.prose(desk.text("new.as.left"), "soft");
    ask = Keys.choice("new-start-with", desk.text("new.start.with"), this::choose);
    start = new StartChoice(desk, bike);
    HBox fields =
        new HBox(
            12,
            field("new.track", track),
            field("new.day", day),
            field("new.meter", meter),
            begin,
            Keys.key("new-cancel", desk.text("new.cancel"), close));
    fields.setAlignment(Pos.BOTTOM_LEFT);
    HBox.setHgrow(note, Priority.ALWAYS);
    note.setMaxWidth(Double.MAX_VALUE);
    HBox below = new HBox(12, ask, note);
    below.setAlignment(Pos.CENTER_LEFT);
    VBox.setVgrow(start, Priority.ALWAYS);
    getChildren().addAll(Keys.label(desk.text("new.title"), "card-title"), fields, below, start);
    start.managedProperty().bind(choosing);
    start.visibleProperty().bind(choosing);
    track.getEditor().textProperty().addListener((text, before, now) -> trackChanged());
    trackChanged();
  }

  /** Whether the start is being chosen, which needs the room of the page. */
  ReadOnlyBooleanProperty choosing() {
    return choosing;
  }

  /** Where the bike was never ridden, the question is put without being asked for. */
  private void trackChanged() {
    String name = track.getEditor().getText().strip();
    boolean never = !name.isEmpty() && sessionsAt(name) == 0;
    note.setText(desk.text(never ? "new.never.here" : "new.as.left"));
    ask.setSelected(choosing.get());
    if (choosing.get()) {
      work();
    }
  }

  private long sessionsAt(String name) {
    Optional<TrackId> id = known(name).map(Track::id);
    return desk.timeline(bike.id()).sessions().stream()
        .filter(each -> id.equals(Optional.of(each.track())))
        .count();
  }

  private void choose() {
    choosing.set(ask.isSelected());
    begin.setText(desk.text(choosing.get() ? "new.start.take.all" : "new.start"));
    if (choosing.get()) {
      work();
    }
  }

  private void work() {
    String name = track.getEditor().getText().strip();
    LocalDate on = typedDay().filter(each -> !isBeforeTheBike(each)).orElse(desk.today());
    if (!name.isEmpty()) {
      start.show(known(name).orElseGet(() -> unknown(new TrackId("new"), name)), on);
    }
  }

  private static Track unknown(TrackId id, String name) {
    return new Track(id, name, Optional.empty(), Optional.empty(), "");
  }

  private boolean isBeforeTheBike(LocalDate typed) {
    return typed.isBefore(bike.sheets().get(0).from());
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
    if (isBeforeTheBike(typedDay.get())) {
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
    List<Change> changes = choosing.get() ? start.taken(on) : List.of();
    new BegunSession(desk, bike)
        .make(trackName, on, hours, changes)
        .ifPresentOrElse(refused -> refuse(desk.settingWords().refusal(refused), track), close);
  }

  private Optional<Track> known(String name) {
    return BegunSession.known(desk.notebook(), name);
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
