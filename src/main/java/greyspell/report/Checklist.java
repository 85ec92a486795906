package greyspell.report;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * What a licensed person looks at, and why; from {@code checklist.txt}, and for a home with a
 * generator {@code generator-checklist.txt}, one item a line.
 */
public final class Checklist {
  private Checklist() {}

  /** One thing to see to, and the reason. */
  public record Item(String name, String reason) {}

  public static List<Item> items() {
    return items("en");
  }

  /** What has to be seen to where an engine runs; cautions as much as a checklist. */
  public static List<Item> generator() {
    return generator("en");
  }

  /** The same in a language, by its code. */
  public static List<Item> items(String language) {
    return read("checklist" + ending(language));
  }

  public static List<Item> generator(String language) {
    return read("generator-checklist" + ending(language));
  }

  static String ending(String language) {
    return language.equals("en") ? ".txt" : "_" + language + ".txt";
  }

  private static List<Item> read(String name) {
    var file = Checklist.class.getResourceAsStream("/greyspell/report/" + name);
    if (file == null) {
      throw new IllegalStateException(name + " is not in the program");
    }
    var items = new ArrayList<Item>();
    try (var reader = new BufferedReader(new InputStreamReader(file, StandardCharsets.UTF_8))) {
      for (String line = reader.readLine(); line != null; line = reader.readLine()) {
        int bar = line.indexOf('|');
        if (bar > 0) {
          items.add(new Item(line.substring(0, bar).strip(), line.substring(bar + 1).strip()));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return items;
  }
}
