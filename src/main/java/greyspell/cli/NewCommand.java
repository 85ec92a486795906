package greyspell.cli;

import greyspell.quantity.BadInput;
import greyspell.quantity.Nearest;
import greyspell.quantity.Place;
import greyspell.scenario.StarterScenario;
import greyspell.scenario.StarterScenario.Answers;
import greyspell.scenario.TypicalHome;
import java.io.Console;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A scenario to begin with. */
@Command(
    name = "new",
    description = {
      "Writes a commented starter scenario that runs as it is.",
      "On a terminal a few questions are asked first; Enter keeps what is shown."
    },
    footer = {
      "",
      "Example: greyspell new my-home.yaml",
      "Example: greyspell new --home family my-home.yaml"
    },
    mixinStandardHelpOptions = true)
final class NewCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      index = "0",
      paramLabel = "FILE",
      description = "The file to write; an existing one is never touched.")
  private Path file = Path.of("");

  @Option(
      names = "--home",
      paramLabel = "KIND",
      description =
          "A typical home to start from: cabin, couple, family, smallholding, all_electric.")
  private @Nullable String home;

  @Option(names = "--no-questions", description = "Ask nothing, also on a terminal.")
  private boolean noQuestions;

  @Override
  public Integer call() {
    PrintWriter screen = spec.commandLine().getOut();
    Console console = noQuestions ? null : Terminal.console();
    TypicalHome kind = kind();
    StarterScenario.write(file, console == null ? Answers.NONE : ask(console), kind);
    screen.println("Wrote " + file + ". Run it as it is:");
    screen.println(
        "  greyspell run " + (file.toString().contains(" ") ? "\"" + file + "\"" : file));
    return 0;
  }

  private @Nullable TypicalHome kind() {
    String asked = home;
    if (asked == null) {
      return null;
    }
    var known = new ArrayList<String>();
    for (TypicalHome kind : TypicalHome.values()) {
      if (kind.word().equals(asked)) {
        return kind;
      }
      known.add(kind.word());
    }
    String nearest = Nearest.of(asked, known);
    throw BadInput.of(
        Place.of("--home"),
        "found \"" + asked + "\"",
        "must be one of: " + String.join(", ", known),
        nearest == null ? "" : "Nearest: \"" + nearest + "\".");
  }

  private static Answers ask(Console console) {
    console.printf("A few questions; Enter keeps the example's own value.%n");
    return new Answers(
        text(console, "Name of the home"),
        number(console, "Latitude in degrees, south negative", -90, 90),
        number(console, "Longitude in degrees, west negative", -180, 180),
        whole(number(console, "How many panels", 1, 10_000)),
        times(number(console, "Bank in kWh", 0.1, 10_000), 1000.0),
        times(number(console, "Use of a usual day in kWh", 0.01, 1000), 1000.0));
  }

  private static @Nullable String text(Console console, String question) {
    String answer = console.readLine("%s: ", question);
    return answer == null || answer.isBlank() ? null : answer.strip();
  }

  private static @Nullable Double number(
      Console console, String question, double low, double high) {
    String answer = text(console, question);
    if (answer == null) {
      return null;
    }
    try {
      double value = Double.parseDouble(answer.replace(',', '.'));
      if (value >= low && value <= high) {
        return value;
      }
    } catch (NumberFormatException e) {
      // told below with the same words as a number out of range
    }
    throw BadInput.of(
        Place.of("answer"),
        question + ": found \"" + answer + "\"",
        "must be a number from " + low + " to " + high,
        "Start again; nothing was written.");
  }

  private static @Nullable Integer whole(@Nullable Double value) {
    return value == null ? null : (int) Math.round(value);
  }

  private static @Nullable Double times(@Nullable Double value, double factor) {
    return value == null ? null : value * factor;
  }
}
