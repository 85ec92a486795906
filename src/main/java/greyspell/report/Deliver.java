package greyspell.report;

import greyspell.quantity.BadInput;
import greyspell.quantity.FileTrouble;
import greyspell.quantity.Place;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Puts files into a folder so that none is ever seen half-written: each is written under a
 * temporary name, and all take their names at the end. If anything fails, the temporary files go
 * away.
 */
public final class Deliver implements AutoCloseable {
  private static final String PART = ".part";

  private final Path dir;
  private final List<Path> parts = new ArrayList<>();
  private final List<Path> files = new ArrayList<>();
  private final List<Path> superseded = new ArrayList<>();
  private final List<Path> madeDirs = new ArrayList<>();
  private boolean isDone;

  public Deliver(Path dir) {
    this.dir = dir;
    makeDir(dir);
  }

  private void makeDir(Path wanted) {
    try {
      for (Path p = wanted.toAbsolutePath(); p != null && !Files.exists(p); p = p.getParent()) {
        madeDirs.add(p);
      }
      Files.createDirectories(wanted);
    } catch (IOException e) {
      throw unwritable(e);
    }
  }

  /** Where to write the file of this name now. */
  synchronized OutputStream open(String name) {
    Path file = dir.resolve(name);
    Path parent = file.getParent();
    if (parent != null && !parent.equals(dir)) {
      makeDir(parent);
    }
    Path part = file.resolveSibling("." + file.getFileName() + PART);
    try {
      var out = Files.newOutputStream(part);
      parts.add(part);
      files.add(file);
      return out;
    } catch (IOException e) {
      throw unwritable(e);
    }
  }

  public void write(String name, byte[] bytes) {
    try (var out = open(name)) {
      out.write(bytes);
    } catch (IOException e) {
      throw unwritable(e);
    }
  }

  /**
   * A file that an earlier run may have left and that would contradict this one: taken away at the
   * end unless it is written anew.
   */
  public synchronized void supersede(String name) {
    superseded.add(dir.resolve(name));
  }

  /** Gives every file its name. */
  public synchronized List<Path> done() {
    try {
      for (int k = 0; k < parts.size(); k++) {
        if (Files.isDirectory(files.get(k))) {
          throw new FileAlreadyExistsException(files.get(k).toString(), null, "is a folder");
        }
      }
      for (int k = 0; k < parts.size(); k++) {
        Files.move(parts.get(k), files.get(k), StandardCopyOption.REPLACE_EXISTING);
      }
      for (Path old : superseded) {
        if (!files.contains(old)) {
          Files.deleteIfExists(old);
        }
      }
    } catch (IOException e) {
      throw unwritable(e);
    }
    isDone = true;
    return List.copyOf(files);
  }

  BadInput unwritable(IOException e) {
    return BadInput.of(
        Place.of(dir.toString()),
        "cannot write here (" + FileTrouble.words(e) + ")",
        "must be a folder that can be written to, with room for about 10 MB",
        "Name another folder, or change who may write to this one.");
  }

  @Override
  public synchronized void close() {
    if (isDone) {
      return;
    }
    for (Path part : parts) {
      deleteQuietly(part);
    }
    madeDirs.sort(Comparator.comparingInt(Path::getNameCount).reversed());
    for (Path made : madeDirs) {
      deleteQuietly(made);
    }
  }

  /** Failing to tidy up must not hide why it was necessary; a folder that is not empty stays. */
  private static void deleteQuietly(Path path) {
    try {
      Files.deleteIfExists(path);
    } catch (IOException e) {
      path.toFile().deleteOnExit();
    }
  }
}
