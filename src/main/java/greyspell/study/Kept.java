package greyspell.study;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;

/**
 * What was worked out for one home and is asked for again by the next; the longest unused goes
 * first. Safe for several threads: two may work out the same thing, and get the same.
 */
final class Kept {
  private final int most;
  private final Map<Object, Object> things = new LinkedHashMap<>(16, 0.75f, true);

  /** Keeps so many things; none for 0. */
  Kept(int most) {
    this.most = most;
  }

  @SuppressWarnings("unchecked") // a key is of one class for one kind of thing
  <T> T get(Record key, Supplier<T> work) {
    synchronized (things) {
      Object found = things.get(key);
      if (found != null) {
        return (T) found;
      }
    }
    T made = work.get();
    synchronized (things) {
      if (most > 0) {
        things.put(key, made);
      }
      if (things.size() > most) {
        var oldest = things.keySet().iterator();
        oldest.next();
        oldest.remove();
      }
    }
    return made;
  }
}
