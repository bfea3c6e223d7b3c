package rutbook.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.text.Text;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import rutbook.notebook.Entry;
import rutbook.notebook.Notebook;
import rutbook.notebook.Timeline;
import rutbook.samples.Samples;

/** A picture of every page, and that nothing to be touched has its word cut off. */
class PicturesTest extends WindowTest {
  private static final File FOLDER = new File("target/pictures");

  @Override
  protected Optional<Notebook> notebook() {
    return Optional.empty();
  }

  static Stream<Pictures.View> everyPage() {
    return Pictures.ofEveryPage().stream();
  }

  /** That every view opens is {@link CutTextTest}'s in every run. */
  @Tag("long")
  @ParameterizedTest
  @MethodSource("everyPage")
  void everyPageHasItsPicture(Pictures.View view) throws IOException {
    FOLDER.mkdirs();
    File file = new File(FOLDER, view.name() + ".png");
    Pictures.take(view, new Pictures.Take(1280, 800, Theme.LIGHT, TextSize.NORMAL), file);
    BufferedImage picture = ImageIO.read(file);
    assertThat(List.of(picture.getWidth(), picture.getHeight())).containsExactly(1280, 800);
    assertThat(shareOfTheCommonest(picture)).as("something is on the page").isLessThan(0.97);
  }

  /** How much of the picture is of its commonest colour. */
  private static double shareOfTheCommonest(BufferedImage picture) {
    Map<Integer, Integer> colours = new HashMap<>();
    for (int x = 0; x < picture.getWidth(); x += 2) {
      for (int y = 0; y < picture.getHeight(); y += 2) {
        colours.merge(picture.getRGB(x, y), 1, Integer::sum);
      }
    }
    int most = colours.values().stream().max(Integer::compare).orElse(0);
    return most / (picture.getWidth() * picture.getHeight() / 4.0);
  }

  @ParameterizedTest
  @CsvSource({"LIGHT,100,1024,640", "SUN,100,1024,640", "LIGHT,115,1024,640", "SUN,135,1280,800"})
  void noKeyHasItsWordCut(Theme theme, int percent, double width, double height) {
    Notebook season = Samples.season();
    Entry.Session latest =
        Timeline.of(season, season.bikes().get(0).id()).latest(Entry.Session.class).orElseThrow();
    WindowMemory.Look look =
        new WindowMemory.Look(
            theme,
            Optional.empty(),
            percent,
            Optional.of(new WindowMemory.Bounds(0, 0, width, height, false)));
    interact(
        () -> {
          editor = new rutbook.edit.Editor(season);
          window = Window.start(stage, StandIns.services(editor, TODAY, look));
        });
    settle();
    assertKeysAreWhole("log");
    go(new Place.Session(latest.id()));
    for (String tab : List.of("feel", "changes", "laps", "notes", "grid")) {
      touch("tab-" + tab);
      assertKeysAreWhole(tab);
    }
    touch("tab-feel");
    touch("section-BRAKING_BUMPS");
    touch("symptom-HARSH");
    touch("severity-3");
    assertKeysAreWhole("symptoms");
    touch("session-check");
    assertKeysAreWhole("check");
  }

  private void assertKeysAreWhole(String where) {
    settle();
    for (Node node : scene().getRoot().lookupAll(".key")) {
      if (node instanceof Labeled key && !key.getText().isEmpty() && isShown(key)) {
        Node shown = key.lookup(".text");
        assertThat(shown instanceof Text text ? text.getText().replace("\n", " ") : key.getText())
            .as("#" + key.getId() + " on " + where)
            .isEqualTo(key.getText());
      }
    }
  }

  private static boolean isShown(Node node) {
    for (Node above = node; above != null; above = above.getParent()) {
      if (!above.isVisible()) {
        return false;
      }
    }
    return true;
  }

  @Test
  void everyPageOfTheRailIsAmongThem() {
    assertThat(everyPage().map(Pictures.View::name))
        .containsAll(Pages.RAIL.stream().map(page -> "page-" + page.name()).toList());
  }
}
