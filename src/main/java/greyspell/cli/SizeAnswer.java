package greyspell.cli;

import greyspell.report.SizeText;
import greyspell.study.SizeResult;
import greyspell.study.SizeResult.Point;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Which of the answers of {@code size} is written. */
final class SizeAnswer {
  private static final SizeAnswer BANK =
      new SizeAnswer("the smallest bank for the panels", SizeResult::leastBank);
  private static final SizeAnswer PANELS =
      new SizeAnswer("the fewest panels for the bank", SizeResult::fewestPanels);
  private static final SizeAnswer PAIR = new SizeAnswer("the cheapest pair", SizeResult::cheapest);
  private static final int MOST_DIGITS = 6;

  /** What it is, in words. */
  final String words;

  private final Function<SizeResult, @Nullable Point> point;

  private SizeAnswer(String words, Function<SizeResult, @Nullable Point> point) {
    this.words = words;
    this.point = point;
  }

  /** One of the words, or the modules of a pair in the table; null for anything else. */
  static @Nullable SizeAnswer of(String asked) {
    String word = asked.strip().toLowerCase(Locale.ROOT);
    return switch (word) {
      case "bank" -> BANK;
      case "panels" -> PANELS;
      case "pair" -> PAIR;
      default ->
          word.matches("[1-9][0-9]*") && word.length() <= MOST_DIGITS
              ? withModules(Integer.parseInt(word))
              : null;
    };
  }

  private static SizeAnswer withModules(int modules) {
    return new SizeAnswer(
        "the pair of " + modules + (modules == 1 ? " module" : " modules"),
        result ->
            result.frontier().stream()
                .filter(p -> p.modules() == modules)
                .findFirst()
                .orElse(null));
  }

  /** Null where there is none. */
  @Nullable Point in(SizeResult result) {
    return point.apply(result);
  }

  /** The first that there is; where there is none, the first. */
  static SizeAnswer first(SizeResult result) {
    for (SizeAnswer answer : List.of(BANK, PANELS, PAIR)) {
      if (answer.in(result) != null) {
        return answer;
      }
    }
    return BANK;
  }

  /** What can be written in its place, a sentence. */
  static String instead(SizeResult result) {
    if (result.frontier().isEmpty()) {
      return "Run it without --write to see why, or let more be looked at: --controllers-may-grow,"
          + " --most-packs.";
    }
    Point first = result.frontier().get(0);
    List<String> modules =
        result.frontier().stream().map(p -> Integer.toString(p.modules())).toList();
    return "A pair of the table can be had by its modules ("
        + String.join(", ", modules)
        + "): --take "
        + modules.get(0)
        + " for "
        + SizeText.pair(first)
        + ".";
  }
}
