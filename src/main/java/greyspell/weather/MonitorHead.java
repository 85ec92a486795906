package greyspell.weather;

import greyspell.calendar.UtcOffset;
import greyspell.quantity.PlainNumber;
import greyspell.weather.MonitorMap.Mapped;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** The head of a monitor's CSV: which fields hold what, and on which clock. */
final class MonitorHead {
  private static final String PLAIN_TIME = "yyyy-MM-dd HH:mm:ss";

  /** Whether it is our own plain form. */
  final boolean isPlain;

  /** Names of columns of the plain form that say nothing here. */
  final List<String> notRead = new ArrayList<>();

  TimePattern pattern = plainPattern();
  boolean isUtc;
  int[] timeField = new int[0];

  /** Of each column of the map. */
  int[] fieldOf = new int[0];

  int mostField;

  private final Lines lines;
  private final FaultList faults;
  private final MonitorMap map;

  /** Nothing is read yet; in the plain form the map is filled. */
  MonitorHead(Lines lines, FaultList faults, MonitorMap map, boolean isPlain) {
    this.lines = lines;
    this.faults = faults;
    this.map = map;
    this.isPlain = isPlain;
  }

  private static TimePattern plainPattern() {
    TimePattern pattern = TimePattern.find(PLAIN_TIME);
    if (pattern == null) {
      throw new IllegalStateException(PLAIN_TIME);
    }
    return pattern;
  }

  /** Up to the row of names and with it. */
  void read() throws IOException {
    findNames();
    if (isPlain) {
      takePlainNames();
    } else {
      takeMappedNames();
    }
  }

  private void findNames() throws IOException {
    for (int i = 0; i < map.form.skipLines; i++) {
      lines.next();
    }
    while (lines.next()) {
      if (isPlain && lines.startsWith('#')) {
        takeHeadLine();
        continue;
      }
      boolean isNames =
          map.form.namesBegin.isEmpty() ? !isPassedOver() : map.form.beginsNames(lines.text());
      if (isNames) {
        lines.split();
        return;
      }
    }
    boolean isSought = !map.form.namesBegin.isEmpty();
    throw faults.alone(
        lines.number(),
        1,
        isSought ? "no line begins \"" + map.form.namesBegin + '"' : "no row of names",
        isSought
            ? "the row with the columns' names must begin so, as the map says in names_begin"
            : "must hold a row with the columns' names",
        isSought
            ? "Look at the file's first lines and change the map."
            : "Only remarks were found: export it again.");
  }

  private void takeHeadLine() {
    String text = lines.text();
    UtcOffset.Stated stated = UtcOffset.stated(text);
    if (stated != null) {
      map.utcOffsetH = PlainHeader.offset(lines.number(), stated.column(), stated.value(), faults);
      return;
    }
    int colon = text.indexOf(':');
    String key = colon < 1 ? "" : text.substring(1, colon).strip();
    if (NearName.distance(key, UtcOffset.KEY) <= PlainHeader.MISSPELT) {
      faults.add(
          lines.number(),
          text.indexOf(key, 1) + 1,
          "unknown key \"" + key + '"',
          "the key is " + UtcOffset.KEY,
          "Did you mean " + UtcOffset.KEY + "?");
    }
  }

  /** Whether this line is blank or a remark. */
  boolean isPassedOver() {
    return lines.isBlank()
        || (isPlain && lines.startsWith('#'))
        || (!map.form.remarks.isEmpty() && lines.text().startsWith(map.form.remarks));
  }

  private void takePlainNames() {
    int times = 0;
    for (int f = 0; f < lines.fields(); f++) {
      String name = lines.text(f).toLowerCase(Locale.ROOT);
      if (List.of("local_start", "local_end", "utc_start", "utc_end").contains(name)) {
        timeField = new int[] {f};
        times++;
        isUtc = name.startsWith("utc");
        map.stamp = name.endsWith("end") ? ColumnMap.Stamp.END : ColumnMap.Stamp.START;
      } else {
        int before = map.columns.size();
        map.takePlainName(name, lines.number(), lines.column(f));
        if (map.columns.size() > before) {
          fieldOf = Arrays.copyOf(fieldOf, before + 1);
          fieldOf[before] = f;
          refuseSecond(f);
        } else if (!name.isEmpty()) {
          notRead.add(lines.text(f));
        }
      }
    }
    if (times != 1 || map.columns.isEmpty()) {
      faults.add(
          lines.number(),
          1,
          "found the columns " + names(),
          "needed are one of local_start, local_end, utc_start, utc_end, and some of charge_pct,"
              + " solar_w, load_w",
          "Any other table is read with --columns MAP: docs/compare.md shows one.");
    }
    settleFields();
  }

  /** The last of two would be taken, and nobody knows which of them is right. */
  private void refuseSecond(int field) {
    Mapped last = map.columns.get(map.columns.size() - 1);
    for (Mapped other : map.columns) {
      if (other != last && other.column() == last.column()) {
        faults.add(
            lines.number(),
            lines.column(field),
            "a second column of the same: " + other.name() + " and " + last.name(),
            "must be one column of " + last.column().words,
            "Take one of them out, or name the right one in a map with --columns MAP.");
        return;
      }
    }
  }

  private void takeMappedNames() {
    TimePattern mapped = map.form.time;
    pattern = mapped == null ? pattern : mapped;
    timeField = new int[map.form.timeNames.size()];
    for (int t = 0; t < timeField.length; t++) {
      timeField[t] = find(map.form.timeNames.get(t), "time");
    }
    fieldOf = new int[map.columns.size()];
    for (int k = 0; k < fieldOf.length; k++) {
      fieldOf[k] = find(map.columns.get(k).name(), map.columns.get(k).column().words);
    }
    settleFields();
  }

  private void settleFields() {
    for (int field : timeField) {
      mostField = Math.max(mostField, field);
    }
    for (int field : fieldOf) {
      mostField = Math.max(mostField, field);
    }
  }

  private int find(String name, String what) {
    Double number = name.startsWith("#") ? PlainNumber.of(name.substring(1)) : null;
    if (number != null && number >= 1.0 && number <= 250.0 && number == Math.rint(number)) {
      return number.intValue() - 1;
    }
    for (int f = 0; f < lines.fields(); f++) {
      if (lines.text(f).equals(name)) {
        return f;
      }
    }
    faults.add(
        lines.number(),
        1,
        "no column \"" + name + "\" (" + what + ")",
        "the columns are " + names(),
        "Change the map; a column may also be named by number, in quotes: \"#3, UNIT\".");
    return 0;
  }

  private String names() {
    var names = new StringBuilder();
    for (int f = 0; f < lines.fields() && names.length() < 200; f++) {
      names.append(f == 0 ? "" : ", ").append(lines.text(f));
    }
    return names.toString();
  }
}
