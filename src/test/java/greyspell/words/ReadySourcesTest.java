package greyspell.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * What other rooms write out for the pages, looked for in their source: a sentence that is added,
 * or said in other words, must come into the list, and the list holds nothing that nobody writes.
 */
class ReadySourcesTest {
  private static final Path MAIN = Path.of("src/main/java/greyspell");

  /**
   * Rooms that write sentences for the pages; what they hand over they hand over in these calls.
   */
  private static final List<String> ROOMS =
      List.of(
          "array",
          "electrical",
          "load",
          "power",
          "scenario",
          "sky",
          "storage",
          "study",
          "weather",
          "weather/ensemble");

  private static final Pattern HANDED_OVER =
      Pattern.compile(
          "(?:\\.caution|\\.assume|[cC]autions\\.add|[nN]otes\\.add|toTell\\.add|told\\.add|leftOut\\.add"
              + "|missing\\.add|lacking\\.add|new Assumption|Finding\\.(?:pass|caution|unknown|fail)"
              + "|new Finding|DiodeFit\\.failed)\\(");

  /** Nothing but sentences for the pages, beside names of keys. */
  private static final Set<String> WHOLE =
      Set.of(
          "array/DataSheetLint",
          "electrical/ConductorJudge",
          "electrical/CurrentFindings",
          "electrical/LoadJudge",
          "electrical/SharedControllers",
          "electrical/StringFindings",
          "electrical/StringGlance",
          "electrical/SurgeJudge",
          "electrical/UnknownRun",
          "scenario/Plausibility",
          "storage/BankDefaults",
          "storage/CellDefaults",
          "storage/FullCharge",
          "study/BesideNotes",
          "study/LoadNotes",
          "study/Records",
          "study/SnowOn",
          "study/WeatherNotes");

  /** What they write stands on no page: monitors' logs, sizing, many winters, tables of choices. */
  private static final Set<String> ELSEWHERE =
      Set.of(
          "sky/CloudCalibration",
          "sky/CloudFit",
          "study/CauseRuns",
          "study/LogCautions",
          "study/ManyWinters",
          "study/SizeCosts",
          "study/StringStudy",
          "study/Tradeoff",
          "study/WinterHome",
          "study/WintersWanted",
          "weather/MonitorReader");

  /** Notes beside the arrangements that {@code strings} weighs. */
  private static final Set<String> TEXTS_ELSEWHERE =
      Set.of(
          "electrical/StringJudge: ends at -40 °C: at",
          "electrical/StringJudge: there is no cross-check");

  private static final Pattern PLACE = Pattern.compile("\\{\\d+[#!]?}");
  private static final Pattern FIGURE = Pattern.compile("[\\d.]+ \\S{1,3}");
  private static final List<String> LINES = ReadyWords.lines("ready_de.txt");

  @Test
  void whatIsHandedToThePagesStandsInTheList() throws IOException {
    var list = new StringBuilder();
    for (int k = 0; k < LINES.size(); k += 2) {
      list.append(PLACE.matcher(LINES.get(k)).replaceAll("\u0000")).append('\n');
    }
    var missing = new TreeSet<String>();
    int looked = 0;
    for (String room : ROOMS) {
      for (Path file : files(MAIN.resolve(room), 1)) {
        String name = room + "/" + file.getFileName().toString().replace(".java", "");
        if (ELSEWHERE.contains(name)) {
          continue;
        }
        var source = SourceTexts.of(file);
        for (String text : WHOLE.contains(name) ? source.all() : source.in(HANDED_OVER)) {
          looked++;
          for (String part : text.split("%[.0-9]*[a-z]", -1)) {
            String words = bare(part.replace("%%", "%"));
            if (words.contains(" ")
                && !FIGURE.matcher(words).matches()
                && !TEXTS_ELSEWHERE.contains(name + ": " + words)
                && list.indexOf(words) < 0) {
              missing.add(name + ": " + words);
            }
          }
        }
      }
    }
    assertEquals("", String.join("\n", missing));
    assertTrue(looked > 600, looked + " texts");
  }

  @Test
  void theListHoldsNothingThatNobodyWrites() throws IOException {
    var written = new StringBuilder("\n");
    var rooms = new ArrayList<String>(ROOMS);
    rooms.addAll(List.of("quantity", "calendar"));
    for (String room : rooms) {
      for (Path file : files(MAIN.resolve(room), 1)) {
        SourceTexts.of(file).all().forEach(text -> written.append(text).append('\n'));
      }
    }
    written.append(Files.readString(Path.of("shared/appliances.yaml")));
    String all = written.toString().replace("%%", "%").toLowerCase(Locale.ROOT);
    var unknown = new TreeSet<String>();
    for (int k = 0; k < LINES.size(); k += 2) {
      for (String part :
          PLACE.matcher(LINES.get(k)).replaceAll("\0").split("[\0;:,()=]|\\. ", -1)) {
        String words = bare(part).toLowerCase(Locale.ROOT);
        if (!isWritten(all, words, 4)) {
          unknown.add(LINES.get(k) + ": " + words);
        }
      }
    }
    assertEquals("", String.join("\n", unknown));
  }

  /** In one piece, or in a few that were joined. */
  private static boolean isWritten(String all, String words, int pieces) {
    if (all.contains(words)) {
      return true;
    }
    for (int end = words.length() - 1; pieces > 1 && end > 0; end--) {
      if ((words.charAt(end) == ' ' || words.charAt(end - 1) == ' ')
          && all.contains(words.substring(0, end))
          && isWritten(all, bare(words.substring(end)), pieces - 1)) {
        return true;
      }
    }
    return false;
  }

  /** Without what stands between it and a value. */
  private static String bare(String text) {
    return text.replaceAll("^[\\s:;,.()/'\"]+|[\\s:;,.()/'\"]+$", "");
  }

  private static List<Path> files(Path folder, int depth) throws IOException {
    try (var walk = Files.walk(folder, depth)) {
      return new ArrayList<>(walk.filter(f -> f.toString().endsWith(".java")).sorted().toList());
    }
  }

  @Test
  void textsOfASourceAreFound() {
    var source =
        SourceTexts.of(
            "x(\"a\" // \"no\"\n + \"b\" + c + \"d\\\"\"); /* \"no\" */ y('\"', z(\"e\"), \"f\");");
    assertEquals(List.of("ab", "d\"", "e", "f"), source.all());
    assertEquals(List.of("e", "f"), source.in(Pattern.compile("\\by\\(")));
  }
}
