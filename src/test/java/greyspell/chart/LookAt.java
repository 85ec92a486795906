package greyspell.chart;

import java.nio.file.Files;
import java.nio.file.Path;

/** Writes the sample's pictures into a folder, to look at them. */
public final class LookAt {
  private LookAt() {}

  public static void main(String[] args) throws Exception {
    Path dir = Files.createDirectories(Path.of(args[0]));
    for (Picture p : Pictures.of(new SampleStudy().run())) {
      Files.writeString(dir.resolve(p.name() + ".svg"), Pictures.svg(p));
      Files.write(dir.resolve(p.name() + ".png"), Pictures.png(p));
    }
  }
}
