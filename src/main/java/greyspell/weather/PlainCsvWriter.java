package greyspell.weather;

import greyspell.calendar.HourCalendar;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Writes a series as our plain CSV, in local standard time. Values are printed to one decimal (wind
 * and snow included), whole ones without; cloud cover in okta if it is whole oktas, else in per
 * cent. The same series gives the same bytes on every machine. A file is written beside its place
 * and moved there when whole.
 */
public final class PlainCsvWriter {
  private static final double OKTAS = 8.0;
  private static final double TENTHS = 10.0;

  private PlainCsvWriter() {}

  /** Writes the file, or nothing: an old file stays until the new one is whole. */
  public static void write(WeatherSeries series, List<String> remarks, Path file)
      throws IOException {
    Path absolute = file.toAbsolutePath();
    Path folder = absolute.getParent();
    if (folder == null) {
      throw new IOException(file + " is no file name");
    }
    Path partial = Files.createTempFile(folder, "." + absolute.getFileName(), ".part");
    try {
      Files.write(partial, text(series, remarks).getBytes(StandardCharsets.UTF_8));
      openToReaders(partial);
      try {
        Files.move(partial, absolute, StandardCopyOption.ATOMIC_MOVE);
      } catch (AtomicMoveNotSupportedException e) {
        Files.move(partial, absolute, StandardCopyOption.REPLACE_EXISTING);
      }
    } finally {
      Files.deleteIfExists(partial);
    }
  }

  /** Temporary files are made for their owner alone; a weather file is for everyone. */
  private static void openToReaders(Path file) throws IOException {
    if (Files.getFileStore(file).supportsFileAttributeView("posix")) {
      Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r--r--"));
    }
  }

  /** The whole file; remarks become lines that begin with #. */
  public static String text(WeatherSeries series, List<String> remarks) {
    var out = new StringBuilder(40 * series.hours());
    head(series, remarks, out);
    boolean isOkta = isWholeOktas(series.cloudShare());
    var names = new StringBuilder("local_start");
    var columns = new ArrayList<double[]>();
    var scales = new ArrayList<Double>();
    CsvColumn cloud = isOkta ? CsvColumn.OKTA : CsvColumn.PERCENT;
    add(CsvColumn.GHI, series.globalHorizontalWm2(), names, columns, scales);
    add(CsvColumn.DNI, series.directNormalWm2(), names, columns, scales);
    add(CsvColumn.DHI, series.diffuseHorizontalWm2(), names, columns, scales);
    add(CsvColumn.TAIR, series.airTemperatureC(), names, columns, scales);
    add(CsvColumn.WIND, series.windMs(), names, columns, scales);
    add(cloud, series.cloudShare(), names, columns, scales);
    add(CsvColumn.SNOW, series.snowDepthM(), names, columns, scales);
    out.append(names).append('\n');
    for (int hour = 0; hour < series.hours(); hour++) {
      time(series.calendar(), hour, out);
      for (int k = 0; k < columns.size(); k++) {
        out.append(',');
        tenths(columns.get(k)[hour] * scales.get(k), out);
      }
      out.append('\n');
    }
    return out.toString();
  }

  private static void head(WeatherSeries series, List<String> remarks, StringBuilder out) {
    for (String remark : remarks) {
      out.append("# ").append(remark).append('\n');
    }
    WeatherSource source = series.source();
    if (!source.place().isEmpty()) {
      out.append("# place: ").append(source.place()).append('\n');
    }
    key("latitude", source.latitudeDeg(), out);
    key("longitude", source.longitudeDeg(), out);
    key("elevation", source.elevationM(), out);
    key("utc_offset", source.utcOffsetH(), out);
    if (series.calendar().isTypical()) {
      out.append("# typical_year: yes\n");
    }
  }

  private static void key(String name, @Nullable Double value, StringBuilder out) {
    if (value != null) {
      String text = Double.toString(value);
      out.append("# ")
          .append(name)
          .append(": ")
          .append(text.endsWith(".0") ? text.substring(0, text.length() - 2) : text)
          .append('\n');
    }
  }

  private static void add(
      CsvColumn column,
      double @Nullable [] values,
      StringBuilder names,
      List<double[]> columns,
      List<Double> scales) {
    if (values != null) {
      names.append(',').append(column.csvName);
      columns.add(values);
      scales.add(column.perUnit);
    }
  }

  private static boolean isWholeOktas(double @Nullable [] cloudShare) {
    if (cloudShare == null) {
      return true;
    }
    for (double share : cloudShare) {
      if (share * OKTAS != Math.rint(share * OKTAS)) {
        return false;
      }
    }
    return true;
  }

  private static void time(HourCalendar calendar, int hour, StringBuilder out) {
    out.append(calendar.year(hour)).append('-');
    twoDigits(calendar.month(hour), out);
    out.append('-');
    twoDigits(calendar.dayOfMonth(hour), out);
    out.append('T');
    twoDigits(calendar.hourOfDay(hour), out);
    out.append(":00");
  }

  private static void twoDigits(int number, StringBuilder out) {
    out.append((char) ('0' + number / 10)).append((char) ('0' + number % 10));
  }

  /** To the nearest tenth, halves upward; ".0" and "-0" are not written. */
  private static void tenths(double value, StringBuilder out) {
    long tenths = (long) Math.floor(value * TENTHS + 0.5);
    if (tenths < 0) {
      out.append('-');
      tenths = -tenths;
    }
    out.append(tenths / 10);
    if (tenths % 10 != 0) {
      out.append('.').append((char) ('0' + tenths % 10));
    }
  }
}
