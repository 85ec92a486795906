package greyspell.cli;

import greyspell.scenario.Scenario;
import greyspell.study.Study.Steps;
import greyspell.study.Trials;
import greyspell.study.WintersDrawn;
import greyspell.study.WintersWanted;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** In which weather variants of a home are tried. */
final class WeatherChoice {
  @Option(
      names = "--winters",
      paramLabel = "N",
      description = "Look at so many winters instead of the weather file's own years.")
  private @Nullable Integer winters;

  /** The scenario's own years, or the winters that it or the command line asks for. */
  Trials trials(Scenario home, Steps steps) {
    if (winters == null && home.weather().winters() == null) {
      return Trials.of(home, steps);
    }
    WintersDrawn drawn = WintersWanted.of(home, winters).draw(home);
    return Trials.of(home, drawn.source(), drawn.source().years(), steps);
  }
}
