package greyspell.report;

import greyspell.quantity.BadInput;
import greyspell.quantity.FileTrouble;
import greyspell.quantity.Place;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The rows of a sweep on their way to its table. Each finished row is appended to a file beside the
 * table at once, so that a sweep that is stopped at any moment goes on where it was: the file
 * begins with a line that names the question, and rows of another question are not taken over. A
 * last line that was being written when it stopped is dropped.
 */
public final class SweepFile implements AutoCloseable {
  private static final String ENDING = ".unfinished";
  private static final long SECOND_NS = 1_000_000_000L;

  private final Path table;
  private final Path unfinished;
  private final FileChannel channel;
  private final String first;
  private final int columns;
  private final long runs;
  private final Map<Integer, String> rows = new TreeMap<>();
  private boolean isOfAnotherQuestion;
  private long forcedNs = System.nanoTime();

  private SweepFile(Path table, FileChannel channel, String stamp, int columns, long runs) {
    this.table = table;
    this.channel = channel;
    this.columns = columns;
    this.runs = runs;
    unfinished = unfinished(table);
    first = "unfinished greyspell sweep of " + runs + " runs, question " + stamp;
  }

  static Path unfinished(Path table) {
    return table.resolveSibling(table.getFileName() + ENDING);
  }

  /**
   * Takes over what an earlier sweep of the same question left.
   *
   * @param stamp names the question in one word
   * @throws BadInput if the place cannot be written to, or another sweep writes there
   */
  public static SweepFile open(Path table, String stamp, int columns, long runs) {
    Path part = unfinished(table.toAbsolutePath());
    try {
      if (Files.isDirectory(table)) {
        throw BadInput.of(
            Place.of(table.toString()), "this is a folder", "must be a file", "Name a file in it.");
      }
      Files.createDirectories(part.getParent());
      FileChannel channel =
          FileChannel.open(
              part, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
      lock(channel, table);
      var file = new SweepFile(table.toAbsolutePath(), channel, stamp, columns, runs);
      file.takeOver();
      return file;
    } catch (IOException e) {
      throw unwritable(table, e);
    }
  }

  private static void lock(FileChannel channel, Path table) throws IOException {
    try {
      if (channel.tryLock() != null) {
        return;
      }
    } catch (OverlappingFileLockException e) {
      // by this very program: told below
    }
    channel.close();
    throw BadInput.of(
        Place.of(table.toString()),
        "another sweep is writing this table",
        "must be a table of its own",
        "Wait for it, or name another file.");
  }

  private void takeOver() throws IOException {
    var bytes = ByteBuffer.allocate(Math.toIntExact(channel.size()));
    while (bytes.hasRemaining() && channel.read(bytes) >= 0) {
      // until all of it is there
    }
    String text = new String(bytes.array(), 0, bytes.position(), StandardCharsets.UTF_8);
    int end = text.indexOf('\n');
    boolean isSame = end >= 0 && text.substring(0, end).equals(first);
    isOfAnotherQuestion = end >= 0 && !isSame;
    if (!isSame) {
      channel.truncate(0);
      write(first + "\n");
      return;
    }
    long sound = end + 1L; // the first line is plain ASCII
    for (int from = end + 1; ; from = end + 1) {
      end = text.indexOf('\n', from);
      if (end < 0 || !isTaken(text.substring(from, end))) {
        break;
      }
      sound += text.substring(from, end + 1).getBytes(StandardCharsets.UTF_8).length;
    }
    channel.truncate(sound);
    channel.position(sound);
  }

  private boolean isTaken(String line) {
    int comma = line.indexOf(',');
    String number = comma < 0 ? "" : line.substring(0, comma);
    if (number.isEmpty() || number.length() > 9 || !number.chars().allMatch(Character::isDigit)) {
      return false;
    }
    int run = Integer.parseInt(number);
    String row = line.substring(comma + 1);
    if (run >= runs || SweepTable.cellsOf(row).size() != columns) {
      return false;
    }
    rows.put(run, row);
    return true;
  }

  /** Whether rows of another question were found, and thrown away. */
  public boolean isOfAnotherQuestion() {
    return isOfAnotherQuestion;
  }

  /** Runs whose rows are there. */
  public BitSet done() {
    var done = new BitSet();
    rows.keySet().forEach(done::set);
    return done;
  }

  /** Keeps a finished row, in the file too. */
  public void append(int run, List<String> cells) {
    String line = SweepTable.line(cells);
    try {
      write(run + "," + line + "\n");
      if (System.nanoTime() - forcedNs > SECOND_NS) {
        channel.force(false); // a lost power supply takes no more than this with it
        forcedNs = System.nanoTime();
      }
    } catch (IOException e) {
      throw unwritable(table, e);
    }
    rows.put(run, line);
  }

  private void write(String text) throws IOException {
    ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
    while (bytes.hasRemaining()) {
      channel.write(bytes);
    }
  }

  /** All rows in the order of the runs. */
  public List<List<String>> rows() {
    var all = new ArrayList<List<String>>();
    rows.values().forEach(row -> all.add(SweepTable.cellsOf(row)));
    return all;
  }

  /** Writes the table and takes the unfinished rows away. */
  public void finish(List<String> header) {
    var text = new StringBuilder(SweepTable.line(header)).append('\n');
    rows.values().forEach(row -> text.append(row).append('\n'));
    TextFile.write(table, text.toString());
    try {
      channel.close();
      Files.deleteIfExists(unfinished);
    } catch (IOException e) {
      throw unwritable(table, e);
    }
  }

  private static BadInput unwritable(Path table, IOException e) {
    return BadInput.of(
        Place.of(table.toString()),
        "cannot write here (" + FileTrouble.words(e) + ")",
        "must be a file in a folder that can be written to",
        "Name another folder, or change who may write to this one.");
  }

  /** What is not finished stays for the next time; nothing stays where no row was finished. */
  @Override
  public void close() {
    try {
      if (channel.isOpen() && rows.isEmpty()) {
        Files.deleteIfExists(unfinished);
      }
      channel.close();
    } catch (IOException e) {
      throw unwritable(table, e);
    }
  }
}
