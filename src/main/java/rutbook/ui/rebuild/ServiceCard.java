package rutbook.ui.rebuild;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import rutbook.edit.EntryEdit;
import rutbook.notebook.Bike;
import rutbook.notebook.Due;
import rutbook.notebook.Entry;
import rutbook.notebook.Timeline;
import rutbook.rebuild.ServiceBoard;
import rutbook.rebuild.ServiceLine;
import rutbook.ui.Desk;
import rutbook.ui.controls.Keys;
import rutbook.words.BenchWords;

/** What falls due when: each service item with its hours and, at the rider's own pace, its day. */
final class ServiceCard extends VBox {
  private final Desk desk;

  /**
   * @param meter asks for a changed meter
   */
  ServiceCard(Desk desk, Bike bike, Runnable meter) {
    super(8);
    this.desk = desk;
    setId("service-card");
    getStyleClass().add("card");
    BenchWords words = new BenchWords(desk.phrases());
    ServiceBoard board = ServiceBoard.of(Timeline.of(desk.notebook(), bike.id()), desk.today());
    getChildren().add(Keys.label(desk.text("service.title"), "card-title"));
    if (board.lines().isEmpty()) {
      getChildren().add(Keys.prose(desk.text("service.none"), "soft"));
    }
    board.lines().forEach(line -> getChildren().add(line(words, bike, line)));
    if (!board.lines().isEmpty()) {
      getChildren()
          .add(
              Keys.prose(
                  board.hoursPerWeek().isPresent()
                      ? words.say("service.pace", round(board.hoursPerWeek().getAsDouble()))
                      : words.say("service.no-pace"),
                  "soft"));
    }
    getChildren().add(Keys.key("service-meter", desk.text("meter.key"), meter));
  }

  private static double round(double hours) {
    return Math.round(hours * 10) / 10.0;
  }

  private Node line(BenchWords words, Bike bike, ServiceLine line) {
    Label due = Keys.label(words.due(line), style(line.due()));
    Label hours = Keys.label(words.hours(line), "number");
    VBox text = new VBox(2, Keys.prose(desk.phrases().safe(line.item().name()), "strong"));
    hours.setMinWidth(USE_PREF_SIZE);
    due.setMinWidth(USE_PREF_SIZE);
    text.getChildren().add(new HBox(10, hours, due));
    words.forecast(line).ifPresent(day -> text.getChildren().add(Keys.prose(day, "soft")));
    words
        .fade(line)
        .ifPresent(
            said -> {
              Label fade = Keys.prose(said, "condensed", "soft");
              fade.setId("fade-" + line.item().id());
              text.getChildren().add(fade);
            });
    if (!line.everDone()) {
      text.getChildren().add(Keys.prose(words.say("service.never"), "soft", "condensed"));
    }
    text.setMinWidth(0);
    HBox.setHgrow(text, Priority.ALWAYS);
    Region key =
        Keys.key(
            "service-done-" + line.item().id(), desk.text("service.done"), () -> done(bike, line));
    HBox row = new HBox(10, text, key);
    row.setAlignment(Pos.CENTER_LEFT);
    return row;
  }

  private static String style(Due due) {
    return switch (due) {
      case NOT_YET -> "soft";
      case NEARLY, DUE -> "due";
      case OVERDUE -> "overdue";
    };
  }

  /** Done today, without a rebuild in this notebook. */
  private void done(Bike bike, ServiceLine line) {
    desk.make(
        new EntryEdit.Add(new Entry.Serviced(desk.headToday(bike), List.of(line.item().id()), "")));
  }
}
