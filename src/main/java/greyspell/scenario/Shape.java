package greyspell.scenario;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A block of keys.
 *
 * @param name as people say it: "site", "array"
 * @param meaning one sentence
 * @param shortKey the key that a bare value stands for ({@code weather: file.csv}), null if the
 *     block cannot be written so
 * @param library the file of the equipment library whose entries have this shape, empty if none
 */
record Shape(String name, String meaning, List<Key> keys, @Nullable Key shortKey, String library) {

  static Shape of(String name, String meaning, Key... keys) {
    return new Shape(name, meaning, List.of(keys), null, "");
  }

  /** The first key may be written as a bare value. */
  static Shape shortened(String name, String meaning, Key... keys) {
    return new Shape(name, meaning, List.of(keys), keys[0], "");
  }

  /** Equipment: a bare value, or the first key, names an entry of the library. */
  static Shape equipment(String name, String library, String meaning, Key... keys) {
    return new Shape(name, meaning, List.of(keys), keys[0], library);
  }

  boolean isEquipment() {
    return !library.isEmpty();
  }

  @Nullable Key find(String keyName) {
    for (int i = 0; i < keys.size(); i++) {
      if (keys.get(i).name.equals(keyName)) {
        return keys.get(i);
      }
    }
    return null;
  }

  List<String> keyNames() {
    return keys.stream().map(Key::toString).toList();
  }
}
