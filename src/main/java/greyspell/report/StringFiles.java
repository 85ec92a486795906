package greyspell.report;

import greyspell.chart.Pictures;
import greyspell.chart.StringPictures;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/** Writes the pictures that go with a choice of strings into a folder, as SVG and PNG. */
public final class StringFiles {
  private StringFiles() {}

  public static List<Path> write(List<StringPictures.Named> pictures, Path dir) {
    try (var deliver = new Deliver(dir)) {
      for (StringPictures.Named named : pictures) {
        deliver.write(
            named.file() + ".svg", Pictures.svg(named.picture()).getBytes(StandardCharsets.UTF_8));
        deliver.write(named.file() + ".png", Pictures.png(named.picture()));
      }
      return deliver.done();
    }
  }
}
