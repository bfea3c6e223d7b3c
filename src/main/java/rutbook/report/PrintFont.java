package rutbook.report;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** A bundled font as outlines and widths, without asking the system for any font of its own. */
final class PrintFont {
  private final byte[] bytes;
  private final TrueTypeFont font;
  private final CmapLookup letters;
  private final double unitsPerEm;

  private PrintFont(byte[] bytes) throws IOException {
    this.bytes = bytes;
    this.font = new TTFParser().parse(new RandomAccessReadBuffer(bytes));
    this.letters = font.getUnicodeCmapLookup();
    this.unitsPerEm = font.getUnitsPerEm();
  }

  static PrintFont named(String name) {
    try {
      return new PrintFont(Resources.font(name));
    } catch (IOException damaged) {
      throw new UncheckedIOException(damaged);
    }
  }

  byte[] bytes() {
    return bytes;
  }

  /** From now on this is the only font that the PDF library knows beside those it is given. */
  void onlyThis() {
    OnlyBundled.use(font);
  }

  boolean has(int point) {
    return letters.getGlyphId(point) != 0;
  }

  /** Width of a text at a size, in the unit of the size. */
  double width(String text, double size) {
    return text.codePoints().mapToDouble(this::advance).sum() * size / unitsPerEm;
  }

  /** The text's outlines on a base line that begins at a point, y downwards. */
  Path2D outlines(String text, double x, double y, double size) {
    Path2D outlines = new Path2D.Double();
    double at = x;
    double scale = size / unitsPerEm;
    for (int point : text.codePoints().toArray()) {
      AffineTransform place = new AffineTransform(scale, 0, 0, -scale, at, y);
      glyph(point, outlines, place);
      at += advance(point) * scale;
    }
    return outlines;
  }

  private void glyph(int point, Path2D outlines, AffineTransform place) {
    try {
      GlyphData glyph = font.getGlyph().getGlyph(letters.getGlyphId(point));
      if (glyph != null) {
        outlines.append(glyph.getPath().getPathIterator(place), false);
      }
    } catch (IOException damaged) {
      throw new UncheckedIOException(damaged);
    }
  }

  private double advance(int point) {
    try {
      return font.getAdvanceWidth(letters.getGlyphId(point));
    } catch (IOException damaged) {
      throw new UncheckedIOException(damaged);
    }
  }
}
