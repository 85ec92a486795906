package greyspell.handover;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** What stands beside the classes in the program: style sheets, the script, faces. */
final class Resource {
  private Resource() {}

  static InputStream open(String name) {
    InputStream in = Resource.class.getResourceAsStream(name);
    if (in == null) {
      throw new IllegalStateException(name + " is not in the program");
    }
    return in;
  }

  static String text(String name) {
    try (var in = open(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
