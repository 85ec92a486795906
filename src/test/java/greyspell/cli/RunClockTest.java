package greyspell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class RunClockTest {
  @Test
  void tellsTheTimeLeftAtThePaceOfItsOwnRuns() {
    var clock = new RunClock(10, 40);
    assertEquals("10 of 40 runs", clock.words(5.0));
    assertEquals(0.25, clock.share());
    clock.one();
    clock.one();
    assertEquals("12 of 40 runs, about 28 s left", clock.words(2.0));
    assertEquals("12 of 40 runs, about 5 min left", clock.words(20.0));
    assertEquals("12 of 40 runs, about 1.6 h left", clock.words(400.0));
  }
}
