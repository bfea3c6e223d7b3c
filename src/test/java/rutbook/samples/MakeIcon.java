package rutbook.samples;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import javax.imageio.ImageIO;

/**
 * Draws the program's icon, a page with a ruler: a reading and where it is to go, in the colours of
 * the window. As SVG, PNG, and in the containers of Windows and macOS.
 */
public final class MakeIcon {
  private static final double GRID = 512;
  private static final int SMALL = 24;
  private static final List<Integer> WINDOWS = List.of(16, 24, 32, 48, 64, 128, 256);

  /** The types that macOS gives to PNG pictures of these sizes. */
  private static final Map<String, Integer> MAC =
      new TreeMap<>(
          Map.of("icp4", 16, "icp5", 32, "icp6", 64, "ic07", 128, "ic08", 256, "ic09", 512));

  private static final Color INK = new Color(0x14212B);
  private static final Color PAGE = new Color(0xFFFFFF);
  private static final Color BLUE = new Color(0x0A5AA8);
  private static final Color OCHRE = new Color(0xA84600);
  private static final Color HAIR = new Color(0xC9D2D8);

  /** A filled shape, with what draws the same in SVG. */
  private record Part(Shape shape, Color colour, String svg) {}

  private MakeIcon() {}

  public static void main(String[] arguments) throws IOException {
    Path folder = Files.createDirectories(Path.of("src", "main", "packaging", "icons"));
    Files.writeString(folder.resolve("rutbook.svg"), svg());
    Files.write(folder.resolve("rutbook.png"), png(512));
    Files.write(folder.resolve("rutbook.ico"), ico());
    Files.write(folder.resolve("rutbook.icns"), icns());
  }

  private static List<Part> parts(int pixels) {
    boolean small = pixels <= SMALL;
    List<Part> parts = new ArrayList<>();
    parts.add(box(16, 16, 480, 480, 104, INK));
    parts.add(box(88, 72, 352, 368, 36, PAGE));
    if (!small) {
      for (int i = 0; i < 5; i++) {
        double x = 148 + i * 58;
        parts.add(line(x, i % 2 == 0 ? 148 : 184, x, 248, 14, i % 2 == 0 ? INK : HAIR));
      }
    }
    parts.add(line(132, 256, 396, 256, small ? 34 : 18, INK));
    parts.add(dot(206, 256, small ? 66 : 44, BLUE));
    parts.add(line(206, 366, 330, 366, small ? 56 : 34, OCHRE));
    parts.add(triangle(320, 366, small ? 96 : 62, OCHRE));
    return parts;
  }

  private static Part box(double x, double y, double width, double height, double round, Color in) {
    return new Part(
        new RoundRectangle2D.Double(x, y, width, height, 2 * round, 2 * round),
        in,
        number("<rect x='%s' y='%s' width='%s' height='%s' rx='%s'", x, y, width, height, round));
  }

  private static Part line(double x1, double y1, double x2, double y2, double width, Color in) {
    Shape stroked =
        new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER)
            .createStrokedShape(new Line2D.Double(x1, y1, x2, y2));
    java.awt.geom.Rectangle2D box = stroked.getBounds2D();
    return new Part(
        stroked,
        in,
        number(
            "<rect x='%s' y='%s' width='%s' height='%s'",
            box.getX(), box.getY(), box.getWidth(), box.getHeight()));
  }

  private static Part dot(double x, double y, double radius, Color in) {
    return new Part(
        new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius),
        in,
        number("<circle cx='%s' cy='%s' r='%s'", x, y, radius));
  }

  /** Pointing to the right, its base upright at x. */
  private static Part triangle(double x, double y, double size, Color in) {
    Path2D shape = new Path2D.Double();
    shape.moveTo(x, y - size);
    shape.lineTo(x + size, y);
    shape.lineTo(x, y + size);
    shape.closePath();
    return new Part(
        shape, in, number("<path d='M%s %sL%s %sL%s %sZ'", x, y - size, x + size, y, x, y + size));
  }

  private static String number(String pattern, Object... numbers) {
    return String.format(Locale.ROOT, pattern, numbers).replace(".0'", "'").replace(".0 ", " ");
  }

  private static String svg() {
    StringBuilder svg =
        new StringBuilder("<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 512 512'>\n");
    for (Part part : parts((int) GRID)) {
      String colour = String.format("#%06X", part.colour().getRGB() & 0xFFFFFF);
      svg.append("  ").append(part.svg()).append(" fill='").append(colour).append("'/>\n");
    }
    return svg.append("</svg>\n").toString();
  }

  private static byte[] png(int pixels) throws IOException {
    BufferedImage picture = new BufferedImage(pixels, pixels, BufferedImage.TYPE_INT_ARGB);
    Graphics2D pen = picture.createGraphics();
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    pen.scale(pixels / GRID, pixels / GRID);
    for (Part part : parts(pixels)) {
      pen.setColor(part.colour());
      pen.fill(part.shape());
    }
    pen.dispose();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageIO.write(picture, "png", bytes);
    return bytes.toByteArray();
  }

  /** A directory of 16 bytes a picture, then the pictures as PNG. */
  private static byte[] ico() throws IOException {
    List<byte[]> pictures = new ArrayList<>();
    for (int pixels : WINDOWS) {
      pictures.add(png(pixels));
    }
    int at = 6 + 16 * pictures.size();
    ByteBuffer head = ByteBuffer.allocate(at).order(ByteOrder.LITTLE_ENDIAN);
    head.putShort((short) 0).putShort((short) 1).putShort((short) pictures.size());
    for (int i = 0; i < pictures.size(); i++) {
      byte size = (byte) (WINDOWS.get(i) % 256); // 0 stands for 256
      head.put(size).put(size).put((byte) 0).put((byte) 0).putShort((short) 1).putShort((short) 32);
      head.putInt(pictures.get(i).length).putInt(at);
      at += pictures.get(i).length;
    }
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    all.write(head.array());
    for (byte[] picture : pictures) {
      all.write(picture);
    }
    return all.toByteArray();
  }

  /** Pieces of a type, a length and a PNG each. */
  private static byte[] icns() throws IOException {
    ByteArrayOutputStream pieces = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(pieces);
    for (Map.Entry<String, Integer> each : MAC.entrySet()) {
      byte[] picture = png(each.getValue());
      out.write(each.getKey().getBytes(StandardCharsets.US_ASCII));
      out.writeInt(8 + picture.length);
      out.write(picture);
    }
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    DataOutputStream whole = new DataOutputStream(all);
    whole.write("icns".getBytes(StandardCharsets.US_ASCII));
    whole.writeInt(8 + pieces.size());
    whole.write(pieces.toByteArray());
    return all.toByteArray();
  }
}
