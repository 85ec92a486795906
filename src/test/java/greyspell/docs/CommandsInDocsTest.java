package greyspell.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.cli.CommandLines;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every command that a document shows is run. */
class CommandsInDocsTest {
  private static final Pattern COMMAND =
      Pattern.compile(
          "(?:target/)?greyspell "
              + "((?:run|new|check|strings|load|effects|sweep|weather|compare) [^`\\n&|#]+)");

  private static final Pattern WORD = Pattern.compile("\"[^\"]*\"|[^\\s\\\\]+");

  @TempDir private Path folder = Path.of("");

  @Test
  void everyShownCommandWorks() throws IOException {
    var commands = new ArrayList<String>();
    for (String document :
        List.of(
            "README.md",
            "DEVELOPERS.md",
            "weather-samples/README.md",
            "docs/weather-files.md",
            "docs/compare.md",
            "docs/sweep.md",
            "docs/winters.md",
            "docs/loads.md")) {
      String text = Files.readString(Path.of(document));
      var inFence =
          Pattern.compile("(?ms)^```sh\\n(.*?)^```|^    (greyspell [^\\n]*)").matcher(text);
      while (inFence.find()) {
        var command = COMMAND.matcher(inFence.group());
        while (command.find()) {
          commands.add(command.group(1).strip());
        }
      }
    }
    assertTrue(commands.size() >= 6, "found " + commands);
    for (String command : commands) {
      var args = new ArrayList<String>();
      var words = WORD.matcher(command);
      while (words.find()) {
        String word = words.group().replace("\"", "");
        boolean isOutput =
            !args.isEmpty() && List.of("--out", "--pictures").contains(args.get(args.size() - 1));
        args.add(
            isOutput || word.endsWith("-home.yaml")
                ? folder.resolve(word.replace('/', '-')).toString()
                : word);
      }
      if (args.contains("load") || args.contains("effects") || args.contains("sweep")) {
        args.addAll(List.of("--library", "shared"));
      }
      if (args.contains("run")) {
        args.add("--no-pictures");
        args.addAll(List.of("--library", "shared"));
        if (!args.contains("--out")) {
          args.addAll(List.of("--out", folder.resolve("out").toString()));
        }
      }
      assertEquals(0, CommandLines.run(args), command);
    }
  }

  /** The verdict that the README quotes is what its own command prints. */
  @Test
  void theReadmeQuotesTheVerdictAsItIs() throws IOException {
    String said =
        CommandLines.printed(
            List.of(
                "run",
                "scenarios/alder-fold.yaml",
                "--no-pictures",
                "--out",
                folder.resolve("o").toString()));
    String verdict =
        said.substring(
            said.indexOf("The lights"), said.indexOf("\n\n", said.indexOf("The lights")));
    assertTrue(Files.readString(Path.of("README.md")).contains(verdict), verdict);
  }

  /** So are the words and tables that docs/winters.md quotes, up to the cautions. */
  @Test
  void theWintersQuotedAreThoseThatAreRun() throws IOException {
    String said =
        CommandLines.printed(
            List.of(
                "run",
                "scenarios/tamarisk-mesa.yaml",
                "--winters",
                "100",
                "--how",
                "made",
                "--no-pictures",
                "--out",
                folder.resolve("w").toString()));
    String quoted = said.substring(0, said.indexOf("\n\n  Caution"));
    assertTrue(Files.readString(Path.of("docs/winters.md")).contains(quoted + "\n```"), quoted);
  }
}
