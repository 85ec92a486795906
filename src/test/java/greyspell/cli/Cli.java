package greyspell.cli;

import java.io.PrintWriter;
import java.io.StringWriter;

/** Runs a command line inside the test and keeps what it says. */
final class Cli {
  final int code;
  final String out;
  final String err;

  private Cli(int code, String out, String err) {
    this.code = code;
    this.out = out;
    this.err = err;
  }

  static Cli run(String... args) {
    var out = new StringWriter();
    var err = new StringWriter();
    var line = Main.commandLine(args);
    line.setOut(new PrintWriter(out, true));
    line.setErr(new PrintWriter(err, true));
    int code = line.execute(args);
    return new Cli(code, out.toString(), err.toString());
  }
}
