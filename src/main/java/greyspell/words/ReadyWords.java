package greyspell.words;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Sentences that other rooms have written out in English, in another language: {@code ready_xx.txt}
 * holds each English pattern and below it its translation.
 *
 * <p>What stands in a place <code>{0}</code> is taken over, and translated too where it is itself
 * such a sentence; names and numbers are not. <code>{0#}</code> takes a number only, <code>{0!}
 * </code> only what is itself such a sentence. Of several patterns that fit, the one with the most
 * fixed words holds, wherever it stands in the file. A sentence may lack its full stop, and parts
 * that are set apart by semicolons may be translated one by one: all of them, or none.
 */
final class ReadyWords {
  private static final Pattern PLACE = Pattern.compile("\\{(\\d+)([#!]?)}");
  private static final String APART = "; ";

  /**
   * One sentence with places.
   *
   * @param english match the whole of it, a group for each place in order: with places as short as
   *     can be, and as long
   * @param anchor longest run of fixed words, quickly looked for
   * @param fixed letters that are not in places
   * @param isSentence whether what stands in the place must be translated
   * @param translated with the places of the English one
   */
  private record Pair(
      List<Pattern> english,
      String anchor,
      int fixed,
      List<Boolean> isSentence,
      String translated) {}

  private final Map<String, String> plain;
  private final List<Pair> pairs;

  private ReadyWords(Map<String, String> plain, List<Pair> pairs) {
    this.plain = Map.copyOf(plain);
    this.pairs = List.copyOf(pairs);
  }

  /** English has none: its sentences stand as they are. */
  static ReadyWords of(String language) {
    return of(language.equals("en") ? List.of() : lines("ready_" + language + ".txt"));
  }

  /** English and translated in turn. */
  static ReadyWords of(List<String> lines) {
    var plain = new HashMap<String, String>();
    var pairs = new ArrayList<Pair>();
    for (int k = 0; k + 1 < lines.size(); k += 2) {
      if (PLACE.matcher(lines.get(k)).find()) {
        pairs.add(pair(lines.get(k), lines.get(k + 1)));
      } else {
        plain.put(lines.get(k), lines.get(k + 1));
      }
    }
    pairs.sort(Comparator.comparingInt(Pair::fixed).reversed());
    return new ReadyWords(plain, pairs);
  }

  /** English and translated in turn, without comments and empty lines. */
  static List<String> lines(String name) {
    try (var in = ReadyWords.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException(name + " is not in the program");
      }
      return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
          .lines()
          .filter(line -> !line.isBlank() && !line.startsWith("#"))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Places are numbered in their order. */
  private static Pair pair(String english, String translated) {
    var regex = new StringBuilder();
    var isSentence = new ArrayList<Boolean>();
    String anchor = "";
    int at = 0, length = 0;
    for (Matcher place = PLACE.matcher(english); place.find(); at = place.end()) {
      String words = english.substring(at, place.start());
      anchor = words.length() > anchor.length() ? words : anchor;
      length += words.length();
      isSentence.add(place.group(2).equals("!"));
      regex.append(Pattern.quote(words));
      regex.append(place.group(2).equals("#") ? "(-?\\d[\\d.]*)" : "(.+?)");
    }
    String words = english.substring(at);
    anchor = words.length() > anchor.length() ? words : anchor;
    return new Pair(
        List.of(
            Pattern.compile(regex + Pattern.quote(words)),
            Pattern.compile(regex.toString().replace("(.+?)", "(.+)") + Pattern.quote(words))),
        anchor,
        length + words.length(),
        List.copyOf(isSentence),
        translated);
  }

  /** Null where the list has nothing for it. */
  @Nullable String in(String english) {
    String own = whole(english);
    if (own == null && !english.endsWith(".")) {
      own = whole(english + ".");
      own = own == null ? null : own.substring(0, own.length() - 1);
    }
    return own;
  }

  /** Parts go before a pattern of which one place would hold several of them. */
  private @Nullable String whole(String english) {
    String own = plain.get(english);
    own = own == null ? byPattern(english, false) : own;
    own = own == null && english.contains(APART) ? byParts(english) : own;
    return own == null && english.contains(APART) ? byPattern(english, true) : own;
  }

  /** A word of the program's own as it stands in the list, else the name as it is. */
  String name(String name) {
    String own = plain.get(name);
    return own == null ? name : own;
  }

  private @Nullable String byPattern(String english, boolean mayHoldParts) {
    for (Pair pair : pairs) {
      for (int k = 0; english.contains(pair.anchor) && k < pair.english.size(); k++) {
        Matcher found = pair.english.get(k).matcher(english);
        String own = found.matches() ? filled(pair, found, mayHoldParts) : null;
        if (own != null) {
          return own;
        }
      }
    }
    return null;
  }

  /** Null where a place that must be translated cannot be. */
  private @Nullable String filled(Pair pair, Matcher found, boolean mayHoldParts) {
    var values = new ArrayList<String>();
    for (int k = 0; k < found.groupCount(); k++) {
      String value = found.group(k + 1);
      String own = in(value);
      if (own == null && (pair.isSentence.get(k) || (!mayHoldParts && value.contains(APART)))) {
        return null;
      }
      values.add(own == null ? value : own);
    }
    return PLACE
        .matcher(pair.translated)
        .replaceAll(
            place -> Matcher.quoteReplacement(values.get(Integer.parseInt(place.group(1)))));
  }

  private @Nullable String byParts(String english) {
    var parts = new ArrayList<String>();
    for (String part : english.split(APART, -1)) {
      String own = plain.get(part);
      own = own == null ? byPattern(part, false) : own;
      if (own == null) {
        return null;
      }
      parts.add(own);
    }
    return String.join(APART, parts);
  }
}
