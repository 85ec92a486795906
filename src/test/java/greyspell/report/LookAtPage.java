package greyspell.report;

import greyspell.chart.SampleStudy;
import java.nio.file.Path;

/** Writes everything about the sample into a folder, to look at it and to time it. */
public final class LookAtPage {
  private LookAtPage() {}

  public static void main(String[] args) {
    var result = new SampleStudy().run();
    long from = System.nanoTime();
    var files = ReportFiles.write(result, Path.of(args[0]), !args[1].equals("no"), name -> {});
    long ms = (System.nanoTime() - from) / 1_000_000;
    System.out.println(Summary.text(result, files));
    System.out.println(ms + " ms");
  }
}
