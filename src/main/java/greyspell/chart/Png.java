package greyspell.chart;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/**
 * Writes a bitmap as PNG (ISO/IEC 15948). Its own few lines because the JDK's writer takes longer
 * to start than all pictures take to draw. Every row is stored as its difference from the row
 * above, which suits flat pictures.
 */
final class Png {
  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
  private static final byte[] EIGHT_BIT_RGB = {8, 2, 0, 0, 0};
  private static final int FILTER_UP = 2;
  private static final int LEVEL = 3;

  private Png() {}

  /** {@code rgb} holds 0xRRGGBB row by row. */
  static byte[] encode(int width, int height, int[] rgb) {
    int rowBytes = 1 + 3 * width;
    var raw = new byte[rowBytes * height];
    int to = 0;
    for (int row = 0, at = 0; row < height; row++) {
      raw[to++] = FILTER_UP;
      for (int column = 0; column < width; column++, at++) {
        int here = rgb[at];
        int above = row == 0 ? 0 : rgb[at - width];
        raw[to++] = (byte) ((here >> 16) - (above >> 16));
        raw[to++] = (byte) ((here >> 8) - (above >> 8));
        raw[to++] = (byte) (here - above);
      }
    }
    var out = new ByteArrayOutputStream(100_000);
    out.writeBytes(SIGNATURE);
    var header = new ByteArrayOutputStream();
    writeInt(header, width);
    writeInt(header, height);
    header.writeBytes(EIGHT_BIT_RGB);
    chunk(out, "IHDR", header.toByteArray());
    chunk(out, "IDAT", deflate(raw));
    chunk(out, "IEND", new byte[0]);
    return out.toByteArray();
  }

  private static byte[] deflate(byte[] raw) {
    var deflater = new Deflater(LEVEL);
    var out = new ByteArrayOutputStream(100_000);
    try {
      deflater.setInput(raw);
      deflater.finish();
      var buffer = new byte[65_536];
      while (!deflater.finished()) {
        out.write(buffer, 0, deflater.deflate(buffer));
      }
    } finally {
      deflater.end();
    }
    return out.toByteArray();
  }

  private static void chunk(ByteArrayOutputStream out, String type, byte[] data) {
    byte[] name = type.getBytes(StandardCharsets.US_ASCII);
    writeInt(out, data.length);
    out.writeBytes(name);
    out.writeBytes(data);
    var check = new CRC32();
    check.update(name);
    check.update(data);
    writeInt(out, (int) check.getValue());
  }

  private static void writeInt(ByteArrayOutputStream out, int value) {
    out.write(value >>> 24);
    out.write(value >>> 16);
    out.write(value >>> 8);
    out.write(value);
  }
}
