package rutbook.app;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import javafx.animation.AnimationTimer;
import rutbook.notebook.Entry;
import rutbook.notebook.Notebook;
import rutbook.ui.Place;
import rutbook.ui.Window;

/**
 * Opens every page of the window once and closes it: what the class archive is made from, and what
 * tells whether an installed program starts.
 */
final class Rehearsal extends AnimationTimer {
  /** Enough for a page to be laid out and drawn. */
  private static final int FRAMES_PER_PAGE = 3;

  private final Window window;
  private final Queue<Place> places;
  private int frames;

  private Rehearsal(Window window, List<Place> places) {
    this.window = window;
    this.places = new ArrayDeque<>(places);
  }

  /** Begins on the window's thread, once the window is open. */
  static void begin(Window window) {
    new Rehearsal(window, places(window.notebook())).start();
  }

  static List<Place> places(Notebook notebook) {
    List<Place> places = new ArrayList<>();
    for (Entry entry : notebook.entries()) {
      if (entry instanceof Entry.Session session) {
        places.add(new Place.Session(session.id()));
        session.start().placed().stream()
            .limit(1)
            .forEach(each -> places.add(new Place.OfSetting(each.setting())));
        break;
      }
    }
    places.add(new Place.Next());
    places.add(new Place.Compare());
    places.add(new Place.Rebuild());
    for (Place.BikePart part : Place.BikePart.values()) {
      places.add(new Place.Bike(part));
    }
    places.add(new Place.Log());
    return places;
  }

  @Override
  public void handle(long now) {
    frames++;
    if (frames % FRAMES_PER_PAGE != 0) {
      return;
    }
    if (places.isEmpty()) {
      stop();
      window.close();
    } else {
      window.go(places.remove());
    }
  }
}
