package greyspell.weather;

import greyspell.weather.RowFormat.RowHead;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One file, or several that follow each other, on their way to a series. The first file says what
 * they all are, which columns they have and, without a site, on which clock they are.
 */
final class JoinedFiles {
  private static final int MOST_NOTES = 20;

  private final List<String> names;
  private final @Nullable Double siteUtcOffsetH;
  private final @Nullable ColumnMap map;
  private final String known;
  private final FaultList faults;
  private final List<WeatherSeries> years = new ArrayList<>();
  private final Map<String, List<String>> filesByNote = new LinkedHashMap<>();
  private final Tally tally = new Tally();
  private @Nullable WeatherFormat format;
  private @Nullable RowHead firstHead;
  private @Nullable HourGrid grid;

  JoinedFiles(
      List<String> names, @Nullable Double siteUtcOffsetH, @Nullable ColumnMap map, String known) {
    this.names = names;
    this.siteUtcOffsetH = siteUtcOffsetH;
    this.map = map;
    this.known = known;
    faults = new FaultList(names.get(0));
  }

  FaultList faultsOf(int index) {
    faults.in(names.get(index));
    return faults;
  }

  void take(int index, Lines lines, String head) throws IOException {
    String name = names.get(index);
    ColumnMap columns = map;
    WeatherFormat found =
        columns == null ? WeatherFormat.of(head, known, faults) : WeatherFormat.PLAIN;
    if (format == null) {
      format = found;
    } else if (format != found) {
      throw faults.alone(
          0,
          0,
          "is of another format than " + names.get(0),
          "files that are read as one must be of one format",
          "Turn them into plain CSV with greyspell weather convert.");
    }
    switch (found) {
      case EPW -> years.add(new EpwReader(lines, name, siteUtcOffsetH, faults).read());
      case TMY3 -> years.add(new Tmy3Reader(lines, name, siteUtcOffsetH, faults).read());
      case POWER -> takeRows(index, new PowerReader(lines, name, faults, tally));
      case USCRN -> takeRows(index, new UscrnReader(lines, name, faults, tally));
      case SURFRAD -> takeRows(index, new SurfradReader(lines, name, faults, tally));
      case PLAIN ->
          takeRows(
              index,
              columns == null
                  ? new PlainCsvReader(lines, name, known, faults, tally)
                  : new MappedReader(lines, name, columns, faults, tally));
    }
  }

  private void takeRows(int index, RowFormat reader) throws IOException {
    RowHead head = reader.readHead();
    HourGrid rows = grid;
    RowHead first = firstHead;
    if (rows == null || first == null) {
      Double siteH = siteUtcOffsetH;
      double offsetH = siteH != null ? siteH : head.told().utcOffsetH();
      int offsetMin = (int) Math.round(offsetH * Dates.MINUTES_PER_HOUR);
      rows = new HourGrid(head.used(), head.stampsAreEnds(), offsetMin, faults);
      grid = rows;
      firstHead = head;
    } else {
      refuseOtherHead(first, head);
      rows.nextFile();
    }
    reader.readRows(rows);
    for (String note : reader.notes()) {
      filesByNote.computeIfAbsent(note, n -> new ArrayList<>()).add(names.get(index));
    }
  }

  /** Rows of several files go into the same columns. */
  private void refuseOtherHead(RowHead first, RowHead head) {
    if (!head.used().equals(first.used()) || head.stampsAreEnds() != first.stampsAreEnds()) {
      faults.add(
          "has other columns, in another order or with other stamps, than " + names.get(0),
          "files that are read as one must have the same columns",
          "Turn each into plain CSV first, or leave out columns that not all have.");
    }
    if (isElsewhere(first.told().latitudeDeg(), head.told().latitudeDeg())
        || isElsewhere(first.told().longitudeDeg(), head.told().longitudeDeg())) {
      faults.add(
          "is of another place than " + names.get(0),
          "files that are read as one must be of one place",
          "Take out the files of other places.");
    }
    faults.throwIfAny();
  }

  static boolean isElsewhere(@Nullable Double oneDeg, @Nullable Double otherDeg) {
    return oneDeg != null && otherDeg != null && Math.abs(oneDeg - otherDeg) > 0.1;
  }

  WeatherSeries series() {
    HourGrid rows = grid;
    RowHead head = firstHead;
    String label =
        names.size() == 1 ? names.get(0) : names.get(0) + " and " + (names.size() - 1) + " more";
    if (rows == null || head == null) {
      return years.size() == 1 ? years.get(0) : new JoinedYears(years, label).series();
    }
    faults.in(label);
    List<String> toTell = notes();
    tally.tell(toTell);
    WeatherSource told = head.told();
    return rows.series(
        new WeatherSource(
            label,
            told.format(),
            told.place(),
            told.latitudeDeg(),
            told.longitudeDeg(),
            told.elevationM(),
            told.utcOffsetH()),
        head.isTypicalYear(),
        toTell);
  }

  /** A year of daily files must not tell the same thing 366 times. */
  private List<String> notes() {
    var told = new ArrayList<String>();
    filesByNote.forEach((note, files) -> told.add(ofWhich(files) + note));
    int more = told.size() - MOST_NOTES;
    if (more > 0) {
      told.subList(MOST_NOTES, told.size()).clear();
      told.add("and " + more + " such notes more");
    }
    return told;
  }

  private String ofWhich(List<String> files) {
    if (names.size() == 1) {
      return "";
    }
    return files.size() == 1
        ? files.get(0) + ": "
        : files.size() + " of " + names.size() + " files, the first " + files.get(0) + ": ";
  }
}
