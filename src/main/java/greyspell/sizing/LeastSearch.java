package greyspell.sizing;

import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * The first place of an axis that meets a target, found without trying them all. More panels or a
 * larger bank mostly leave less unmet, so the search gallops from a place that is near and halves
 * what is between a place that misses and one that meets.
 *
 * <p>Mostly is not always: each pack and each controller draws something of its own, a bank loses
 * charge at rest, and a generator or a rule starts at another hour. So the places right below the
 * answer are tried as well, until two in a row miss; and where neither end meets, the place that
 * misses least is closed in on from both sides before it is said that none does. Held against
 * trying all of them on shipped homes, with and without a generator: SizeStudyTest.
 */
final class LeastSearch {
  /** Places in a row that must miss below the answer. */
  private static final int MISSES = 2;

  private final int count;
  private final Axis axis;
  private final TreeMap<Integer, Boolean> tried = new TreeMap<>();

  /** Places by rising size. */
  interface Axis {
    boolean isMet(int place);

    /** By how much a place that misses does so; asked only where none has met. */
    double missedBy(int place);
  }

  private LeastSearch(int count, Axis axis) {
    this.count = count;
    this.axis = axis;
  }

  /**
   * The first place that meets, or {@code count} if there is none.
   *
   * @param near a place that may be near it; changes how many are tried
   */
  static int least(int count, int near, Axis axis) {
    if (count == 0) {
      return 0;
    }
    return new LeastSearch(count, axis).from(Math.max(0, Math.min(near, count - 1)));
  }

  private boolean isMet(int place) {
    return tried.computeIfAbsent(place, axis::isMet);
  }

  private int from(int near) {
    int meets = isMet(near) ? near : upFrom(near);
    if (meets == count) {
      meets = downFrom(near);
    }
    if (meets == count) {
      meets = closingIn();
    }
    return meets == count ? count : below(between(meets));
  }

  private int upFrom(int near) {
    for (int step = 1, place = near; place < count - 1; step *= 2) {
      place = Math.min(count - 1, place + step);
      if (isMet(place)) {
        return place;
      }
    }
    return count;
  }

  private int downFrom(int near) {
    for (int step = 1, place = near; place > 0; step *= 2) {
      place = Math.max(0, place - step);
      if (isMet(place)) {
        return place;
      }
    }
    return count;
  }

  /** Halves the gaps on both sides of the place that misses least. */
  private int closingIn() {
    while (true) {
      int best = -1;
      double leastBy = Double.POSITIVE_INFINITY;
      for (int place : tried.keySet()) {
        double by = axis.missedBy(place);
        if (by < leastBy) {
          leastBy = by;
          best = place;
        }
      }
      @Nullable Integer lower = tried.lowerKey(best);
      @Nullable Integer higher = tried.higherKey(best);
      int left = lower == null ? best : (lower + best) / 2;
      int right = higher == null ? best : (higher + best + 1) / 2;
      boolean isLeft = lower != null && left != lower && left != best;
      boolean isRight = higher != null && right != higher && right != best;
      if (!isLeft && !isRight) {
        return count;
      }
      if (isLeft && isMet(left)) {
        return left;
      }
      if (isRight && isMet(right)) {
        return right;
      }
    }
  }

  /** The first that meets between a place that does and the next known one below that does not. */
  private int between(int meets) {
    int high = meets;
    if (isMet(high) && tried.lowerKey(high) == null) {
      gallopDown(high);
    }
    while (true) {
      @Nullable Integer first = firstMet();
      if (first == null) {
        return count;
      }
      high = first;
      @Nullable Integer low = tried.lowerKey(high);
      if (low == null ? high == 0 : low == high - 1) {
        return high;
      }
      isMet(((low == null ? -1 : low) + high) / 2);
    }
  }

  private void gallopDown(int from) {
    int place = from;
    for (int step = 1; place > 0 && isMet(place); step *= 2) {
      place = Math.max(0, place - step);
    }
  }

  private @Nullable Integer firstMet() {
    for (var entry : tried.entrySet()) {
      if (entry.getValue()) {
        return entry.getKey();
      }
    }
    return null;
  }

  private int below(int found) {
    int best = found;
    for (int place = found - 1, misses = 0; place >= 0 && misses < MISSES; place--) {
      if (isMet(place)) {
        best = place;
        misses = 0;
      } else {
        misses++;
      }
    }
    return best;
  }
}
