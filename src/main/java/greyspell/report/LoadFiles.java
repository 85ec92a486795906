package greyspell.report;

import greyspell.chart.LoadPicture;
import greyspell.chart.Picture;
import greyspell.chart.Pictures;
import greyspell.study.LoadAudit;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/** Writes the audit of loads into a folder: text, JSON, and the picture as SVG and PNG. */
public final class LoadFiles {
  private LoadFiles() {}

  public static List<Path> write(LoadAudit audit, Path dir) throws IOException {
    try (var deliver = new Deliver(dir)) {
      deliver.write("load.txt", LoadText.of(audit).getBytes(StandardCharsets.UTF_8));
      deliver.write("load.json", LoadJson.text(audit).getBytes(StandardCharsets.UTF_8));
      Picture picture = LoadPicture.of(audit);
      deliver.write("load.svg", Pictures.svg(picture).getBytes(StandardCharsets.UTF_8));
      deliver.supersede("load.png");
      try {
        deliver.write("load.png", Pictures.png(picture));
      } catch (Pictures.NoFonts e) {
        return deliver.done(); // the SVG is whole; the command says why there is no PNG
      }
      return deliver.done();
    }
  }
}
