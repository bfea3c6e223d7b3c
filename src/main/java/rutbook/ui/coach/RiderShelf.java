package rutbook.ui.coach;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import rutbook.share.Guest;
import rutbook.share.GuestFile;
import rutbook.share.GuestShelf;
import rutbook.ui.Desk;
import rutbook.ui.OutsideFiles;
import rutbook.ui.OutsideFiles.Answer;
import rutbook.ui.Place;
import rutbook.ui.controls.Keys;

/** A coach's riders: who waits, when each was handed over last, found by name. */
final class RiderShelf extends VBox {
  /** More than a screen holds; who looks for one of hundreds types a name. */
  private static final int MOST_SHOWN = 100;

  private final Desk desk;
  private final TextField search = new TextField();
  private final VBox rows = new VBox(6);
  private GuestShelf shelf = new GuestShelf(List.of());
  private List<OutsideFiles.Unread> unread = List.of();

  RiderShelf(Desk desk) {
    super(10);
    this.desk = desk;
    setId("rider-shelf");
    search.setId("rider-search");
    search.setPromptText(desk.text("coach.find.rider"));
    search.setAccessibleText(desk.text("coach.find.rider"));
    search.textProperty().addListener((text, before, now) -> draw());
    getChildren().addAll(search, rows);
  }

  /** Reads the shelf again. */
  void look() {
    desk.outside()
        .shelf(
            answer -> {
              if (answer instanceof Answer.Done<OutsideFiles.Shelf> found) {
                shelf = found.value().riders();
                unread = found.value().unread();
                draw();
              } else if (answer instanceof Answer.Refused<OutsideFiles.Shelf> refused) {
                rows.getChildren().setAll(Keys.prose(refused.sentence(), "error"));
              }
            });
  }

  private void draw() {
    rows.getChildren().clear();
    boolean empty = shelf.guests().isEmpty();
    search.setVisible(!empty);
    search.setManaged(!empty);
    tellUnread();
    if (empty) {
      rows.getChildren().add(Keys.prose(desk.text("coach.noriders"), "wash"));
      return;
    }
    GuestShelf found = search.getText().isBlank() ? shelf : shelf.search(search.getText());
    if (found.guests().isEmpty()) {
      rows.getChildren().add(Keys.prose(desk.text("coach.none.found", search.getText()), "soft"));
    }
    found.guests().stream().limit(MOST_SHOWN).forEach(guest -> rows.getChildren().add(row(guest)));
    int more = found.guests().size() - MOST_SHOWN;
    if (more > 0) {
      rows.getChildren().add(Keys.prose(desk.text("coach.more.riders", more), "soft"));
    }
  }

  /** A file that cannot be read is not silently left out: perhaps it can be sent again. */
  private void tellUnread() {
    for (OutsideFiles.Unread each : unread) {
      Label said =
          Keys.prose(
              desk.text("coach.unread", desk.phrases().safe(each.name()), each.sentence()),
              "error");
      said.setId("rider-unread-" + rows.getChildren().size());
      rows.getChildren().add(said);
    }
  }

  private Node row(Guest guest) {
    int place = rows.getChildren().size();
    Label name = Keys.prose(desk.phrases().safe(guest.rider()), "card-title");
    Label bike = Keys.prose(desk.phrases().safe(guest.bike()), "soft");
    VBox text = new VBox(2, name, bike);
    text.setMinWidth(0);
    text.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(text, Priority.ALWAYS);
    boolean waits = guest.waiting() > 0;
    VBox state =
        new VBox(
            2,
            Keys.label(desk.text(waits ? "coach.waits" : "coach.answered"), waits ? "due" : "soft"),
            Keys.label(desk.text("coach.last", guest.lastHandedOver()), "soft", "condensed"));
    state.setMinWidth(USE_PREF_SIZE);
    GuestFile newest = guest.newest();
    HBox row =
        new HBox(
            12,
            text,
            state,
            Keys.key("rider-open-" + place, desk.text("coach.look"), () -> open(newest)));
    row.setAlignment(Pos.CENTER_LEFT);
    row.getStyleClass().add("card");
    return row;
  }

  private void open(GuestFile file) {
    desk.go(new Place.Guest(new OutsideFiles.Opened(file.file(), true, "")));
  }

  @Override
  public void requestFocus() {
    search.requestFocus();
  }
}
