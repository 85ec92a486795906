package greyspell.scenario;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Which files, besides its own, a scenario is read from. */
public final class ScenarioFiles {
  private ScenarioFiles() {}

  /** Weather, load log and second source, as far as the scenario names them. */
  public static List<Path> named(Scenario home) {
    var files = new ArrayList<Path>();
    home.weather().files().forEach(f -> files.add(f.path()));
    home.weather().years().forEach(f -> files.add(f.path()));
    if (home.weather().means() != null) {
      files.add(home.weather().means().path());
    }
    if (home.load().log() != null) {
      files.add(Path.of(home.load().log().file()));
    }
    if (home.otherSource() != null) {
      files.add(Path.of(home.otherSource().resolvedPath()));
    }
    return files;
  }

  /**
   * The files of the equipment library that a scenario at this place is read with, in the order of
   * their names; none if there is no library.
   *
   * @param folder given by the user, null to look for it as the reader does
   */
  public static List<Path> library(Path scenario, @Nullable Path folder) {
    Path found = folder == null ? Library.find(scenario, ScenarioReader.programFolder()) : folder;
    if (found == null) {
      return List.of();
    }
    try (var files = Files.list(found)) {
      return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
