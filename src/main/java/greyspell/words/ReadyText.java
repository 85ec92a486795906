package greyspell.words;

import static java.util.stream.Collectors.joining;

import greyspell.quantity.Show;
import java.util.regex.MatchResult;
import java.util.stream.IntStream;

/**
 * Texts that other rooms have written out, with metric units and a decimal point: their numbers as
 * the readers of a language and its units write them. Differences in K, areas (mm²) and values per
 * unit (W/m²) stay: cables and data sheets are named so.
 */
final class ReadyText {
  private static final String NUMBER = "(?<![\\p{L}\\d.,])-?\\d+(?:\\.\\d+)?";

  private static final java.util.regex.Pattern QUANTITY =
      java.util.regex.Pattern.compile(
          "(?:("
              + NUMBER
              + ")( to | and | – ))?("
              + NUMBER
              + ") (°C|km|m|litres?)(?![\\p{L}\\d²³/])");

  /** An official figure that is given in both. */
  private static final java.util.regex.Pattern BOTH =
      java.util.regex.Pattern.compile("\\d+ m, (?=\\d+ ft)");

  /** Not the paragraph of a code ("NEC 690.7"). */
  private static final java.util.regex.Pattern DECIMAL =
      java.util.regex.Pattern.compile(
          "(?<![\\p{L}\\d.,])(?<!NEC )-?\\d+\\.\\d+(?![\\p{L}\\d]|\\.\\d)");

  /** As {@link Show#date} writes it, with or without the year. */
  private static final java.util.regex.Pattern DATE =
      java.util.regex.Pattern.compile(
          "(?<![\\p{L}\\d.,])(\\d{1,2}) ("
              + IntStream.rangeClosed(1, 12).mapToObj(Show::month).collect(joining("|"))
              + ")(?: (\\d{4}))?(?![\\p{L}\\d])");

  private ReadyText() {}

  static String in(Words words, String text) {
    String dated = words.language().equals("en") ? text : dates(words, text);
    return words.units() == Units.US
        ? decimals(words, usUnits(words, dated))
        : decimals(words, dated);
  }

  private static String dates(Words words, String text) {
    return DATE.matcher(text)
        .replaceAll(
            found -> {
              String month = words.month(month(found.group(2)));
              String day = words.say("date.day", found.group(1), month);
              return found.group(3) == null ? day : words.say("date.full", day, found.group(3));
            });
  }

  private static int month(String english) {
    int month = 1;
    while (!Show.month(month).equals(english)) {
      month++;
    }
    return month;
  }

  private static String usUnits(Words words, String text) {
    String single = BOTH.matcher(text).replaceAll("");
    return QUANTITY.matcher(single).replaceAll(found -> usQuantity(words, found));
  }

  private static String usQuantity(Words words, MatchResult found) {
    String last = quantity(words, Double.parseDouble(found.group(3)), found.group(4));
    if (found.group(1) == null) {
      return last;
    }
    String first = quantity(words, Double.parseDouble(found.group(1)), found.group(4));
    return first.substring(0, first.lastIndexOf(' ')) + found.group(2) + last;
  }

  private static String quantity(Words words, double value, String unit) {
    return switch (unit) {
      case "°C" -> words.temperature(value);
      case "m" -> words.length(value);
      case "km" -> words.distance(value * 1000.0);
      default -> words.fuel(value);
    };
  }

  private static String decimals(Words words, String text) {
    String point = words.pattern("number.decimal");
    return point.equals(".")
        ? text
        : DECIMAL.matcher(text).replaceAll(found -> found.group().replace(".", point));
  }
}
