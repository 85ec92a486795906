package greyspell.weather;

import greyspell.quantity.BadInput;
import greyspell.quantity.FileTrouble;
import java.io.BufferedInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.GZIPInputStream;
import java.util.zip.ZipException;
import org.jspecify.annotations.Nullable;

/**
 * Reads a weather file of any known format into a {@link WeatherSeries}. What the file is, is told
 * by its first lines, not by its name; gzip is unpacked on the way. docs/weather-files.md says what
 * is read, how hours are placed and how gaps are filled.
 */
public final class WeatherReader {
  private static final String KNOWN =
      "must be our plain CSV (header row with a time column such as utc_end), EPW (begins with"
          + " LOCATION), TMY3 CSV (second line begins with Date (MM/DD/YYYY)), NASA POWER hourly CSV"
          + " (begins with -BEGIN HEADER-), USCRN hourly text or a SURFRAD daily file";

  private WeatherReader() {}

  /**
   * Reads a file onto the site's clock.
   *
   * @param nameAsGiven the file as the user wrote it, for messages
   * @param siteUtcOffsetH local standard time of the site minus UTC; the series is moved to it by
   *     whole hours, a rest stays and is told in {@link WeatherSource#utcOffsetH}
   */
  public static WeatherSeries read(Path file, String nameAsGiven, double siteUtcOffsetH) {
    return readOn(file, nameAsGiven, siteUtcOffsetH);
  }

  /**
   * Reads a file on the clock that it names itself, UTC if it names none: for looking at a file
   * without a site.
   */
  public static WeatherSeries readOnItsOwnClock(Path file, String nameAsGiven) {
    return readOn(file, nameAsGiven, null);
  }

  /**
   * Reads several files as one series: years that follow each other (EPW, TMY3 have one year a
   * file), or rows that follow each other (all other formats). Holes between them are filled or
   * refused by the rules for holes within a file.
   */
  public static WeatherSeries readAll(List<Path> files, double siteUtcOffsetH) {
    return readAll(files, names(files), siteUtcOffsetH, null);
  }

  /**
   * Reads files as {@link #readAll(List, double)} does.
   *
   * @param namesAsGiven the files as the user wrote them, for messages
   * @param siteUtcOffsetH null for the clock that the first file names itself
   * @param map how their columns are to be read; null for the formats that are known by themselves
   */
  public static WeatherSeries readAll(
      List<Path> files,
      List<String> namesAsGiven,
      @Nullable Double siteUtcOffsetH,
      @Nullable ColumnMap map) {
    if (files.isEmpty()) {
      throw new IllegalArgumentException("no file");
    }
    var joined = new JoinedFiles(namesAsGiven, siteUtcOffsetH, map, KNOWN);
    for (int i = 0; i < files.size(); i++) {
      readOne(files.get(i), i, joined);
    }
    return joined.series();
  }

  private static List<String> names(List<Path> files) {
    var names = new ArrayList<String>();
    for (Path file : files) {
      names.add(file.toString());
    }
    return names;
  }

  private static WeatherSeries readOn(Path file, String name, @Nullable Double siteUtcOffsetH) {
    return readAll(List.of(file), List.of(name), siteUtcOffsetH, null);
  }

  private static void readOne(Path file, int index, JoinedFiles joined) {
    FaultList faults = joined.faultsOf(index);
    if (Files.isDirectory(file)) {
      throw faults.alone(
          0, 0, "is a folder", "must be a weather file", "Name the file inside the folder.");
    }
    try (var lines = new Lines(unpacked(Files.newInputStream(file), faults))) {
      String head = lines.head();
      if (head.isBlank()) {
        throw faults.alone(0, 0, "the file is empty", KNOWN, "Export or download it again.");
      }
      refuseWhatIsNoText(head, faults);
      if (head.startsWith("\u00ef\u00bb\u00bf")) {
        lines.skip(3);
        head = head.substring(3);
      }
      joined.take(index, lines, head);
    } catch (NoSuchFileException e) {
      throw faults.alone(
          0,
          0,
          "no such file",
          "must be a weather file",
          "Check the spelling; a relative path counts from the file that names it.");
    } catch (AccessDeniedException e) {
      throw faults.alone(
          0, 0, "may not be read", "must be readable", "Change the permissions of the file.");
    } catch (EOFException | ZipException e) {
      throw faults.alone(
          0,
          0,
          "the compressed file is cut off or damaged",
          "must be whole",
          "Copy or download it again.");
    } catch (IOException e) {
      throw faults.alone(
          0,
          0,
          "could not be read: " + FileTrouble.words(e),
          "must be readable",
          "Copy the file to a disk that works and try again.");
    }
  }

  private static InputStream unpacked(InputStream raw, FaultList faults) throws IOException {
    var in = new BufferedInputStream(raw, Lines.LONGEST_LINE);
    in.mark(4);
    int first = in.read();
    int second = in.read();
    in.reset();
    if (first == 'P' && second == 'K') {
      in.close();
      throw faults.alone(
          0, 0, "is a zip archive", "must be text or gzip", "Unpack it and name the file inside.");
    }
    return first == 0x1f && second == 0x8b ? new GZIPInputStream(in, Lines.LONGEST_LINE) : in;
  }

  private static void refuseWhatIsNoText(String head, FaultList faults) throws BadInput {
    if (head.startsWith("\u00ff\u00fe") || head.startsWith("\u00fe\u00ff")) {
      throw faults.alone(
          0, 0, "is UTF-16 text", "must be UTF-8 or plain ASCII text", "Save it again as UTF-8.");
    }
    for (int i = 0; i < head.length(); i++) {
      char c = head.charAt(i);
      if (c < ' ' && c != '\n' && c != '\r' && c != '\t' && c != '\f') {
        throw faults.alone(
            0,
            0,
            "is no text file (byte " + (int) c + " at place " + (i + 1) + ")",
            KNOWN,
            "Name the weather file itself, not a picture, workbook or archive.");
      }
    }
    if (head.length() >= 4096 && head.indexOf('\n') < 0) {
      throw faults.alone(
          1, 1, "the first line is longer than " + head.length() + " characters", KNOWN, "");
    }
  }
}
