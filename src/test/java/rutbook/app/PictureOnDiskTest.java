package rutbook.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.IntBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rutbook.ui.OutsideFiles.Pictured;
import rutbook.ui.fx.Snapshot;

/** A picture on a real disk: whole, and never in place of another unless that is said. */
class PictureOnDiskTest {
  private static final int BLUE = 0xFF0A5AA8;
  private static final Snapshot TWO_PIXELS =
      new Snapshot(2, 1, IntBuffer.wrap(new int[] {BLUE, 0x00FFFFFF}));

  @TempDir Path folder;
  private final List<Pictured> answers = new ArrayList<>();

  private void write(Path path, boolean replace) {
    OutsideOnDisk.in(folder).picture(path, TWO_PIXELS, replace, answers::add);
  }

  @Test
  void itIsWrittenPixelForPixelWithoutTransparency() throws IOException {
    Path path = folder.resolve("a.png");
    write(path, false);
    assertThat(answers).containsExactly(new Pictured.Done(path));
    BufferedImage read = ImageIO.read(new ByteArrayInputStream(Files.readAllBytes(path)));
    assertThat(read.getWidth()).isEqualTo(2);
    assertThat(read.getHeight()).isEqualTo(1);
    assertThat(read.getRGB(0, 0)).isEqualTo(BLUE);
    assertThat(read.getRGB(1, 0)).isEqualTo(0xFFFFFFFF);
  }

  @Test
  void whatIsThereStaysUntilItIsSaidThatItMayGo() throws IOException {
    Path path = Files.writeString(folder.resolve("a.png"), "mine");
    write(path, false);
    assertThat(answers).containsExactly(new Pictured.There(path));
    assertThat(path).hasContent("mine");
    write(path, true);
    assertThat(answers.get(1)).isEqualTo(new Pictured.Done(path));
    assertThat(ImageIO.read(path.toFile())).isNotNull();
  }

  @Test
  void aFolderThatIsGoneIsToldInASentence() {
    write(folder.resolve("gone").resolve("a.png"), false);
    assertThat(answers).hasSize(1);
    assertThat(((Pictured.Refused) answers.get(0)).sentence()).contains("gone");
  }
}
