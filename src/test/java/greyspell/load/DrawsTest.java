package greyspell.load;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class DrawsTest {
  @Test
  void drawsWhatTheStandardLibraryDraws() {
    for (long seed : new long[] {0, 1, -7, 0x5851F42D4C957F2DL}) {
      var draws = new Draws(seed);
      var random = new SplittableRandom(seed);
      for (int n = 0; n < 1000; n++) {
        assertEquals(random.nextDouble(), draws.next(), 0.0);
      }
    }
  }

  @Test
  void whatFollowsASkipIsWhatWouldHaveFollowed() {
    Draws all = new Draws(5), some = new Draws(5);
    for (int n = 0; n < 300; n++) {
      all.next();
    }
    some.skip(120);
    some.skip(180);
    assertEquals(all.next(), some.next(), 0.0);
  }
}
