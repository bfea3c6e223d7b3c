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

/** The sides of a session below its chain; one is shown at a time, and each is made once. */
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
  private final SettingsTab changes;
  private final SettingsTab start;
  private final LapsTab laps;
  private final NotesTab notes;
  private final FeelGrid grid;
  private final CheckTab check;
  private Optional<SessionModel.Ride> ride = Optional.empty();

  SessionSides(Desk desk, EntryId id) {
    this.desk = desk;
    this.id = id;
    feel = new FeelEntry(desk, id);
    changes = new SettingsTab(desk, desk.text("changes.hint"), this::changeSetting);
    start = new SettingsTab(desk, desk.text("start.hint"), this::startWith);
    laps =
        new LapsTab(
            desk, this::takeLaps, (moto, table) -> desk.go(new Place.ImportLaps(id, moto, table)));
    notes = new NotesTab(desk);
    grid = new FeelGrid(desk);
    check = new CheckTab(desk);
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
        changes.show(model.sheet(), it.before(), it.setup(), baseline(model));
        yield changes;
      }
      case LAPS -> {
        laps.show(newRide.orElseThrow());
        yield laps;
      }
      case NOTES -> {
        notes.show(model, newRide);
        yield notes;
      }
      case GRID -> {
        grid.show(model);
        yield grid;
      }
      case START -> {
        showStart(model);
        yield start;
      }
      case CHECK -> {
        check.show(model);
        yield check;
      }
    };
  }

  private void showStart(SessionModel model) {
    Setup now = model.session().start();
    Setup left = model.first() ? now : desk.timeline(model.bike().id()).before(id);
    start.show(model.sheet(), left, now, baseline(model));
  }

  private Optional<Setup> baseline(SessionModel model) {
    return desk.timeline(model.bike().id())
        .baselineOn(model.session().day())
        .map(Entry.Baseline::setup);
  }

  void focus(SettingId setting) {
    changes.focus(setting);
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
