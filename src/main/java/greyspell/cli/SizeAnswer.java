package greyspell.cli;

import greyspell.study.SizeResult;
import greyspell.study.SizeResult.Point;
import org.jspecify.annotations.Nullable;

/** Which of the answers of {@code size} is written. */
enum SizeAnswer {
  BANK("the smallest bank for the panels"),
  PANELS("the fewest panels for the bank"),
  PAIR("the cheapest pair");

  /** What it is, in words. */
  final String words;

  SizeAnswer(String words) {
    this.words = words;
  }

  /** Null where there is none. */
  @Nullable Point in(SizeResult result) {
    return switch (this) {
      case BANK -> result.leastBank();
      case PANELS -> result.fewestPanels();
      case PAIR -> result.cheapest();
    };
  }

  /** The first that there is; where there is none, the first. */
  static SizeAnswer first(SizeResult result) {
    for (SizeAnswer answer : values()) {
      if (answer.in(result) != null) {
        return answer;
      }
    }
    return BANK;
  }
}
