package greyspell.scenario;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/** The items of a list in a scenario file, by number or by name. */
final class EditItems {
  static final int NONE = -1;
  static final int SEVERAL = -2;
  private static final int MOST_LISTED = 12;

  /** Where an item's name stands, the surest first. */
  private static final List<String> NAMES = List.of("name", "from", "run");

  private EditItems() {}

  /** Below 0: {@link #NONE} or {@link #SEVERAL} of this name. */
  static int find(SequenceNode list, String item) {
    if (item.chars().allMatch(c -> c >= '0' && c <= '9')) {
      int i = item.length() > 6 ? Integer.MAX_VALUE : Integer.parseInt(item);
      return i < list.getValue().size() ? i : NONE;
    }
    for (String key : NAMES) {
      int found = byName(list, key, item);
      if (found != NONE) {
        return found;
      }
    }
    return NONE;
  }

  private static int byName(SequenceNode list, String key, String item) {
    int found = NONE;
    for (int i = 0; i < list.getValue().size(); i++) {
      String name = text(list.getValue().get(i), key);
      if (name != null && name.equalsIgnoreCase(item)) {
        found = found == NONE ? i : SEVERAL;
      }
    }
    return found;
  }

  private static @Nullable String text(Node item, String key) {
    if (item instanceof ScalarNode bare) {
      return key.equals("from") ? bare.getValue().strip() : null;
    }
    NodeTuple tuple = item instanceof MappingNode m ? ScenarioEdit.tuple(m, key) : null;
    return tuple != null && tuple.getValueNode() instanceof ScalarNode scalar
        ? scalar.getValue().strip()
        : null;
  }

  /** What there is, for who named what is not. */
  static String listed(SequenceNode list) {
    var shown = new ArrayList<String>();
    for (int i = 0; i < list.getValue().size() && i < MOST_LISTED; i++) {
      shown.add("[" + i + "] " + label(list.getValue().get(i)));
    }
    if (list.getValue().size() > MOST_LISTED) {
      shown.add("and " + (list.getValue().size() - MOST_LISTED) + " more");
    }
    return shown.isEmpty() ? "The list is empty." : "There are: " + String.join(", ", shown) + ".";
  }

  private static String label(Node item) {
    for (String key : NAMES) {
      String name = text(item, key);
      if (name != null) {
        return Border.shown(name);
      }
    }
    return "without a name";
  }
}
