package greyspell.scenario;

import greyspell.quantity.BadInput;
import greyspell.quantity.Place;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/**
 * One file of the equipment library: a list of entries, each of which begins with its name. Of a
 * file written as the shipped ones are (each entry begins with {@code - name:} at the left edge)
 * only the entries asked for are parsed, which matters to the start of the program; any other
 * layout is parsed whole.
 */
final class Entries {
  private static final String MARK = "- name:";

  /** From where to where an entry runs in the text, and the lines before it. */
  private record Span(int from, int to, int linesBefore) {}

  private final String text;
  private final String file;
  private final Map<String, Span> spans = new LinkedHashMap<>();
  private final Map<String, Node> parsed = new LinkedHashMap<>();

  Entries(String text, String file) {
    this.text = text;
    this.file = file;
  }

  Set<String> names() {
    return spans.isEmpty() ? parsed.keySet() : spans.keySet();
  }

  /** Null if there is none of this name, or after a fault in it. */
  @Nullable Node find(String name, Border border) {
    Node known = parsed.get(name);
    Span span = spans.get(name);
    if (known != null || span == null) {
      return known;
    }
    try {
      String padded =
          "\n".repeat(span.linesBefore()).concat(text.substring(span.from(), span.to()));
      if (YamlFile.compose(padded, file) instanceof SequenceNode list) {
        Node entry = list.getValue().get(0);
        parsed.put(name, entry);
        return entry;
      }
    } catch (BadInput e) {
      border.faults(e);
    }
    return null;
  }

  /** Finds where the entries stand, without parsing them if that can be told line by line. */
  void index(Border border) {
    if (!indexLines(border)) {
      spans.clear();
      parseAll(border);
    }
  }

  /** False if the file is not laid out so. */
  private boolean indexLines(Border border) {
    int line = 0;
    int from = -1;
    int fromLine = 0;
    for (int start = 0; start < text.length(); line++) {
      int newline = text.indexOf('\n', start);
      int next = newline < 0 ? text.length() : newline + 1;
      if (text.startsWith(MARK, start)) {
        if (from >= 0 && !add(from, start, fromLine, border)) {
          return false;
        }
        from = start;
        fromLine = line;
      } else if (!mayStandBetween(text.charAt(start))) {
        return false;
      }
      start = next;
    }
    return from >= 0 && add(from, text.length(), fromLine, border);
  }

  private static boolean mayStandBetween(char first) {
    return first == ' ' || first == '#' || first == '\n' || first == '\r';
  }

  private boolean add(int from, int to, int linesBefore, Border border) {
    int end = text.indexOf('\n', from);
    String line = text.substring(from + MARK.length(), end < 0 || end > to ? to : end);
    String name = plainName(line);
    if (name.isEmpty()) {
      return false;
    }
    if (spans.putIfAbsent(name, new Span(from, to, linesBefore)) != null) {
      border.fault(
          new Place(file, linesBefore + 1, 1),
          Border.found("name", name) + " a second time",
          "each name once",
          "Rename one of them.");
    }
    return true;
  }

  /** Empty if only a parser could tell. */
  private static String plainName(String afterMark) {
    int comment = afterMark.indexOf(" #");
    String name = (comment < 0 ? afterMark : afterMark.substring(0, comment)).strip();
    boolean isQuoted = name.length() > 2 && (name.startsWith("\"") || name.startsWith("'"));
    if (isQuoted) {
      boolean isClosed = name.charAt(name.length() - 1) == name.charAt(0);
      name = isClosed ? name.substring(1, name.length() - 1) : "";
    }
    for (int i = 0; i < name.length(); i++) {
      if ("\"'\\&*!|>{}[]%@`".indexOf(name.charAt(i)) >= 0) {
        return "";
      }
    }
    return name.endsWith(":") || name.contains(": ") ? "" : name;
  }

  private void parseAll(Border border) {
    Node root;
    try {
      root = YamlFile.compose(text, file);
    } catch (BadInput e) {
      border.faults(e);
      return;
    }
    if (!(root instanceof SequenceNode list)) {
      border.fault(
          Block.placeIn(root, file),
          "the file: found " + Block.kindOf(root),
          "must be a list of entries",
          "Begin each with \"- name: \".");
      return;
    }
    for (Node item : list.getValue()) {
      String name = item instanceof MappingNode mapping ? nameOf(mapping) : null;
      if (name == null) {
        border.fault(
            Block.placeIn(item, file),
            "an entry without a name",
            "must begin with its name",
            "Write \"- name: \" and the values below.");
      } else if (parsed.put(name, item) != null) {
        border.fault(
            Block.placeIn(item, file),
            Border.found("name", name) + " a second time",
            "each name once",
            "Rename one of them.");
      }
    }
  }

  private static @Nullable String nameOf(MappingNode entry) {
    for (NodeTuple tuple : entry.getValue()) {
      if (tuple.getKeyNode() instanceof ScalarNode key
          && key.getValue().equals("name")
          && tuple.getValueNode() instanceof ScalarNode value) {
        return value.getValue();
      }
    }
    return null;
  }
}
