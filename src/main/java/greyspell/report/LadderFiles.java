package greyspell.report;

import greyspell.chart.LadderPictures;
import greyspell.chart.Picture;
import greyspell.chart.Pictures;
import greyspell.ladder.Ladder;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/** Words, figures and pictures of a ladder, in a folder. */
public final class LadderFiles {
  private LadderFiles() {}

  /**
   * Writes all of them or none.
   *
   * @return the files
   */
  public static List<Path> write(Ladder ladder, Path folder) throws IOException {
    try (var deliver = new Deliver(folder)) {
      deliver.write("ladder.txt", LadderText.of(ladder).getBytes(StandardCharsets.UTF_8));
      deliver.write("ladder.json", LadderJson.text(ladder).getBytes(StandardCharsets.UTF_8));
      for (Picture picture : LadderPictures.of(ladder)) {
        deliver.write(
            picture.name() + ".svg", Pictures.svg(picture).getBytes(StandardCharsets.UTF_8));
        byte[] png = png(picture);
        if (png.length > 0) {
          deliver.write(picture.name() + ".png", png);
        }
      }
      return deliver.done();
    }
  }

  /** Empty on a machine without fonts. */
  private static byte[] png(Picture picture) {
    try {
      return Pictures.png(picture);
    } catch (Pictures.NoFonts none) {
      return new byte[0];
    }
  }
}
