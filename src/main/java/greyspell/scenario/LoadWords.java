package greyspell.scenario;

import greyspell.calendar.Monthly;
import greyspell.load.ApplianceSpec.HourSpan;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Times of day, days of the week and months as people write them. Null is "not understood". */
final class LoadWords {
  static final List<String> DAYS = List.of("mon", "tue", "wed", "thu", "fri", "sat", "sun");
  static final List<String> MONTHS =
      List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");
  private static final double MINUTES_PER_H = 60.0;

  private LoadWords() {}

  static boolean isDay(String word) {
    return word.length() >= 3
        && DAYS.contains(word.substring(0, 3).toLowerCase(Locale.ROOT))
        && days(word) != null;
  }

  /** {@code 17:30-23:00}; several with commas. */
  static @Nullable List<HourSpan> hours(String text) {
    var spans = new ArrayList<HourSpan>();
    for (String part : parts(text)) {
      int dash = part.indexOf('-');
      if (dash < 0) {
        return null;
      }
      double from = timeH(part.substring(0, dash).strip());
      double to = timeH(part.substring(dash + 1).strip());
      if (!(from >= 0.0 && from < 24.0 && to >= 0.0 && to <= 24.0 && from != to)) {
        return null;
      }
      spans.add(new HourSpan(from, to));
    }
    return spans.isEmpty() ? null : spans;
  }

  /** Whether two spans share a minute. */
  static boolean overlap(List<HourSpan> spans) {
    for (int i = 0; i < spans.size(); i++) {
      for (int j = i + 1; j < spans.size(); j++) {
        if (isInside(spans.get(i).fromH(), spans.get(j))
            || isInside(spans.get(j).fromH(), spans.get(i))) {
          return true;
        }
      }
    }
    return false;
  }

  /** Hours of a day in these spans, which do not overlap. */
  static double lengthH(List<HourSpan> spans) {
    double sumH = 0.0;
    for (HourSpan span : spans) {
      double lengthH = span.toH() - span.fromH();
      sumH += lengthH > 0.0 ? lengthH : lengthH + 24.0;
    }
    return sumH;
  }

  private static boolean isInside(double timeH, HourSpan span) {
    return span.fromH() < span.toH()
        ? timeH >= span.fromH() && timeH < span.toH()
        : timeH >= span.fromH() || timeH < span.toH();
  }

  /** {@code 7:30} or {@code 07:30}; NaN if it is no time. */
  private static double timeH(String text) {
    int colon = text.indexOf(':');
    if (colon < 1 || colon > 2 || text.length() != colon + 3) {
      return Double.NaN;
    }
    int hour = digits(text, 0, colon);
    int minute = digits(text, colon + 1, text.length());
    return hour < 0 || minute < 0 || minute > 59 ? Double.NaN : hour + minute / MINUTES_PER_H;
  }

  private static int digits(String text, int from, int to) {
    int value = 0;
    for (int i = from; i < to; i++) {
      char c = text.charAt(i);
      if (c < '0' || c > '9') {
        return -1;
      }
      value = 10 * value + c - '0';
    }
    return value;
  }

  /** {@code Mon-Fri}, {@code Sat, Sun}. */
  static @Nullable Set<DayOfWeek> days(String text) {
    boolean[] on = spans(text, DAYS);
    if (on == null) {
      return null;
    }
    var days = EnumSet.noneOf(DayOfWeek.class);
    for (int i = 0; i < on.length; i++) {
      if (on[i]) {
        days.add(DayOfWeek.of(i + 1));
      }
    }
    return days;
  }

  /** {@code Nov-Feb}: factor 1 in these months, else 0. */
  static @Nullable Monthly months(String text) {
    boolean[] on = spans(text, MONTHS);
    if (on == null) {
      return null;
    }
    var factors = new double[12];
    for (int i = 0; i < 12; i++) {
      factors[i] = on[i] ? 1.0 : 0.0;
    }
    return Monthly.of(factors);
  }

  /** Words, or spans of them that may run past the end. */
  private static boolean @Nullable [] spans(String text, List<String> words) {
    var on = new boolean[words.size()];
    List<String> parts = parts(text);
    for (String part : parts) {
      int dash = part.indexOf('-');
      int from = index(dash < 0 ? part : part.substring(0, dash), words);
      int to = dash < 0 ? from : index(part.substring(dash + 1), words);
      if (from < 0 || to < 0) {
        return null;
      }
      for (int i = from; ; i = (i + 1) % on.length) {
        on[i] = true;
        if (i == to) {
          break;
        }
      }
    }
    return parts.isEmpty() ? null : on;
  }

  /** By its first three letters; longer spellings must be the English word. */
  private static int index(String word, List<String> words) {
    String lower = word.strip().toLowerCase(Locale.ROOT);
    if (lower.length() < 3) {
      return -1;
    }
    int i = words.indexOf(lower.substring(0, 3));
    if (i < 0 || lower.length() == 3) {
      return i;
    }
    String full =
        words == DAYS
            ? DayOfWeek.of(i + 1).name().toLowerCase(Locale.ROOT)
            : java.time.Month.of(i + 1).name().toLowerCase(Locale.ROOT);
    return full.startsWith(lower) ? i : -1;
  }

  private static List<String> parts(String text) {
    var parts = new ArrayList<String>();
    String plain = text.replace('\u2013', '-');
    int from = 0;
    for (int i = 0; i <= plain.length(); i++) {
      if (i == plain.length() || plain.charAt(i) == ',') {
        parts.add(plain.substring(from, i).strip());
        from = i + 1;
      }
    }
    return parts;
  }
}
