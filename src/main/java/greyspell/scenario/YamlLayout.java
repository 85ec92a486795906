package greyspell.scenario;

import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.nodes.CollectionNode;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;

/** Where the nodes of a YAML text begin and end in it. */
final class YamlLayout {
  private static final int USUAL_INDENT = 2;
  final String text;
  final String lineBreak;

  YamlLayout(String text) {
    this.text = text;
    lineBreak = text.contains("\r\n") ? "\r\n" : "\n";
  }

  /** Marks count code points, strings count chars. */
  private int at(Mark mark) {
    return text.offsetByCodePoints(0, mark.getIndex());
  }

  int start(Node node) {
    return at(node.getStartMark());
  }

  /** Just after the last character; of a block just after its last value, comments left out. */
  int end(Node node) {
    if (node instanceof MappingNode mapping && !isFlow(node) && !mapping.getValue().isEmpty()) {
      NodeTuple last = mapping.getValue().get(mapping.getValue().size() - 1);
      return end(last);
    }
    if (node instanceof SequenceNode list && !isFlow(node) && !list.getValue().isEmpty()) {
      return end(list.getValue().get(list.getValue().size() - 1));
    }
    return withoutBreaks(start(node), at(node.getEndMark()));
  }

  int end(NodeTuple tuple) {
    return Math.max(colonEnd(tuple), end(tuple.getValueNode()));
  }

  /** A text written over several lines ends behind its last line break. */
  private int withoutBreaks(int from, int to) {
    int end = to;
    while (end > from && Character.isWhitespace(text.charAt(end - 1))) {
      end--;
    }
    return end;
  }

  /** Just after the colon behind a key. */
  int colonEnd(NodeTuple tuple) {
    return text.indexOf(':', at(tuple.getKeyNode().getEndMark())) + 1;
  }

  /** The line break at or after here, or the end of the text. */
  int lineEnd(int from) {
    int end = text.indexOf('\n', from);
    if (end < 0) {
      return text.length();
    }
    return end > from && text.charAt(end - 1) == '\r' ? end - 1 : end;
  }

  int lineStart(int from) {
    return text.lastIndexOf('\n', from - 1) + 1;
  }

  /** Just after the line break at or after here. */
  int nextLine(int from) {
    int end = text.indexOf('\n', from);
    return end < 0 ? text.length() : end + 1;
  }

  int column(Node node) {
    return node.getStartMark().getColumn();
  }

  /** The dash before an item of a list that is written with dashes; below 0 if there is none. */
  int dash(Node item) {
    int at = start(item) - 1;
    while (at >= 0 && Character.isWhitespace(text.charAt(at))) {
      at--;
    }
    return at >= 0 && text.charAt(at) == '-' ? at : -1;
  }

  static boolean isFlow(Node node) {
    return node instanceof CollectionNode<?> c && c.getFlowStyle() == DumperOptions.FlowStyle.FLOW;
  }

  /** Written over lines of its own, with dashes or keys. */
  static boolean isBlock(Node node) {
    return node instanceof CollectionNode<?> && !isFlow(node);
  }

  static boolean isNothing(Node node) {
    return node instanceof ScalarNode scalar
        && scalar.getTag().equals(Tag.NULL)
        && scalar.isPlain();
  }

  /** By how much this file sets a block in below its key. */
  int indent(Node root) {
    if (root instanceof MappingNode mapping && isBlock(root)) {
      for (NodeTuple tuple : mapping.getValue()) {
        Node value = tuple.getValueNode();
        int deeper = column(value) - column(tuple.getKeyNode());
        if (value instanceof MappingNode && isBlock(value) && deeper > 0) {
          return deeper;
        }
      }
    }
    return USUAL_INDENT;
  }
}
