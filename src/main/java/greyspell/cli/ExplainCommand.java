package greyspell.cli;

import greyspell.cause.Said;
import greyspell.cause.SaidValue.Count;
import greyspell.cause.SaidValue.Name;
import greyspell.cause.SaidValue.Phrase;
import greyspell.quantity.BadInput;
import greyspell.quantity.Place;
import greyspell.report.ExplainJson;
import greyspell.report.ExplainText;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioEdit;
import greyspell.scenario.ScenarioReader;
import greyspell.study.ExplainStudy;
import greyspell.study.Explanation;
import greyspell.study.Trials;
import greyspell.study.WintersWanted;
import greyspell.weather.ensemble.WinterSource;
import greyspell.words.Words;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Why the lights went out, and what would have kept them on. */
@Command(
    name = "explain",
    description = {
      "Tells why the lights go out and what would prevent it.",
      "The causes with their shares, the dark spells day by day, the smallest changes that prevent them, each of them run. With --out it writes pages to hand over."
    },
    footer = {
      "",
      "Example: greyspell explain scenarios/alder-fold.yaml --out out",
      "",
      "Exit codes: 0 done; 1 done, and something went unserved with --warn; 2 bad input."
    },
    mixinStandardHelpOptions = true)
final class ExplainCommand implements Callable<Integer> {
  /** Each winter is run several hundred times. */
  private static final int MOST_WINTERS = 100;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "SCENARIO", description = "The scenario file.")
  private Path scenario = Path.of("");

  @Mixin private WintersOption winters = new WintersOption();

  @Option(names = "--json", description = "Print everything for other programs.")
  private boolean json;

  @Option(names = "--warn", description = "End with exit code 1 if anything goes unserved.")
  private boolean warn;

  @Option(
      names = "--language",
      paramLabel = "LANGUAGE",
      description = "Language of the sentences: en or de.")
  private String language = "en";

  @Mixin private HandoverOption handover = new HandoverOption();

  @Mixin private LibraryOption library = new LibraryOption();

  @Override
  public Integer call() throws IOException {
    PrintWriter screen = spec.commandLine().getOut();
    Words words = words();
    Scenario home = ScenarioReader.read(scenario, library.folder());
    Explanation told;
    List<Path> files;
    try (var progress = Progress.onTerminal()) {
      handover.start(home);
      told = explain(home, progress);
      files = handover.write(told, words, progress);
    }
    screen.print(json ? ExplainJson.text(told, words) : ExplainText.of(told, words));
    if (!json) {
      files.forEach(file -> screen.println(file));
    }
    screen.flush();
    return warn && told.verdict().meanUnmetHours() > 0.0 ? Main.FOUND : 0;
  }

  private Explanation explain(Scenario home, Progress progress) {
    winters.atMost(MOST_WINTERS);
    WintersWanted wanted = winters.find(home);
    Trials trials;
    Said weather;
    if (wanted == null) {
      trials = Trials.of(home, progress::step);
      weather =
          Said.of(
              "weather.file",
              new Name(home.name()),
              new Count(trials.years()),
              new Name(files(home)));
    } else {
      WinterSource source = wanted.draw(home).source();
      int count = Math.min(source.years(), MOST_WINTERS);
      trials = Trials.of(home, source, count, progress::step);
      weather = Said.of("weather.drawn", new Count(count), new Phrase(source.describe()));
    }
    return ExplainStudy.of(
        trials, weather, ScenarioEdit.of(scenario), library.folder(), progress::step);
  }

  private static String files(Scenario home) {
    var names = new ArrayList<String>();
    home.weather().files().forEach(f -> names.add(f.file()));
    home.weather().years().forEach(f -> names.add(f.file()));
    return String.join(", ", names);
  }

  private Words words() {
    if (!Words.LANGUAGES.contains(language)) {
      throw BadInput.of(
          Place.of("--language"),
          "found \"" + language + '"',
          "must be one of " + String.join(", ", Words.LANGUAGES),
          "Write --language en.");
    }
    return Words.of(language, handover.units());
  }
}
