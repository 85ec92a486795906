package greyspell.weather;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/**
 * Reads a text file line by line, splits a line at its commas (or another mark) and turns fields
 * into numbers, all in one byte buffer: a weather file is mostly numbers, and making strings of
 * them took most of the time. Never holds more than one buffer, however long the file is.
 *
 * <p>Quotes around a field are taken off. A line that a spreadsheet wrapped in quotes as a whole is
 * unwrapped first.
 */
final class Lines implements Closeable {
  static final int LONGEST_LINE = 1 << 16;
  private static final int MOST_FIELDS = 256;
  private static final int HEAD = 1 << 13;

  /** Up to here a power of ten is exact in a double, so that one division rounds correctly. */
  private static final double[] POWER_OF_TEN = {
    1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16
  };

  private static final long MOST_DIGITS = 100_000_000_000_000L;

  private final InputStream in;
  private final byte[] buffer = new byte[LONGEST_LINE];
  private final int[] from = new int[MOST_FIELDS];
  private final int[] to = new int[MOST_FIELDS];
  private int filled;
  private int after;
  private boolean isAtEnd;
  private int start;
  private int end;
  private int number;
  private int fields;
  private double value;
  private boolean isTooLong;
  private int separator = ',';
  private int decimal = '.';

  Lines(InputStream in) {
    this.in = in;
  }

  /** The first few kilobytes as they stand, one character a byte; nothing is used up. */
  String head() throws IOException {
    while (filled < HEAD && !isAtEnd) {
      more();
    }
    return new String(buffer, 0, Math.min(filled, HEAD), StandardCharsets.ISO_8859_1);
  }

  /** Leaves out the first bytes of the file: a byte order mark. */
  void skip(int bytes) {
    after = bytes;
  }

  /** Another separator than a comma; a blank stands for any number of blanks and tabs. */
  void separateBy(char c) {
    separator = c;
  }

  /** Another mark in numbers than a point. */
  void decimal(char c) {
    decimal = c;
  }

  /** Moves to the next line; false at the end of the file or when a line is too long to be one. */
  boolean next() throws IOException {
    int i = after;
    while (true) {
      while (i < filled) {
        if (buffer[i] == '\n') {
          take(i, i + 1);
          return true;
        }
        i++;
      }
      if (isAtEnd) {
        if (after >= filled) {
          return false;
        }
        take(filled, filled);
        return true;
      }
      i -= after;
      System.arraycopy(buffer, after, buffer, 0, filled - after);
      filled -= after;
      after = 0;
      if (filled == buffer.length) {
        isTooLong = true;
        number++;
        return false;
      }
      more();
    }
  }

  private void take(int lineEnd, int next) {
    start = after;
    end = lineEnd > start && buffer[lineEnd - 1] == '\r' ? lineEnd - 1 : lineEnd;
    after = next;
    number++;
  }

  private void more() throws IOException {
    int got = in.read(buffer, filled, buffer.length - filled);
    if (got < 0) {
      isAtEnd = true;
    } else {
      filled += got;
    }
  }

  boolean isTooLong() {
    return isTooLong;
  }

  /** True once the last line has been taken. */
  boolean isLast() throws IOException {
    while (after >= filled && !isAtEnd) {
      filled = 0;
      after = 0;
      more();
    }
    return after >= filled && isAtEnd;
  }

  /** Counts from 1. */
  int number() {
    return number;
  }

  boolean isBlank() {
    for (int i = start; i < end; i++) {
      if (buffer[i] != ' ' && buffer[i] != '\t' && buffer[i] != separator && buffer[i] != '"') {
        return false;
      }
    }
    return true;
  }

  boolean startsWith(char c) {
    return start < end && buffer[start] == c;
  }

  String text() {
    return decode(start, end);
  }

  /** Splits the line; returns how many fields there are. */
  int split() {
    if (separator == ' ') {
      splitAtBlanks();
      return fields;
    }
    splitOnce();
    if (fields == 1 && buffer[start] == '"' && to[0] > from[0]) {
      unwrap();
      splitOnce();
    }
    return fields;
  }

  private void splitOnce() {
    int count = 0;
    int i = start;
    while (count < MOST_FIELDS) {
      while (i < end && isPad(buffer[i])) {
        i++;
      }
      int first = i;
      int last;
      if (i < end && buffer[i] == '"') {
        first = ++i;
        while (i < end && (buffer[i] != '"' || (i + 1 < end && buffer[i + 1] == '"'))) {
          i += buffer[i] == '"' ? 2 : 1;
        }
        last = Math.min(i, end);
        while (i < end && buffer[i] != separator) {
          i++;
        }
      } else {
        while (i < end && buffer[i] != separator) {
          i++;
        }
        last = i;
      }
      while (last > first && isPad(buffer[last - 1])) {
        last--;
      }
      from[count] = first;
      to[count] = last;
      count++;
      if (i >= end) {
        break;
      }
      i++;
    }
    fields = count;
  }

  private boolean isPad(byte b) {
    return b == ' ' || (b == '\t' && separator != '\t');
  }

  private void splitAtBlanks() {
    int count = 0;
    int i = start;
    while (count < MOST_FIELDS) {
      while (i < end && isPad(buffer[i])) {
        i++;
      }
      if (i >= end) {
        break;
      }
      from[count] = i;
      while (i < end && !isPad(buffer[i])) {
        i++;
      }
      to[count++] = i;
    }
    fields = count;
  }

  private void unwrap() {
    int write = from[0];
    int last = to[0];
    start = write;
    for (int i = write; i < last; i++) {
      buffer[write++] = buffer[i];
      if (buffer[i] == '"' && i + 1 < last && buffer[i + 1] == '"') {
        i++;
      }
    }
    end = write;
  }

  int fields() {
    return fields;
  }

  /** The field's place in its line, counted from 1. */
  int column(int field) {
    return from[field] - start + 1;
  }

  String text(int field) {
    return decode(from[field], to[field]);
  }

  /** In quotes, cut short when long. */
  String quoted(int field) {
    String text = text(field);
    return '"' + (text.length() > 40 ? text.substring(0, 40) + "..." : text) + '"';
  }

  int length(int field) {
    return to[field] - from[field];
  }

  /** A byte of a field. */
  int at(int field, int index) {
    return buffer[from[field] + index];
  }

  /**
   * Reads a number; false if there is none. A blank field is NaN, "nan" and "inf" are no numbers.
   */
  boolean isNumber(int field) {
    int i = from[field];
    int last = to[field];
    if (i == last) {
      value = Double.NaN;
      return true;
    }
    boolean isNegative = buffer[i] == '-';
    if (isNegative || buffer[i] == '+') {
      i++;
    }
    long digits = 0;
    int places = 0;
    int seen = 0;
    boolean isFraction = false;
    for (; i < last; i++) {
      int c = buffer[i];
      if (c >= '0' && c <= '9') {
        if (digits >= MOST_DIGITS) {
          return isLongNumber(field);
        }
        digits = digits * 10 + (c - '0');
        seen++;
        if (isFraction) {
          places++;
        }
      } else if (c == decimal && !isFraction) {
        isFraction = true;
      } else {
        return seen > 0 && (c == 'e' || c == 'E') && isLongNumber(field);
      }
    }
    if (seen == 0) {
      return false;
    }
    double magnitude = digits / POWER_OF_TEN[places];
    value = isNegative ? -magnitude : magnitude;
    return true;
  }

  /** Many digits or an exponent: rare, so the slow way. */
  private boolean isLongNumber(int field) {
    String text = text(field).replace((char) decimal, '.');
    for (int i = 0; i < text.length(); i++) {
      if ("0123456789+-.eE".indexOf(text.charAt(i)) < 0) {
        return false;
      }
    }
    try {
      value = Double.parseDouble(text);
      return value >= -Double.MAX_VALUE && value <= Double.MAX_VALUE;
    } catch (NumberFormatException e) {
      return false;
    }
  }

  /** What {@link #isNumber} read. */
  double value() {
    return value;
  }

  /** Older files are Latin-1, newer ones UTF-8. */
  private String decode(int first, int last) {
    String text = new String(buffer, first, last - first, StandardCharsets.UTF_8);
    return text.indexOf('\uFFFD') < 0
        ? text
        : new String(buffer, first, last - first, StandardCharsets.ISO_8859_1);
  }

  @Override
  public void close() throws IOException {
    in.close();
  }
}
