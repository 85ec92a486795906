package greyspell.scenario;

import java.util.List;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.SequenceNode;

/** Changes to the text of a YAML file at one place; all else stays as it is, letter by letter. */
final class Splice {
  private final YamlLayout layout;
  private final String text;
  private final int indent;

  Splice(YamlLayout layout, Node root) {
    this.layout = layout;
    text = layout.text;
    indent = layout.indent(root);
  }

  int indent() {
    return indent;
  }

  private String replaced(int from, int to, String with) {
    return text.substring(0, from) + with + text.substring(to);
  }

  /** Each line on one of its own, set in. */
  private String block(List<String> lines, int column) {
    var out = new StringBuilder();
    for (String line : lines) {
      out.append(layout.lineBreak).append(line.isBlank() ? "" : " ".repeat(column) + line);
    }
    return out.toString();
  }

  // ---- values of keys ---------------------------------------------------------------------------

  /** Another value behind a key. */
  String value(MappingNode holder, NodeTuple tuple, Fragment value) {
    Node old = tuple.getValueNode();
    int colonEnd = layout.colonEnd(tuple);
    if (YamlLayout.isFlow(holder)) {
      return inPlace(old, colonEnd, value.flow());
    }
    if (value.isInline() && !YamlLayout.isBlock(old)) {
      return inPlace(old, colonEnd, value.inline());
    }
    int oldEnd = layout.lineEnd(layout.end(tuple));
    if (value.isInline()) {
      String comment = text.substring(colonEnd, layout.lineEnd(colonEnd));
      return replaced(colonEnd, oldEnd, " " + value.inline() + comment);
    }
    String lines = block(value.lines(), layout.column(tuple.getKeyNode()) + indent);
    if (YamlLayout.isBlock(old)) {
      return replaced(layout.lineEnd(colonEnd), oldEnd, lines);
    }
    String comment = text.substring(layout.end(tuple), oldEnd);
    return replaced(colonEnd, oldEnd, comment + lines);
  }

  /** In the place of what is written in one piece, or behind a colon with nothing after it. */
  String inPlace(Node old, int behind, String with) {
    int from = layout.start(old);
    int to = layout.end(old);
    return to <= from ? replaced(behind, behind, " " + with) : replaced(from, to, with);
  }

  /** In the place of a bare value, wherever it stands. */
  String bare(Node old, Fragment value) {
    return inPlace(old, layout.start(old), value.flow());
  }

  /** A key that was not there, after the others of its block. */
  String newKey(MappingNode holder, String key, Fragment value) {
    if (YamlLayout.isFlow(holder)) {
      return inBraces(holder, holder.getValue().isEmpty(), key + ": " + value.flow());
    }
    int column = layout.column(holder.getValue().get(0).getKeyNode());
    int at = layout.lineEnd(layout.end(holder));
    String line = layout.lineBreak + " ".repeat(column) + key + ":";
    if (value.isInline()) {
      return replaced(at, at, line + " " + value.inline());
    }
    String apart = column == 0 ? layout.lineBreak : "";
    return replaced(at, at, apart + line + block(value.lines(), column + indent));
  }

  /** One more between braces or brackets, behind the last. */
  private String inBraces(Node holder, boolean isEmpty, String more) {
    if (isEmpty) {
      int at = layout.start(holder) + 1;
      return replaced(at, at, more);
    }
    int last =
        holder instanceof MappingNode mapping
            ? layout.end(mapping.getValue().get(mapping.getValue().size() - 1))
            : layout.end(lastOf((SequenceNode) holder));
    return replaced(last, last, ", " + more);
  }

  private static Node lastOf(SequenceNode list) {
    return list.getValue().get(list.getValue().size() - 1);
  }

  // ---- items of lists ---------------------------------------------------------------------------

  /** Another item in the place of one. */
  String item(SequenceNode holder, Node old, Fragment value) {
    if (YamlLayout.isFlow(holder)) {
      return inPlace(old, layout.start(old), value.flow());
    }
    int from = layout.start(old);
    int end = layout.end(old);
    int oldEnd = YamlLayout.isBlock(old) ? layout.lineEnd(end) : end;
    String space = end <= from ? " " : "";
    if (value.isInline()) {
      return replaced(from, oldEnd, space + value.inline());
    }
    List<String> lines = value.lines();
    int column = layout.dash(old) - layout.lineStart(from) + indent;
    String comment = text.substring(oldEnd, layout.lineEnd(end));
    String rest = block(lines.subList(1, lines.size()), column);
    return replaced(from, layout.lineEnd(end), space + lines.get(0) + comment + rest);
  }

  /** One more item, behind the last. */
  String newItem(SequenceNode holder, Fragment item) {
    if (YamlLayout.isFlow(holder)) {
      return inBraces(holder, holder.getValue().isEmpty(), item.flow());
    }
    int dash = layout.dash(holder.getValue().get(0));
    int at = layout.lineEnd(layout.end(holder));
    return replaced(at, at, block(item.asList(2).lines(), dash - layout.lineStart(dash)));
  }

  // ---- what goes
  // ----------------------------------------------------------------------------------

  /** Without this key; its comment in the same line goes with it. */
  String withoutKey(MappingNode holder, NodeTuple tuple) {
    List<NodeTuple> all = holder.getValue();
    int i = all.indexOf(tuple);
    int from = layout.start(tuple.getKeyNode());
    int to = layout.end(tuple);
    if (YamlLayout.isFlow(holder)) {
      int next = i + 1 < all.size() ? layout.start(all.get(i + 1).getKeyNode()) : -1;
      return fromBraces(from, to, next, i > 0 ? layout.end(all.get(i - 1)) : -1);
    }
    int lineStart = layout.lineStart(from);
    if (text.substring(lineStart, from).isBlank()) {
      return replaced(lineStart, layout.nextLine(to), "");
    }
    boolean isOnly = all.size() == 1;
    return replaced(
        from,
        isOnly ? layout.lineEnd(to) : layout.start(all.get(1).getKeyNode()),
        isOnly ? "{}" : "");
  }

  /** Without this item. */
  String withoutItem(SequenceNode holder, int i) {
    List<Node> all = holder.getValue();
    int from = layout.start(all.get(i));
    int to = layout.end(all.get(i));
    if (YamlLayout.isFlow(holder)) {
      int next = i + 1 < all.size() ? layout.start(all.get(i + 1)) : -1;
      return fromBraces(from, to, next, i > 0 ? layout.end(all.get(i - 1)) : -1);
    }
    int lineStart = layout.lineStart(layout.dash(all.get(i)));
    return replaced(lineStart, layout.nextLine(Math.max(to, layout.dash(all.get(i)) + 1)), "");
  }

  private String fromBraces(int from, int to, int next, int before) {
    if (next >= 0) {
      return replaced(from, next, "");
    }
    return replaced(before >= 0 ? before : from, to, "");
  }
}
