package rutbook.ui;

import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import javafx.application.Platform;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import rutbook.edit.Editor;
import rutbook.notebook.Entry;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookId;
import rutbook.notebook.Timeline;
import rutbook.samples.Samples;

/** Takes pictures of each page, theme and size, empty and full, into {@code target/pictures}. */
public final class Pictures {
  private static final File FOLDER = new File("target/pictures");
  private static final int[][] SIZES = {{1024, 640}, {1600, 1000}};

  private Pictures() {}

  public static void main(String[] arguments) throws InterruptedException {
    CountDownLatch done = new CountDownLatch(1);
    Platform.startup(
        () -> {
          try {
            takeAll();
          } catch (IOException thrown) {
            throw new java.io.UncheckedIOException(thrown);
          } finally {
            done.countDown();
          }
        });
    done.await();
    Platform.exit();
  }

  private static void takeAll() throws IOException {
    FOLDER.mkdirs();
    Map<String, Notebook> notebooks = new LinkedHashMap<>();
    notebooks.put("empty", Notebook.empty(new NotebookId("empty")));
    notebooks.put("first-day", Samples.firstDay());
    notebooks.put("season", Samples.season());
    notebooks.put("split-fork", Samples.splitFork());
    for (Map.Entry<String, Notebook> each : notebooks.entrySet()) {
      Map<String, Place> places = new LinkedHashMap<>();
      places.put("log", new Place.Log());
      each.getValue().bikes().stream()
          .findFirst()
          .flatMap(bike -> Timeline.of(each.getValue(), bike.id()).latest(Entry.Session.class))
          .ifPresent(session -> places.put("session", new Place.Session(session.id())));
      for (Map.Entry<String, Place> place : places.entrySet()) {
        take(each.getKey() + "-" + place.getKey(), each.getValue(), place.getValue());
      }
    }
  }

  private static void take(String name, Notebook notebook, Place place) throws IOException {
    for (int[] size : SIZES) {
      Stage stage = new Stage();
      Window window =
          Window.start(stage, StandIns.services(new Editor(notebook), LocalDate.of(2026, 10, 17)));
      stage.setWidth(size[0]);
      stage.setHeight(size[1]);
      window.go(place);
      for (Theme theme : Theme.values()) {
        window.use(theme);
        stage.getScene().getRoot().applyCss();
        stage.getScene().getRoot().layout();
        WritableImage image = stage.getScene().snapshot(null);
        write(name + "-" + theme.name().toLowerCase() + "-" + size[0], image);
      }
      stage.hide();
    }
  }

  private static void write(String name, WritableImage image) throws IOException {
    int width = (int) image.getWidth();
    int height = (int) image.getHeight();
    int[] pixels = new int[width * height];
    image
        .getPixelReader()
        .getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), pixels, 0, width);
    BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
    picture.setRGB(0, 0, width, height, pixels, 0, width);
    ImageIO.write(picture, "png", new File(FOLDER, name + ".png"));
  }
}
