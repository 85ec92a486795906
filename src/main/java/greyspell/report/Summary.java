package greyspell.report;

import greyspell.calendar.HourCalendar;
import greyspell.chart.Say;
import greyspell.outcome.GreySpell;
import greyspell.study.StudyResult;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The run on one terminal screen: at most 24 lines of at most 100 characters. */
public final class Summary {
  private static final int COLUMNS = 100;
  private static final int LINES = 24;
  private static final int LABEL = 26;
  private static final int MOST_SPELLS = 3;
  private static final int MOST_VALUE = 2;
  private static final int MOST_CAUTION = 4;

  private Summary() {}

  /** The text, each line ended; {@code written} may be empty. */
  public static String text(StudyResult result, List<Path> written) {
    var out = new ArrayList<String>();
    wrap(out, Facts.heading(result), "", 1);
    out.add("");
    var verdict = Verdict.of(result);
    wrap(out, verdict.text(), "", 7);
    out.add("");
    int room = LINES - out.size();
    var keys = new ArrayList<>(KeyFigures.of(result));
    var tail = tail(result, written, MOST_SPELLS, MOST_CAUTION);
    for (int k = keys.size() - 1; k >= 0 && lines(keys).size() + tail.size() > room; k--) {
      if (keys.get(k).isSpare()) {
        keys.remove(k);
      }
    }
    if (lines(keys).size() + tail.size() > room) {
      tail = tail(result, written, 1, MOST_CAUTION);
    }
    for (int most = MOST_CAUTION - 1; most > 0 && lines(keys).size() + tail.size() > room; most--) {
      tail = tail(result, written, 1, most);
    }
    var lines = lines(keys);
    out.addAll(lines.subList(0, Math.min(lines.size(), Math.max(0, room - tail.size()))));
    out.addAll(tail);
    return String.join("\n", out) + "\n";
  }

  private static List<String> lines(List<KeyFigures.Line> keys) {
    var lines = new ArrayList<String>();
    keys.forEach(key -> labelled(lines, key.label(), key.value(), MOST_VALUE));
    return lines;
  }

  /** A label and, beside it, at most so many lines. */
  private static void labelled(List<String> out, String label, String words, int most) {
    var lines = new ArrayList<String>();
    String indent = " ".repeat(2 + LABEL);
    wrap(lines, words, indent, most);
    lines.set(0, "  " + pad(label, LABEL) + lines.get(0).substring(indent.length()));
    out.addAll(lines);
  }

  private static List<String> tail(
      StudyResult result, List<Path> written, int most, int mostCaution) {
    HourCalendar calendar = Facts.calendar(result);
    var out = new ArrayList<String>();
    var spells = result.outcome().greySpells();
    for (GreySpell s : spells.subList(0, Math.min(most, spells.size()))) {
      out.add(
          cut(
              "  "
                  + pad(
                      out.isEmpty() ? most > 1 ? "Worst grey spells" : "Worst grey spell" : "",
                      LABEL)
                  + pad(Say.shortDateYear(calendar, s.fromDay() * 24), 13)
                  + pad(Say.count(s.days(), "day", "days"), 9)
                  + Say.kwh(s.shortWh())
                  + " short"
                  + (s.unmetWh() > 0.0 ? ", " + Say.kwh(s.unmetWh()) + " not served" : "")));
    }
    List<String> cautions = result.cautions();
    if (!cautions.isEmpty()) {
      String label =
          cautions.size() == 1 ? "Caution" : "Cautions, " + cautions.size() + " on the page";
      labelled(out, label, cautions.get(0), mostCaution);
    }
    if (!written.isEmpty()) {
      Path parent = written.get(0).getParent();
      boolean hasPage = written.stream().anyMatch(p -> p.endsWith(ReportFiles.PAGE));
      out.add("");
      wrap(
          out,
          "Written to "
              + (parent == null ? "." : parent)
              + (hasPage ? "; open " + ReportFiles.PAGE + " to read on" : ""),
          "",
          2);
    }
    return out;
  }

  private static String pad(String words, int width) {
    return words.length() >= width ? words + " " : words + " ".repeat(width - words.length());
  }

  private static String cut(String line) {
    return line.length() <= COLUMNS ? line : line.substring(0, COLUMNS - 1) + "…";
  }

  private static void wrap(List<String> out, String words, String indent, int most) {
    int used = 0;
    var line = new StringBuilder(indent);
    for (String word : words.split(" ", -1)) {
      boolean isFirst = line.length() == indent.length();
      if (!isFirst && line.length() + 1 + word.length() > COLUMNS) {
        if (++used == most) {
          out.add(cut(line + " …"));
          return;
        }
        out.add(cut(line.toString()));
        line.setLength(indent.length());
        isFirst = true;
      }
      line.append(isFirst ? "" : " ").append(word);
    }
    out.add(cut(line.toString()));
  }
}
