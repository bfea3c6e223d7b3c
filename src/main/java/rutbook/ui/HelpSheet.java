package rutbook.ui;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import rutbook.ui.controls.Keys;
import rutbook.ui.controls.Scrolling;
import rutbook.words.HelpWords;

/** Help for one page, standing over it: what it is for, how, and what it does not know. */
final class HelpSheet extends VBox {
  private static final double WIDTH_EM = 44;
  private static final double ROOM_AROUND = 170;

  /**
   * @param page the page's name, as its words have it
   */
  HelpSheet(Desk desk, String page) {
    super(12);
    setId("help-sheet");
    HelpWords words = new HelpWords(desk.phrases());
    VBox text =
        new VBox(
            10,
            Keys.prose(words.purpose(page)),
            Keys.label(words.howHeading(), "group-title"),
            steps(words.how(page)),
            Keys.label(words.limitsHeading(), "group-title"),
            Keys.prose(words.limits(page)));
    text.setPrefWidth(WIDTH_EM * desk.em());
    ScrollPane scroll = Scrolling.inWindow(text, ROOM_AROUND);
    scroll.setId("help-text");
    sceneProperty()
        .addListener(
            (scene, before, now) -> {
              maxWidthProperty().unbind();
              if (now != null) {
                maxWidthProperty().bind(now.widthProperty().subtract(100));
              }
            });
    Label title = Keys.label(words.title(page), "page-title");
    title.setId("help-title");
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    HBox head =
        new HBox(
            12,
            title,
            gap,
            Keys.key("help-keys", words.keys(), () -> desk.go(new Place.Shortcuts())));
    head.setAlignment(Pos.CENTER_LEFT);
    getChildren().addAll(head, scroll);
  }

  private static GridPane steps(List<String> how) {
    GridPane grid = new GridPane();
    grid.setHgap(10);
    grid.setVgap(7);
    for (int i = 0; i < how.size(); i++) {
      Label number = Keys.label(Integer.toString(i + 1), "number");
      number.setMinWidth(USE_PREF_SIZE);
      GridPane.setValignment(number, javafx.geometry.VPos.TOP);
      Label step = Keys.prose(how.get(i));
      GridPane.setHgrow(step, Priority.ALWAYS);
      grid.addRow(i, number, step);
    }
    return grid;
  }
}
