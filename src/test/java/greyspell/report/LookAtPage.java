package greyspell.report;

import greyspell.calendar.HourCalendar;
import greyspell.chart.SampleStudy;
import java.nio.file.Path;

/** Writes everything about a sample into a folder, to look at it and to time it. */
public final class LookAtPage {
  private LookAtPage() {}

  /** Folder, "yes" or "no" to pictures, and which sample: grey, served, typical or south. */
  public static void main(String[] args) {
    var sample = new SampleStudy();
    switch (args[2]) {
      case "served" -> {
        sample.bankWh = 60_000.0;
        sample.panelsW = 18_000.0;
      }
      case "typical" -> sample.calendar = HourCalendar.typicalYear();
      case "south" -> {
        sample.latitudeDeg = -43.5;
        sample.isMedical = true;
      }
      default -> {}
    }
    var result = sample.run();
    long from = System.nanoTime();
    var files = ReportFiles.write(result, Path.of(args[0]), !args[1].equals("no"), name -> {});
    long ms = (System.nanoTime() - from) / 1_000_000;
    System.out.println(Summary.text(result, files));
    System.out.println(ms + " ms");
  }
}
