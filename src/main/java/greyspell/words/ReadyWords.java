package greyspell.words;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Sentences that other rooms have written out in English, in another language: {@code ready_xx.txt}
 * holds each English pattern and below it its translation. What stands in a place of the pattern is
 * taken over, and translated too where it is itself such a sentence; names and numbers are not.
 */
final class ReadyWords {
  private static final Pattern PLACE = Pattern.compile("\\{(\\d+)}");

  /**
   * One sentence.
   *
   * @param english matches the whole of it, a group for each place in order
   * @param translated with the places of the English one
   */
  private record Pair(Pattern english, String translated) {}

  private final List<Pair> pairs;

  private ReadyWords(List<Pair> pairs) {
    this.pairs = List.copyOf(pairs);
  }

  /** English has none: its sentences stand as they are. */
  static ReadyWords of(String language) {
    var pairs = new ArrayList<Pair>();
    List<String> lines = language.equals("en") ? List.of() : lines("ready_" + language + ".txt");
    for (int k = 0; k + 1 < lines.size(); k += 2) {
      pairs.add(new Pair(matcher(lines.get(k)), lines.get(k + 1)));
    }
    return new ReadyWords(pairs);
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
  private static Pattern matcher(String english) {
    var regex = new StringBuilder();
    int at = 0;
    for (Matcher place = PLACE.matcher(english); place.find(); at = place.end()) {
      regex.append(Pattern.quote(english.substring(at, place.start()))).append("(.+?)");
    }
    return Pattern.compile(regex.append(Pattern.quote(english.substring(at))).toString());
  }

  /** Null where the list has nothing for it. */
  @Nullable String in(String english) {
    for (Pair pair : pairs) {
      Matcher found = pair.english.matcher(english);
      if (found.matches()) {
        return PLACE
            .matcher(pair.translated)
            .replaceAll(
                place -> {
                  String value = found.group(Integer.parseInt(place.group(1)) + 1);
                  String translated = in(value);
                  return Matcher.quoteReplacement(translated == null ? value : translated);
                });
      }
    }
    return null;
  }
}
