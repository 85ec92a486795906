package greyspell.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Where the equipment library lies. */
final class LibraryOption {
  @Option(
      names = "--library",
      paramLabel = "DIR",
      description =
          "Folder of the equipment library. Without it the nearest folder 'shared' at or above the scenario, then beside the program.")
  private @Nullable Path folder;

  @Nullable Path folder() {
    return folder;
  }
}
