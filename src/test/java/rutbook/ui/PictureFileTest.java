package rutbook.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.image.Image;
import javafx.scene.input.KeyCode;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.Test;
import rutbook.edit.Editor;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookId;
import rutbook.samples.Samples;

/**
 * Pictures of a comparison and of charts as files. What is written is read again by the toolkit's
 * decoder, which is another than wrote it; signature and header by the W3C's PNG (sections 5.2 and
 * 11.2.1, from memory).
 */
class PictureFileTest extends WindowTest {
  private static final Path FILE = Path.of("two-tracks.png");
  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10};
  private static final Color BLUE = Color.web("#0A5AA8");
  private static final Color OCHRE = Color.web("#A84600");

  private final InMemory outside = new InMemory();

  @Override
  protected Optional<Notebook> notebook() {
    return Optional.of(Samples.season());
  }

  @Override
  protected void open(Notebook notebook) {
    editor = new Editor(notebook);
    outside.picked = Optional.of(FILE);
    window = Window.start(stage, StandIns.services(editor, TODAY, look(1024, 640), outside));
  }

  private Image saved() {
    byte[] bytes = outside.files.get(FILE);
    assertThat(Arrays.copyOf(bytes, 8)).isEqualTo(SIGNATURE);
    assertThat(new String(bytes, 12, 4, StandardCharsets.US_ASCII)).isEqualTo("IHDR");
    Image image = new Image(new ByteArrayInputStream(bytes));
    assertThat(image.isError()).isFalse();
    assertThat(ByteBuffer.wrap(bytes).getInt(16)).isEqualTo((int) image.getWidth());
    assertThat(ByteBuffer.wrap(bytes).getInt(20)).isEqualTo((int) image.getHeight());
    return image;
  }

  private static boolean shows(Image image, Color wanted) {
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        if (image.getPixelReader().getColor(x, y).equals(wanted)) {
          return true;
        }
      }
    }
    return false;
  }

  @Test
  void theWholeComparisonIsOnThePictureWhateverTheSizeOfTheWindow() {
    go(new Place.Compare());
    touch("compare-picture");
    Image image = saved();
    assertThat(image.getWidth()).isGreaterThan(2 * 1000);
    assertThat(image.getHeight()).isGreaterThan(2 * 1000);
    assertThat(shows(image, BLUE)).as("the mark of the first side").isTrue();
    assertThat(shows(image, OCHRE)).as("the mark of the second side").isTrue();
    assertThat(text("compare-picture-told")).isEqualTo("Saved: two-tracks.png");
  }

  @Test
  void aFileThatIsThereIsReplacedOnlyWhenTheRiderSaysSo() {
    byte[] before = {1, 2, 3};
    outside.files.put(FILE, before);
    go(new Place.Compare());
    touch("compare-picture");
    assertThat(outside.files.get(FILE)).isEqualTo(before);
    assertThat(text("compare-picture-told"))
        .isEqualTo("“two-tracks.png” is already there and was left as it is.");
    assertThat(scene().getFocusOwner()).isEqualTo(node("compare-picture-replace"));
    touch("compare-picture-replace");
    saved();
    assertThat(node("compare-picture-replace").isVisible()).isFalse();
  }

  @Test
  void theKeyboardAloneSavesHowASettingMovedOverTheSeason() {
    go(new Place.Compare());
    touch("compare-season-key");
    push(KeyCode.SHORTCUT, KeyCode.SHIFT, KeyCode.P);
    settle();
    assertThat(saved().getHeight()).isBetween(400.0, 1200.0);
  }

  @Test
  void nothingIsSavedWhenTheRiderThinksBetterOfIt() {
    outside.picked = Optional.empty();
    go(new Place.Compare());
    touch("compare-picture");
    assertThat(outside.files).isEmpty();
    assertThat(node("compare-picture-told").getParent().isVisible()).isFalse();
  }

  @Test
  void anEmptyNotebookHasNothingToSave() {
    interact(() -> open(Notebook.empty(new NotebookId("empty"))));
    go(new Place.Compare());
    assertThat(((Button) node("compare-picture")).isVisible()).isFalse();
    push(KeyCode.SHORTCUT, KeyCode.SHIFT, KeyCode.P);
    assertThat(outside.files).isEmpty();
  }

  @Test
  void aChartOfTheBikeIsSavedFromItsPage() {
    go(new Place.Bike(Place.BikePart.FORK));
    touch("fork-chart-save");
    assertThat(saved().getHeight()).isGreaterThan(2 * 420);
  }
}
