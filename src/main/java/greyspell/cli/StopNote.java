package greyspell.cli;

import java.io.PrintWriter;
import java.util.concurrent.atomic.AtomicLong;

/** Says, when the program is stopped amid its runs, that what is finished is kept. */
final class StopNote {
  private final PrintWriter err;
  private final long all;
  private final Thread hook = new Thread(this::say, "stop note");
  private final AtomicLong kept;

  StopNote(PrintWriter err, long all, long kept) {
    this.err = err;
    this.all = all;
    this.kept = new AtomicLong(kept);
    Runtime.getRuntime().addShutdownHook(hook);
  }

  private void say() {
    err.println();
    err.println(
        "Stopped. " + kept + " of " + all + " runs are kept; the same command goes on from there.");
    err.flush();
  }

  /** One more is kept; told by one thread. */
  void one() {
    kept.incrementAndGet();
  }

  /** No longer to be said. */
  void done() {
    try {
      Runtime.getRuntime().removeShutdownHook(hook);
    } catch (IllegalStateException e) {
      // already stopping: it is being said
    }
  }
}
