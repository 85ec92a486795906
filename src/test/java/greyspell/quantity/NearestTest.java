package greyspell.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearestTest {
  private static final List<String> KEYS = List.of("elevation", "latitude", "utc_offset", "tilt");

  @Test
  void findsAMistypedWord() {
    assertEquals("elevation", Nearest.of("elevaton", KEYS));
    assertEquals("tilt", Nearest.of("titl", KEYS));
    assertEquals("utc_offset", Nearest.of("UTC offset", KEYS));
  }

  @Test
  void guessesNothingFarFetched() {
    assertNull(Nearest.of("panels", KEYS));
    assertNull(Nearest.of("", KEYS));
  }
}
