package greyspell.scenario;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/**
 * Every value of a YAML tree by its path, so that a change to the text can be held against what it
 * was to change: that, and nothing else.
 */
final class EditCheck {
  private EditCheck() {}

  /** A bare value stands at the key that it is short for; what is empty is left out. */
  static Map<String, String> values(Node node, @Nullable Shape shape, String path) {
    var values = new LinkedHashMap<String, String>();
    gather(node, shape, path, values);
    return values;
  }

  private static void gather(
      Node node, @Nullable Shape shape, String path, Map<String, String> values) {
    if (node instanceof MappingNode mapping) {
      for (NodeTuple tuple : mapping.getValue()) {
        String name =
            tuple.getKeyNode() instanceof ScalarNode scalar ? scalar.getValue() : "(no word)";
        Key key = shape == null ? null : shape.find(name);
        gather(tuple.getValueNode(), key == null ? null : key.shape, join(path, name), values);
      }
    } else if (node instanceof SequenceNode list) {
      for (int i = 0; i < list.getValue().size(); i++) {
        gather(list.getValue().get(i), shape, path + "[" + i + "]", values);
      }
    } else if (node instanceof ScalarNode scalar && !YamlLayout.isNothing(node)) {
      Key brief = shape == null ? null : shape.shortKey();
      values.put(brief == null ? path : join(path, brief.name), scalar.getValue());
    }
  }

  static String join(String path, String name) {
    return path.isEmpty() ? name : path + "." + name;
  }

  static boolean isBelow(String path, String top) {
    return path.equals(top) || path.startsWith(top + ".") || path.startsWith(top + "[");
  }

  /** Without all that stands below; of a list the later items move up. */
  static Map<String, String> without(Map<String, String> values, String top) {
    var left = new LinkedHashMap<String, String>();
    values.forEach(
        (path, value) -> {
          if (!isBelow(path, top)) {
            left.put(moved(path, top), value);
          }
        });
    return left;
  }

  private static String moved(String path, String top) {
    if (!top.endsWith("]")) {
      return path;
    }
    int open = top.lastIndexOf('[');
    String list = top.substring(0, open + 1);
    int close = path.indexOf(']', open);
    if (!path.startsWith(list) || close < 0) {
      return path;
    }
    int i = Integer.parseInt(path.substring(open + 1, close));
    int gone = Integer.parseInt(top.substring(open + 1, top.length() - 1));
    return i > gone ? list + (i - 1) + path.substring(close) : path;
  }
}
