package greyspell.chart;

import greyspell.scenario.ScenarioReader;
import greyspell.study.Study;
import greyspell.study.StudyResult;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;

/**
 * A home with everything in it: lead-acid followed by its voltage, an engine, a stream turbine,
 * rules, an inverter that searches, guessed loads, a medical one, service years. Run once.
 */
public final class FullHome {
  public static final StudyResult RESULT = run();

  private FullHome() {}

  private static StudyResult run() {
    try (var text = FullHome.class.getResourceAsStream("/greyspell/chart/full-home.yaml")) {
      Path folder = Files.createTempDirectory("full-home");
      String yaml =
          new String(Objects.requireNonNull(text).readAllBytes(), StandardCharsets.UTF_8)
              .replace(
                  "WEATHER",
                  Path.of("weather-samples/grey-maritime.csv").toAbsolutePath().toString());
      Path file = Files.writeString(folder.resolve("full-home.yaml"), yaml);
      Path stream = Files.writeString(folder.resolve("stream.csv"), stream());
      try {
        return Study.run(ScenarioReader.read(file, Path.of("shared")), (what, doneShare) -> {});
      } finally {
        Files.delete(stream);
        Files.delete(file);
        Files.delete(folder);
      }
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  /** 25 W for twenty hours of each day of a year. */
  private static String stream() {
    var out = new StringBuilder("source_w\n");
    for (int h = 0; h < 8760; h++) {
      out.append(h % 24 < 20 ? "25\n" : "0\n");
    }
    return out.toString();
  }
}
