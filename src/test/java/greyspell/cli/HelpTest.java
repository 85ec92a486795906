package greyspell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/** What every command says of itself. */
final class HelpTest {
  private static final Pattern NAMED_FILE =
      Pattern.compile("(?:scenarios|weather-samples)/[\\w-]+\\.(?:yaml|csv)");

  private static final Pattern NAMED_EQUIPMENT =
      Pattern.compile("--(module|controller|generator) \"([^\"]+)\"");

  private static final Pattern WORD = Pattern.compile("(?:\"[^\"]*\"|[^\\s\"])+");

  static Stream<CommandSpec> commands() {
    var all = new ArrayList<CommandSpec>();
    gather(Main.commandLine(), all);
    return all.stream();
  }

  private static void gather(CommandLine command, List<CommandSpec> all) {
    all.add(command.getCommandSpec());
    command.getSubcommands().values().forEach(sub -> gather(sub, all));
  }

  /** Help texts are formats: a bare per cent sign makes the program complain on the terminal. */
  @ParameterizedTest
  @MethodSource("commands")
  void everyTextCanBeShown(CommandSpec command) {
    var complaints = new ByteArrayOutputStream();
    PrintStream usual = System.err;
    System.setErr(new PrintStream(complaints, true, StandardCharsets.UTF_8));
    try {
      assertFalse(command.commandLine().getUsageMessage().isEmpty());
    } finally {
      System.setErr(usual);
    }
    assertEquals("", complaints.toString(StandardCharsets.UTF_8));
  }

  @ParameterizedTest
  @MethodSource("commands")
  void examplesNameFilesThatAreThere(CommandSpec command) {
    for (String line : command.usageMessage().footer()) {
      var named = NAMED_FILE.matcher(line.replaceAll("--write \\S+", ""));
      while (line.startsWith("Example:") && named.find()) {
        assertTrue(Files.exists(Path.of(named.group())), line);
      }
    }
  }

  /** Options are known, needed ones given, numbers are numbers. */
  @ParameterizedTest
  @MethodSource("commands")
  void examplesAreUnderstood(CommandSpec command) {
    for (String example : examples(command)) {
      var words = new ArrayList<String>();
      var found = WORD.matcher(example);
      while (found.find()) {
        words.add(found.group().replace("\"", ""));
      }
      assertEquals("greyspell", words.get(0), example);
      Main.commandLine().parseArgs(words.subList(1, words.size()).toArray(String[]::new));
    }
  }

  @ParameterizedTest
  @MethodSource("commands")
  void examplesNameEquipmentOfTheLibrary(CommandSpec command) throws IOException {
    for (String example : examples(command)) {
      var named = NAMED_EQUIPMENT.matcher(example);
      while (named.find()) {
        String sheets = Files.readString(Path.of("shared", named.group(1) + "s.yaml"));
        assertTrue(sheets.contains("- name: " + named.group(2) + "\n"), example);
      }
    }
  }

  /** Files are named relative to a scenario: one that is saved elsewhere cannot be run. */
  @ParameterizedTest
  @MethodSource("commands")
  void examplesSaveScenariosBesideTheOldOne(CommandSpec command) {
    for (String example : examples(command)) {
      assertTrue(!example.contains("--write ") || example.contains("--write scenarios/"), example);
    }
  }

  /** A line that begins with --, or with VALUES, belongs to the example above it. */
  private static List<String> examples(CommandSpec command) {
    var examples = new ArrayList<String>();
    for (String line : command.usageMessage().footer()) {
      if (line.startsWith("Example: ")) {
        examples.add(line.substring("Example: ".length()).strip());
      } else if (line.strip().startsWith("--") && !examples.isEmpty()) {
        examples.set(examples.size() - 1, examples.get(examples.size() - 1) + " " + line.strip());
      }
    }
    return examples;
  }

  /** The list of commands shows the first line alone. */
  @ParameterizedTest
  @MethodSource("commands")
  void theFirstLineIsAWholeSentence(CommandSpec command) {
    String[] description = command.usageMessage().description();
    if (description.length > 0 && !command.name().equals("greyspell")) {
      assertTrue(description[0].endsWith("."), description[0]);
      assertFalse(description[0].length() > 90, description[0]);
    }
  }
}
