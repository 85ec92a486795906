package greyspell.cli;

import java.io.PrintStream;

/**
 * A bar on the terminal's last line, drawn over itself; silent where standard error is not a
 * terminal.
 */
final class Progress implements AutoCloseable {
  private static final int WIDTH = 24;
  private final PrintStream err;
  private final boolean isTerminal;
  private int longest;

  Progress(PrintStream err, boolean isTerminal) {
    this.err = err;
    this.isTerminal = isTerminal;
  }

  /**
   * The start script says in GREYSPELL_TERMINAL whether standard error is one; without it the
   * console tells.
   */
  static Progress onTerminal() {
    String said = System.getenv("GREYSPELL_TERMINAL");
    boolean isTerminal = said == null ? Terminal.console() != null : said.equals("1");
    return new Progress(System.err, isTerminal);
  }

  /** What is being done, and how much of the whole lies behind. */
  void step(String what, double doneShare) {
    if (!isTerminal) {
      return;
    }
    int done = (int) Math.round(doneShare * WIDTH);
    String line = "[" + "=".repeat(done) + " ".repeat(WIDTH - done) + "] " + what;
    longest = Math.max(longest, line.length());
    err.print("\r" + line + " ".repeat(longest - line.length()));
    err.flush();
  }

  @Override
  public void close() {
    if (isTerminal && longest > 0) {
      err.print("\r" + " ".repeat(longest) + "\r");
      err.flush();
    }
  }
}
