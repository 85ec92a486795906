package greyspell.weather;

import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.words.German;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is noted of weather files with all their faults is told in German. */
class GermanNotesTest {
  private static final List<String> FILES = List.of("w.csv", "a.csv", "b.csv");
  private static final LocalDateTime JULY = LocalDateTime.of(2019, 7, 4, 10, 0);

  @TempDir private Path folder = Path.of("");

  private final Set<String> notes = new LinkedHashSet<>();

  private void read(String text, double offsetH) throws IOException {
    notes.addAll(new SmallFiles(folder).read(text, offsetH).gaps().notes());
  }

  private void read(String header, int stepMin, String row, String gap, int gapH)
      throws IOException {
    String text =
        SmallFiles.csv(
            header,
            LocalDateTime.of(2018, 11, 1, 0, 0),
            (61 + 365 + 40) * 24 * 60 / stepMin,
            stepMin,
            t -> t + (t.isBefore(JULY) || !t.isBefore(JULY.plusHours(gapH)) ? row : gap));
    read(text, 5.6);
  }

  @Test
  void plainFiles() throws IOException {
    String all = "utc_start,ghi_wm2,tair_c,wind_ms,snow_cm,dni_wm2,dhi_wm2,cloud_okta";
    String row = "Z,10,5,4,1,0,5,3";
    read(all, 60, row, "Z,,,,,,,", 2);
    read(all, 60, row, "Z,,,,,,,", 30);
    read(all, 30, row, "Z,10,5,,,,,", 300);
    read(all, 60, row, "Z,-3,5,4,1,-1,-2,9", 1);
    read(all, 60, row, "Z,-3,5,4,1,-1,-2,9", 5);
    read(all, 60, row, "Z,10,5,4,1,0,5,11", 1);
    read(all, 60, row, "Z,10,5,400,1,0,5,11", 2);
    assertTrue(notes.size() > 25, notes.toString());
    for (String part :
        List.of("straight", "longest", "left out", "zero", "impossible", "rows are")) {
      assertTrue(notes.stream().anyMatch(n -> n.contains(part)), part + " in " + notes);
    }
    German.check(notes, FILES);
  }

  @Test
  void typicalYears() throws IOException {
    read(SmallFiles.epw(r -> with(r, 2020)), -6.0);
    read(SmallFiles.epw(r -> with(r, r.month == 2 ? 2004 : 1998)), -4.5);
    read(
        SmallFiles.epw(
            SmallFiles.EPW_HEAD,
            LocalDateTime.of(2020, 1, 1, 0, 0),
            8784,
            1,
            r -> with(r, r.month == 2 ? 2004 : 1998)),
        -7.0);
    read(
        SmallFiles.epw(
            SmallFiles.EPW_HEAD.replace("PERIODS,1,1", "PERIODS,1,2"),
            LocalDateTime.of(2019, 1, 1, 0, 0),
            8760,
            2,
            r -> with(r, 2019)),
        -6.0);
    read(
        SmallFiles.epw(
            r -> {
              r.snowCm = "100";
              r.windMs = r.month == 5 && r.day < 5 ? "999" : "3";
              r.globalWm2 = r.is(6, 3, 1) ? "-2" : "0";
              return r;
            }),
        -6.0);
    read(SmallFiles.tmy3(SmallFiles.TMY3_HEAD, SmallFiles::tmy3Line), -8.0);
    assertTrue(notes.size() > 7, notes.toString());
    for (String part : List.of("typical year", "leap", "29 February", "clock: moved", "records")) {
      assertTrue(notes.stream().anyMatch(n -> n.contains(part)), part + " in " + notes);
    }
    German.check(notes, FILES);
  }

  private static SmallFiles.EpwRow with(SmallFiles.EpwRow row, int year) {
    row.year = year;
    return row;
  }

  /** As the other readers and several files put them together. */
  @Test
  void otherFiles() {
    for (WeatherColumn column : WeatherColumn.values()) {
      for (int count : new int[] {1, 12}) {
        var tally = new Tally();
        for (Tally.Change change : Tally.Change.values()) {
          for (int k = 0; k < count; k++) {
            tally.add(change, column);
          }
        }
        var told = new ArrayList<String>();
        tally.tell(told);
        notes.addAll(told);
      }
      notes.add(column.words + ": left out, not all of the files have it");
    }
    notes.add("longitude written without a sign: read as west");
    notes.add(
        String.format(
            Locale.ROOT,
            "local solar time by swaths of 15 degrees: read as %s, whatever the country's clock is",
            Dates.clock(-6.0)));
    notes.add("snow depth: the same all year, taken for a code and left out");
    for (String note : List.copyOf(notes)) {
      notes.add("a.csv: " + note);
      notes.add("2 of 7 files, the first b.csv: " + note);
    }
    notes.add("and 4 such notes more");
    German.check(notes, FILES);
  }
}
