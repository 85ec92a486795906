package greyspell.published;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.function.DoubleSupplier;

/**
 * One value held against the outside. {@code docs/validation.md} is written from these, so that it
 * cannot drift.
 *
 * @param room package under test, the heading in the document
 * @param source author, year, title, table or page; ends in "(from memory)" where no copy was
 *     opened
 * @param what the case, with its inputs
 * @param unit of the value
 * @param expected as printed in the source
 * @param tolerance half the last printed digit, or the source's own stated error
 * @param got computes our value
 */
public record PublishedCheck(
    String room,
    String source,
    String what,
    String unit,
    double expected,
    double tolerance,
    DoubleSupplier got) {
  public void hold() {
    assertEquals(expected, got.getAsDouble(), tolerance, source + ": " + what);
  }
}
