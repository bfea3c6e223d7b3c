package rutbook.ui.log;

import java.util.List;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import rutbook.notebook.Bike;
import rutbook.notebook.Entry;
import rutbook.notebook.Notebook;
import rutbook.notebook.Track;
import rutbook.ui.Desk;

/** What the Log is narrowed to: words, a track, a bike, a kind of entry. */
final class LogFilters extends HBox {
  private static final List<Class<? extends Entry>> KINDS =
      List.of(
          Entry.Session.class,
          Entry.Adjusted.class,
          Entry.SagMeasured.class,
          Entry.RebuildJob.class,
          Entry.Baseline.class,
          Entry.Event.class,
          Entry.Serviced.class,
          Entry.Advice.class);

  private final TextField search = new TextField();
  private final Choice<Track> tracks;
  private final Choice<Bike> bikes;
  private final Choice<Class<? extends Entry>> kinds;
  private Runnable changed = () -> {};

  LogFilters(Desk desk) {
    super(8);
    tracks = new Choice<>("log-tracks", desk.text("log.all.tracks"), Track::name, this::tell);
    bikes = new Choice<>("log-bikes", desk.text("log.all.bikes"), Bike::name, this::tell);
    kinds =
        new Choice<>(
            "log-kinds",
            desk.text("log.all.kinds"),
            kind -> desk.text("kind." + kind.getSimpleName()),
            this::tell);
    kinds.offer(KINDS);
    search.setId("log-search");
    search.setPromptText(desk.text("log.search"));
    search.setAccessibleText(desk.text("log.search"));
    search.getStyleClass().add("large-target");
    search.textProperty().addListener((text, before, now) -> tell());
    setHgrow(search, Priority.ALWAYS);
    getChildren().addAll(search, tracks.box(), kinds.box());
  }

  /** What runs on every letter and every choice from now on. */
  void whenChanged(Runnable action) {
    changed = action;
  }

  private void tell() {
    changed.run();
  }

  LogFilter wanted() {
    return LogFilter.ALL
        .on(tracks.chosen().map(Track::id))
        .of(bikes.chosen().map(Bike::id))
        .kind(kinds.chosen())
        .withText(search.getText());
  }

  void show(Notebook notebook) {
    tracks.offer(notebook.shelf().tracks());
    bikes.offer(notebook.bikes());
    offerBikes(notebook.bikes().size() > 1);
  }

  /** Where there is one bike there is nothing to choose. */
  private void offerBikes(boolean several) {
    if (several && !getChildren().contains(bikes.box())) {
      getChildren().add(2, bikes.box());
    } else if (!several) {
      getChildren().remove(bikes.box());
    }
  }

  void clear() {
    search.clear();
    tracks.clear();
    bikes.clear();
    kinds.clear();
  }

  void search() {
    search.requestFocus();
  }
}
