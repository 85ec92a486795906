package greyspell.scenario;

import greyspell.quantity.BadInput;
import greyspell.quantity.FileTrouble;
import greyspell.quantity.Place;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.composer.Composer;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.ReaderException;
import org.yaml.snakeyaml.reader.StreamReader;
import org.yaml.snakeyaml.resolver.Resolver;

/**
 * A YAML file as a tree of nodes with line and column. Nothing is constructed from tags, aliases
 * and nesting are limited, and a file too large for a home is refused before it is read.
 */
final class YamlFile {
  private static final int MOST_BYTES = 1_000_000;
  private static final int MOST_ALIASES = 20;
  private static final int DEEPEST = 30;
  private static final String MEND_SPACES = "Set keys in with spaces, never with tabs.";

  private YamlFile() {}

  static Node read(Path file, String shownName) {
    return compose(text(file, shownName), shownName);
  }

  static String text(Path file, String shownName) {
    return text(bytes(file, shownName), shownName);
  }

  private static byte[] bytes(Path file, String name) {
    if (!Files.exists(file)) {
      throw BadInput.of(
          Place.of(name),
          "no such file",
          "must be a file that exists",
          "Check the spelling and the folder.");
    }
    if (Files.isDirectory(file)) {
      throw BadInput.of(
          Place.of(name), "this is a folder", "must be a file", "Name a file inside it.");
    }
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(MOST_BYTES + 1);
      if (bytes.length > MOST_BYTES) {
        throw BadInput.of(
            Place.of(name),
            "the file is larger than 1 MB",
            "must be a YAML text of a few hundred lines",
            "Is this the right file?");
      }
      return bytes;
    } catch (IOException e) {
      throw BadInput.of(
          Place.of(name),
          "cannot be read (" + FileTrouble.words(e) + ")",
          "must be a readable file",
          "Check who may read it.");
    }
  }

  private static String text(byte[] bytes, String name) {
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length);
    CoderResult result = decoder.decode(in, out, true);
    if (result.isError()) {
      throw BadInput.of(
          place(name, out.flip()),
          "bytes that are not UTF-8 text",
          "must be plain text in UTF-8",
          "Save it as UTF-8; the degree sign may also be written \"deg\" or \"C\".");
    }
    String text = out.flip().toString();
    return text.startsWith("\ufeff") ? text.substring(1) : text;
  }

  /** Just after this much text. */
  private static Place place(String name, CharSequence before) {
    int line = 1;
    int column = 1;
    for (int i = 0; i < before.length(); i++) {
      column++;
      if (before.charAt(i) == '\n') {
        line++;
        column = 1;
      }
    }
    return new Place(name, line, column);
  }

  static Node compose(String text, String name) {
    var options = new LoaderOptions();
    options.setMaxAliasesForCollections(MOST_ALIASES);
    options.setNestingDepthLimit(DEEPEST);
    options.setCodePointLimit(MOST_BYTES);
    try {
      var reader = new StreamReader(text);
      Node root =
          new Composer(new ParserImpl(reader, options), new Resolver(), options).getSingleNode();
      if (root == null) {
        throw BadInput.of(
            Place.of(name),
            "the file is empty",
            "must hold a scenario in YAML",
            "Make a starter with: greyspell new FILE");
      }
      return root;
    } catch (ReaderException e) {
      throw BadInput.of(
          place(name, text.substring(0, Math.min(text.length(), Math.max(0, e.getPosition())))),
          "a character that a text cannot hold",
          "must be plain text in UTF-8",
          "Is this the right file?");
    } catch (MarkedYAMLException e) {
      throw marked(e, name);
    } catch (YAMLException | StackOverflowError e) {
      throw BadInput.of(
          Place.of(name),
          "nested or referred to too often",
          "must be a plain list of keys, at most " + DEEPEST + " levels deep",
          "Write values out instead of using anchors.");
    }
  }

  private static BadInput marked(MarkedYAMLException e, String name) {
    Mark mark = e.getProblemMark() != null ? e.getProblemMark() : e.getContextMark();
    Place place =
        mark == null ? Place.of(name) : new Place(name, mark.getLine() + 1, mark.getColumn() + 1);
    String problem = e.getProblem() == null ? "not YAML" : e.getProblem();
    String mend =
        problem.contains("TAB") || problem.contains("\\t")
            ? MEND_SPACES
            : "Look at this line and the one above: a missing colon, quote or bracket, or keys that"
                + " are not set in alike.";
    return BadInput.of(
        place, "not YAML: " + Border.shown(problem), "must be \"key: value\" lines", mend);
  }
}
