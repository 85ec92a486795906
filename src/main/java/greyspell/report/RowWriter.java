package greyspell.report;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/** Writes rows of numbers as text, straight into bytes: the ledger has a million of them. */
final class RowWriter implements AutoCloseable {
  private final OutputStream out;
  private final byte[] buffer = new byte[1 << 16];
  private int used;

  RowWriter(OutputStream out) {
    this.out = out;
  }

  RowWriter bytes(byte[] text) throws IOException {
    if (used + text.length > buffer.length) {
      flush();
    }
    if (text.length > buffer.length) {
      out.write(text);
      return this;
    }
    System.arraycopy(text, 0, buffer, used, text.length);
    used += text.length;
    return this;
  }

  RowWriter text(String words) throws IOException {
    return bytes(words.getBytes(StandardCharsets.UTF_8));
  }

  RowWriter sign(char ascii) throws IOException {
    room(1);
    buffer[used++] = (byte) ascii;
    return this;
  }

  RowWriter twoDigits(int n) throws IOException {
    room(2);
    buffer[used++] = (byte) ('0' + n / 10);
    buffer[used++] = (byte) ('0' + n % 10);
    return this;
  }

  /** A number given in tenths; whole numbers are written without the ".0". */
  RowWriter tenths(long tenths) throws IOException {
    room(24);
    if (tenths < 0) {
      buffer[used++] = '-';
      tenths = -tenths;
    }
    long whole = tenths / 10;
    int part = (int) (tenths - whole * 10);
    int digits = 1;
    for (long left = whole; left >= 10; left /= 10) {
      digits++;
    }
    for (int k = used + digits - 1; k >= used; k--) {
      buffer[k] = (byte) ('0' + whole % 10);
      whole /= 10;
    }
    used += digits;
    if (part != 0) {
      buffer[used++] = '.';
      buffer[used++] = (byte) ('0' + part);
    }
    return this;
  }

  private void room(int bytes) throws IOException {
    if (used + bytes > buffer.length) {
      flush();
    }
  }

  private void flush() throws IOException {
    out.write(buffer, 0, used);
    used = 0;
  }

  @Override
  public void close() throws IOException {
    flush();
    out.close();
  }
}
