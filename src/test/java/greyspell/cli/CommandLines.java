package greyspell.cli;

import java.util.List;

/** Lets tests of other packages run a command. */
public final class CommandLines {
  private CommandLines() {}

  /** Exit code. */
  public static int run(List<String> args) {
    return Cli.run(args.toArray(String[]::new)).code;
  }

  /** What it prints. */
  public static String printed(List<String> args) {
    return Cli.run(args.toArray(String[]::new)).out;
  }
}
