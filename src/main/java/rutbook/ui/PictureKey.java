package rutbook.ui;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import rutbook.drawing.Drawing;
import rutbook.notebook.Bike;
import rutbook.ui.OutsideFiles.Pictured;
import rutbook.ui.controls.ChartView;
import rutbook.ui.controls.Keys;
import rutbook.ui.fx.DrawingView;
import rutbook.ui.fx.Snapshot;

/**
 * A key that saves a picture of something on a page as a file, and what came of it. A file that is
 * there is replaced only when the rider says so here.
 */
public final class PictureKey {
  private static final double WIDTH = 78;
  private static final double CHART_HEIGHT = 420;

  /** How wide a chart is on a sheet, in the size of text. */
  public static final double CHART_WIDTH = 74;

  /**
   * What the picture is of.
   *
   * @param name offered for the file, without its ending
   * @param content in no window; it is as wide as a sheet
   */
  public record Picture(String name, Region content) {}

  private final Desk desk;
  private final Supplier<Optional<Picture>> what;
  private final Button key;
  private final Button replace;
  private final Label said = Keys.prose("", "soft");
  private final FlowPane told;
  private Runnable replacing = () -> {};

  /**
   * @param id of the key; what is told has it too
   * @param what empty while there is nothing to take a picture of
   */
  public PictureKey(Desk desk, String id, Supplier<Optional<Picture>> what) {
    this.desk = desk;
    this.what = what;
    this.key = Keys.smallKey(id, desk.text("picture.save"), this::save);
    this.replace =
        Keys.smallKey(id + "-replace", desk.text("picture.replace"), () -> replacing.run());
    said.setId(id + "-told");
    told = new FlowPane(10, 4, said, replace);
    told.setAlignment(Pos.CENTER_LEFT);
    told.managedProperty().bind(told.visibleProperty());
    replace.managedProperty().bind(replace.visibleProperty());
    tell("", false);
  }

  public Button key() {
    return key;
  }

  /** What came of the last touch; takes no room before the first. */
  public Node told() {
    return told;
  }

  /** A sheet for a picture: a title, what it is of, and the parts below each other. */
  public static VBox sheet(String title, Node... parts) {
    VBox sheet = new VBox(14, Keys.label(title, "page-title"));
    sheet.getStyleClass().add("picture-sheet");
    sheet.getChildren().addAll(parts);
    return sheet;
  }

  /** "Corvane 250, 17 Oct 2026", as the title of a chart is without a better one. */
  public static String title(Desk desk) {
    return desk.text(
        "picture.title",
        desk.bike().map(Bike::name).orElse(""),
        desk.phrases().days().day(desk.today()));
  }

  /** A drawing for a sheet. */
  public static Node drawn(Drawing drawing) {
    DrawingView view = new DrawingView();
    view.show(drawing);
    view.setMinSize(drawing.width(), drawing.height());
    return view;
  }

  /** Puts a key below a chart that saves it under a title. */
  public static void below(ChartView chart, Desk desk, Supplier<String> title) {
    PictureKey key =
        new PictureKey(
            desk,
            chart.getId() + "-save",
            () ->
                chart
                    .drawn(desk.em() * CHART_WIDTH, CHART_HEIGHT)
                    .map(drawn -> new Picture(title.get(), sheet(title.get(), drawn(drawn)))));
    chart.with(key.key(), key.told());
  }

  /** Asks for a name and saves. */
  public void save() {
    tell("", false);
    what.get()
        .ifPresent(
            picture ->
                desk.picker()
                    .toSave(FilePicker.Kind.PICTURE, name(picture.name()))
                    .ifPresent(path -> write(path, taken(picture), false)));
  }

  /** No letter that a system does not allow in the name of a file. */
  private static String name(String wished) {
    return wished.replaceAll("[^\\p{L}\\p{N} ,_()-]", "-");
  }

  private Snapshot taken(Picture picture) {
    return Snapshot.of(picture.content(), key.getScene(), desk.em() * WIDTH);
  }

  private void write(Path path, Snapshot picture, boolean mayReplace) {
    desk.outside().picture(path, picture, mayReplace, done -> answered(picture, done));
  }

  private void answered(Snapshot picture, Pictured answer) {
    if (answer instanceof Pictured.Done done) {
      tell(desk.text("picture.saved", done.path().toString()), false);
      key.requestFocus();
    } else if (answer instanceof Pictured.There there) {
      replacing = () -> write(there.path(), picture, true);
      tell(desk.text("picture.there", there.path().getFileName().toString()), true);
      replace.requestFocus();
    } else if (answer instanceof Pictured.Refused refused) {
      tell(refused.sentence(), false);
    }
  }

  private void tell(String sentence, boolean mayReplace) {
    said.setText(sentence);
    replace.setVisible(mayReplace);
    told.setVisible(!sentence.isEmpty());
  }
}
