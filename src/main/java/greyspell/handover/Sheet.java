package greyspell.handover;

import greyspell.cause.Said;
import greyspell.handover.Block.Fact;
import greyspell.handover.Block.Row;
import greyspell.handover.Block.Table;
import greyspell.scenario.Scenario.Assumption;
import greyspell.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Blocks in the making, in one language. */
final class Sheet {
  /** Figures with units, or a single word of the scenario file. */
  private static final Pattern SAME =
      Pattern.compile(
          "(?:[-+0-9.,:/ %°²·×\\[\\]()]|(?<!\\p{L})(?:C|K|V|A|Ah|W|kW|Wh|kWh|Ω|mΩ|h|d|m|deg)(?!\\p{L}))*"
              + "|-?[0-9.]+ [A-Za-z0-9/²³%]+|[a-z_]+");

  private final Words words;
  private final int kwhDecimals;
  private final List<Block> blocks = new ArrayList<>();
  private List<Fact> facts = new ArrayList<>();

  Sheet(Words words, int kwhDecimals) {
    this.words = words;
    this.kwhDecimals = kwhDecimals;
  }

  Words words() {
    return words;
  }

  List<Block> blocks() {
    endFacts();
    return List.copyOf(blocks);
  }

  void add(Block block) {
    endFacts();
    blocks.add(block);
  }

  /** The key ends in the section's id. */
  void section(String id) {
    add(Block.Heading.section(words.say("section." + id), id));
  }

  void part(String key) {
    add(Block.Heading.part(words.say(key)));
  }

  void text(String key, String... values) {
    add(Block.Text.of(words.say(key, values)));
  }

  void small(String key, String... values) {
    add(Block.Text.small(words.say(key, values)));
  }

  void said(Said said) {
    add(Block.Text.of(words.say(said)));
  }

  void items(List<String> items) {
    if (!items.isEmpty()) {
      add(new Block.Items(items));
    }
  }

  /** Facts that follow each other stand in one list. */
  void fact(String key, String text) {
    facts.add(new Fact(words.say(key), text));
  }

  private void endFacts() {
    if (!facts.isEmpty()) {
      blocks.add(new Block.Facts(facts));
      facts = new ArrayList<>();
    }
  }

  /** A table whose head's words stand under these keys; nothing if it has no rows. */
  void table(String captionKey, List<String> headKeys, List<Row> rows, boolean isText) {
    if (!rows.isEmpty()) {
      add(made(captionKey, headKeys, rows, isText));
    }
  }

  Table made(String captionKey, List<String> headKeys, List<Row> rows, boolean isText) {
    return new Table(
        words.say(captionKey), headKeys.stream().map(key -> words.say(key)).toList(), rows, isText);
  }

  /** "29.3" in a table of kWh. */
  String kwh(double wh) {
    return words.number(wh / 1000.0, kwhDecimals);
  }

  /** Of a single appliance: "0.61". */
  String fineKwh(double wh) {
    return words.number(wh / 1000.0, Math.max(2, kwhDecimals));
  }

  /** Half of the last digit of {@link #kwh}. */
  double leastShownWh() {
    return 500.0 * Math.pow(10.0, -kwhDecimals);
  }

  /** A winter's name: "2021/22" stays, "winter 18" is said in the language. */
  String winter(String name) {
    return name.startsWith("winter ")
        ? words.say("winter.numbered", name.substring("winter ".length()))
        : words.name(name);
  }

  /** What another room wrote in English, or that only the English edition has it. */
  String translated(String english) {
    String own = words.translated(english);
    return own == null ? words.say("only_english") : own;
  }

  /**
   * The value that was taken for a key. Figures and words of the scenario file are the same in
   * every language; null where it has words that this one has not.
   */
  @Nullable String value(Assumption taken) {
    String english = taken.value();
    if (english.equals("yes") || english.equals("no")) {
      return words.say(english);
    }
    if (taken.key().equals("other_source")) {
      return words.name(english);
    }
    String own = words.translated(english);
    return own == null && SAME.matcher(english).matches() ? words.ready(english) : own;
  }

  /** What may be a name of the user's, which stays. */
  String translatedOrName(String english) {
    String own = words.translated(english);
    return own == null ? english : own;
  }
}
