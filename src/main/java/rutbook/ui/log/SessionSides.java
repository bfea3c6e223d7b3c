package rutbook.ui.log;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.Node;
import rutbook.edit.MotoEdit;
import rutbook.edit.SessionEdit;
import rutbook.notebook.Change;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Lap;
import rutbook.notebook.Placed;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Setup;
import rutbook.ui.Desk;
import rutbook.ui.Place;
import rutbook.ui.fx.Once;

/** The sides of a session below its chain; one is shown at a time, and each is made when it is. */
final class SessionSides {
  /** The sides of a moto, and those of the whole day. */
  enum Side {
    FEEL,
    CHANGES,
    LAPS,
    NOTES,
    GRID,
    START,
    CHECK;

    String key() {
      return "tab." + name().toLowerCase(Locale.ROOT);
    }

    /** Whether there is something to show without a moto. */
    boolean isOfTheDay() {
      return this == NOTES || this == START || this == CHECK;
    }
  }

  private final Desk desk;
  private final EntryId id;
  private final FeelEntry feel;
  private final Once<SettingsTab> changes;
  private final Once<SettingsTab> start;
  private final Once<LapsTab> laps;
  private final Once<NotesTab> notes;
  private final Once<FeelGrid> grid;
  private final Once<CheckTab> check;
  private Optional<SessionModel.Ride> ride = Optional.empty();

  SessionSides(Desk desk, EntryId id) {
    this.desk = desk;
    this.id = id;
    feel = new FeelEntry(desk, id);
    changes =
        new Once<>(() -> new SettingsTab(desk, desk.text("changes.hint"), this::changeSetting));
    start = new Once<>(() -> new SettingsTab(desk, desk.text("start.hint"), this::startWith));
    laps =
        new Once<>(
            () ->
                new LapsTab(
                    desk,
                    this::takeLaps,
                    (moto, table) -> desk.go(new Place.ImportLaps(id, moto, table))));
    notes = new Once<>(() -> new NotesTab(desk));
    grid = new Once<>(() -> new FeelGrid(desk));
    check = new Once<>(() -> new CheckTab(desk));
  }

  /** The side, showing the session and the moto as they are now. */
  Node show(Side side, SessionModel model, Optional<SessionModel.Ride> newRide) {
    ride = newRide;
    return switch (side) {
      case FEEL -> {
        FeelModel.of(
                desk.timeline(model.bike().id()),
                model.session(),
                newRide.orElseThrow().moto().id())
            .ifPresent(feel::show);
        yield feel;
      }
      case CHANGES -> {
        SessionModel.Ride it = newRide.orElseThrow();
        changes.get().show(model.sheet(), it.before(), it.setup(), baseline(model));
        yield changes.get();
      }
      case LAPS -> {
        laps.get().show(newRide.orElseThrow());
        yield laps.get();
      }
      case NOTES -> {
        notes.get().show(model, newRide);
        yield notes.get();
      }
      case GRID -> {
        grid.get().show(model);
        yield grid.get();
      }
      case START -> {
        showStart(model);
        yield start.get();
      }
      case CHECK -> {
        check.get().show(model);
        yield check.get();
      }
    };
  }

  private void showStart(SessionModel model) {
    Setup now = model.session().start();
    Setup left = model.first() ? now : desk.timeline(model.bike().id()).before(id);
    start.get().show(model.sheet(), left, now, baseline(model));
  }

  private Optional<Setup> baseline(SessionModel model) {
    return desk.timeline(model.bike().id())
        .baselineOn(model.session().day())
        .map(Entry.Baseline::setup);
  }

  void focus(SettingId setting) {
    changes.get().focus(setting);
  }

  void focusFeel() {
    feel.focus();
  }

  void room(double height) {
    feel.room(height);
  }

  /** Back to where it was before the moto means that it was not changed. */
  private void changeSetting(Setting setting, Reading to) {
    SessionModel.Ride it = ride.orElseThrow();
    Reading before = SessionModel.reading(it.before(), setting);
    if (to.sameAs(before)) {
      desk.make(new MotoEdit.LeaveSetting(id, it.moto().id(), setting.id()));
    } else {
      desk.make(new MotoEdit.ChangeSetting(id, it.moto().id(), Change.of(setting.id(), to)));
    }
  }

  private void startWith(Setting setting, Reading to) {
    desk.make(new SessionEdit.StartWith(id, Placed.set(setting.id(), to)));
  }

  private void takeLaps(List<Lap> next) {
    ride.ifPresent(it -> desk.make(new MotoEdit.Laps(id, it.moto().id(), next)));
  }
}
