package greyspell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A model that says which test holds it names one that exists. */
class HeldByTest {
  private static final Pattern TEST = Pattern.compile("\\b[A-Z][A-Za-z0-9]+Test\\b");

  @Test
  void testsThatAreNamedExist() throws IOException {
    Set<String> known = new TreeSet<>();
    for (Path file : javaFiles("src/test/java")) {
      known.add(file.getFileName().toString().replace(".java", ""));
    }
    Set<String> lost = new TreeSet<>();
    int named = 0;
    for (Path file : javaFiles("src/main/java")) {
      var found = TEST.matcher(Files.readString(file));
      while (found.find()) {
        named++;
        if (!known.contains(found.group())) {
          lost.add(file.getFileName() + " names " + found.group());
        }
      }
    }
    assertTrue(named > 50, "only " + named + " tests are named: is the pattern right?");
    assertEquals(Set.of(), lost);
  }

  private static Set<Path> javaFiles(String folder) throws IOException {
    try (Stream<Path> files = Files.walk(Path.of(folder))) {
      var all = new TreeSet<Path>();
      files.filter(f -> f.toString().endsWith(".java")).forEach(all::add);
      return all;
    }
  }
}
