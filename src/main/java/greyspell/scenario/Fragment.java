package greyspell.scenario;

import greyspell.quantity.BadInput;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;

/**
 * A piece of YAML that goes into a file: a value, written with quotes where YAML needs them, or a
 * block of lines.
 */
final class Fragment {
  private final Node node;
  private final List<String> lines;

  /**
   * @param lines as they were handed in, if there are several; else empty
   */
  private Fragment(Node node, List<String> lines) {
    this.node = node;
    this.lines = lines;
  }

  /** Reads what is to stand at a key (or as an item of its list). */
  static Fragment of(Key key, String value, String path) {
    String text = value.replace("\r\n", "\n").stripTrailing();
    text = text.contains("\n") ? text.stripIndent().stripTrailing() : text.strip();
    boolean isWords = key.kind == Key.Kind.TEXT || key.kind == Key.Kind.PATH;
    char first = text.isEmpty() ? ' ' : text.strip().charAt(0);
    boolean isQuoted = first == '"' || first == '\'';
    boolean isYaml =
        isQuoted || (!isWords && (first == '{' || first == '[' || text.indexOf('\n') >= 0));
    if (isYaml) {
      return new Fragment(YamlFile.compose(text, "value of " + path), lines(text));
    }
    if (key.shape != null && !text.isEmpty()) {
      return block(text);
    }
    return scalar(text);
  }

  /** A single line that is "key: value" or "- item", else a name. */
  private static Fragment block(String text) {
    try {
      Node read = YamlFile.compose(text, "");
      return read instanceof ScalarNode ? scalar(text) : new Fragment(read, List.of(text));
    } catch (BadInput e) {
      return scalar(text);
    }
  }

  private static Fragment scalar(String text) {
    return new Fragment(
        new ScalarNode(
            Tag.STR, text, null, null, org.yaml.snakeyaml.DumperOptions.ScalarStyle.PLAIN),
        List.of());
  }

  /** One line of YAML between braces or brackets. */
  static Fragment flowOf(String line) {
    return new Fragment(YamlFile.compose(line, ""), List.of());
  }

  private static List<String> lines(String text) {
    return text.indexOf('\n') < 0 ? List.of() : text.lines().toList();
  }

  /** This under a key of its own. */
  Fragment under(String key, int indent) {
    if (isInline()) {
      String line = "{" + key + ": " + flow() + "}";
      return new Fragment(YamlFile.compose(line, ""), List.of());
    }
    var under = new ArrayList<String>();
    under.add(key + ":");
    for (String line : lines) {
      under.add(line.isBlank() ? "" : " ".repeat(indent) + line);
    }
    return new Fragment(YamlFile.compose(String.join("\n", under), ""), List.copyOf(under));
  }

  /** This as the only item of a list written with dashes. */
  Fragment asList(int indent) {
    var list = new ArrayList<String>();
    String first = isInline() ? inline() : lines.get(0);
    list.add("- " + first);
    for (int i = 1; i < lines.size() && !isInline(); i++) {
      list.add(lines.get(i).isBlank() ? "" : " ".repeat(indent) + lines.get(i));
    }
    return new Fragment(YamlFile.compose(String.join("\n", list), ""), List.copyOf(list));
  }

  /** What is handed in as a list of one item is that item. */
  Fragment item() {
    if (node instanceof SequenceNode list && !isInline() && list.getValue().size() == 1) {
      var item = new ArrayList<String>();
      item.add(lines.get(0).substring(1).strip());
      int indent = lines.get(0).length() - item.get(0).length();
      for (String line : lines.subList(1, lines.size())) {
        item.add(line.isBlank() ? "" : line.substring(Math.min(indent, line.length())));
      }
      return new Fragment(list.getValue().get(0), item.size() == 1 ? List.of() : item);
    }
    return this;
  }

  Node node() {
    return node;
  }

  /** Whether it fits behind its key in one line. */
  boolean isInline() {
    return node instanceof ScalarNode || YamlLayout.isFlow(node);
  }

  /** The lines of a block, from column 0. */
  List<String> lines() {
    return lines.isEmpty() ? List.of(flow(node)) : lines;
  }

  /** As it stands in a line of its own. */
  String inline() {
    return node instanceof ScalarNode scalar ? words(scalar.getValue(), false) : flow(node);
  }

  /** As it stands between braces. */
  String flow() {
    return flow(node);
  }

  static String flow(Node any) {
    if (any instanceof MappingNode mapping) {
      var parts = new ArrayList<String>();
      for (NodeTuple tuple : mapping.getValue()) {
        parts.add(flow(tuple.getKeyNode()) + ": " + flow(tuple.getValueNode()));
      }
      return "{" + String.join(", ", parts) + "}";
    }
    if (any instanceof SequenceNode list) {
      return "[" + String.join(", ", list.getValue().stream().map(Fragment::flow).toList()) + "]";
    }
    return YamlLayout.isNothing(any) ? "~" : words(((ScalarNode) any).getValue(), true);
  }

  /** Plain where YAML reads it back as it is, else in quotes. */
  static String words(String text, boolean isFlow) {
    return isPlain(text, isFlow) ? text : quoted(text);
  }

  private static boolean isPlain(String text, boolean isFlow) {
    if (text.isBlank() || text.indexOf('\n') >= 0) {
      return false;
    }
    try {
      Node read = YamlFile.compose(isFlow ? "{k: [" + text + ", k]}" : "k: " + text, "");
      Node value = ((MappingNode) read).getValue().get(0).getValueNode();
      if (isFlow) {
        value = ((SequenceNode) value).getValue().get(0);
      }
      return value instanceof ScalarNode scalar
          && scalar.isPlain()
          && scalar.getValue().equals(text)
          && !YamlLayout.isNothing(scalar);
    } catch (BadInput e) {
      return false;
    }
  }

  private static String quoted(String text) {
    var out = new StringBuilder("\"");
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"' || c == '\\') {
        out.append('\\').append(c);
      } else if (c == '\n') {
        out.append("\\n");
      } else if (Character.isISOControl(c)) {
        out.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
      } else {
        out.append(c);
      }
    }
    return out.append('"').toString();
  }
}
