package rutbook.report;

import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;

/**
 * Answers every question for a font with a bundled one, so that the PDF library neither searches
 * the system's fonts, which takes seconds, nor leaves a list of them in the user's home.
 */
final class OnlyBundled implements FontMapper {
  private final TrueTypeFont font;

  private OnlyBundled(TrueTypeFont font) {
    this.font = font;
  }

  static void use(TrueTypeFont font) {
    FontMappers.set(new OnlyBundled(font));
  }

  @Override
  public FontMapping<TrueTypeFont> getTrueTypeFont(String name, PDFontDescriptor descriptor) {
    return new FontMapping<>(font, false);
  }

  @Override
  public FontMapping<FontBoxFont> getFontBoxFont(String name, PDFontDescriptor descriptor) {
    return new FontMapping<>(font, false);
  }

  @Override
  public CIDFontMapping getCIDFont(
      String name, PDFontDescriptor descriptor, PDCIDSystemInfo letters) {
    return new CIDFontMapping(null, font, false);
  }
}
