package greyspell.cli;

import java.io.Console;
import org.jspecify.annotations.Nullable;

/**
 * Whether a person sits in front of the program. From Java 22 a console is there without one, so it
 * has to be asked.
 */
final class Terminal {
  private Terminal() {}

  /** The console of a person, or null. */
  static @Nullable Console console() {
    Console console = System.console();
    return console != null && isTerminal(console) ? console : null;
  }

  private static boolean isTerminal(Console console) {
    try {
      return (boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (NoSuchMethodException e) {
      return true;
    } catch (ReflectiveOperationException e) {
      return false;
    }
  }
}
