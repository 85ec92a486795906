package greyspell.report;

import greyspell.quantity.BadInput;
import greyspell.scenario.ScenarioFiles;
import greyspell.sweep.SweepQuestion;
import greyspell.sweep.SweepQuestion.Home;
import greyspell.sweep.Variation;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.jspecify.annotations.Nullable;

/**
 * A question in one word: another if a scenario, a file that it names, the library, the values
 * varied or the program is another.
 */
public final class SweepStamp {
  private final MessageDigest digest;

  private SweepStamp() {
    try {
      digest = MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e); // every Java has it
    }
  }

  /**
   * Of what is asked, so that a changed question is seen.
   *
   * @param version of the program
   */
  public static String of(SweepQuestion question, String version) {
    var stamp = new SweepStamp();
    stamp.add(version);
    stamp.add(question.isSideBySide() + " " + question.winters());
    for (Variation variation : question.variations()) {
      stamp.add(variation.path());
      variation.values().forEach(stamp::add);
    }
    for (Home home : question.homes()) {
      stamp.add(home, question);
    }
    return HexFormat.of().formatHex(stamp.digest.digest());
  }

  private void add(Home home, SweepQuestion question) {
    add(home.file().toString());
    add(home.text().text());
    ScenarioFiles.library(home.file(), question.library()).forEach(this::addFile);
    try {
      ScenarioFiles.named(home.text().scenario(question.library())).forEach(this::addFile);
    } catch (BadInput e) {
      add("refused"); // its rows will tell why
    }
    Path folder = home.file().toAbsolutePath().getParent();
    for (Variation variation : question.variations()) {
      for (String value : variation.values()) {
        addIfFile(folder, value);
      }
    }
  }

  private void addIfFile(@Nullable Path folder, String value) {
    try {
      Path file = folder == null ? Path.of(value) : folder.resolve(value);
      if (Files.isRegularFile(file)) {
        addFile(file);
      }
    } catch (InvalidPathException e) {
      // a value that is no path
    }
  }

  /** By name, size and time of the last change; nothing of it is read. */
  private void addFile(Path file) {
    try {
      add(file + " " + Files.size(file) + " " + Files.getLastModifiedTime(file).toMillis());
    } catch (IOException e) {
      add(file + " is not there");
    }
  }

  private void add(String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    digest.update((bytes.length + ":").getBytes(StandardCharsets.UTF_8));
    digest.update(bytes);
  }
}
