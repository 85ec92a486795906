package greyspell.published;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * A test class that holds published values: implement {@link #checks}, each becomes a test and a
 * line of docs/validation.md.
 */
public interface PublishedChecks {
  List<PublishedCheck> checks();

  @TestFactory
  default Stream<DynamicTest> holdsThePublishedValues() {
    return checks().stream().map(c -> DynamicTest.dynamicTest(c.what(), c::hold));
  }
}
