package greyspell.chart;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Writes the tests' curve pictures into a folder, to look at them. */
public final class LookAtCurves {
  private LookAtCurves() {}

  public static void main(String[] args) throws Exception {
    Path dir = Files.createDirectories(Path.of(args[0]));
    for (Picture p :
        List.of(
            CurvePicturesTest.MODULE_PICTURE,
            CurvePicturesTest.SHADE_PICTURE,
            CurvePicturesTest.PLANES_PICTURE)) {
      Files.writeString(dir.resolve(p.name() + ".svg"), Pictures.svg(p));
      Files.write(dir.resolve(p.name() + ".png"), Pictures.png(p));
    }
  }
}
