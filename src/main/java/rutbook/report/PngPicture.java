package rutbook.report;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.IntBuffer;
import javax.imageio.ImageIO;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** A picture as the bytes of a PNG file, without transparency. */
public final class PngPicture {
  private static final int OPAQUE = 0xFF000000;

  private PngPicture() {}

  /**
   * The file's bytes.
   *
   * @param argb one number a pixel, rows from the top; what they have of transparency is left out
   */
  public static byte[] of(int width, int height, IntBuffer argb) {
    if (width < 1 || height < 1 || argb.capacity() != (long) width * height) {
      throw new IllegalArgumentException(width + " by " + height + ": " + argb.capacity());
    }
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    int[] row = new int[width];
    for (int y = 0; y < height; y++) {
      argb.get(y * width, row);
      for (int x = 0; x < width; x++) {
        row[x] |= OPAQUE;
      }
      image.setRGB(0, y, width, 1, row, 0, width);
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      ImageIO.write(image, "png", out);
    } catch (IOException never) {
      throw new UncheckedIOException(never);
    }
    return bytes.toByteArray();
  }
}
