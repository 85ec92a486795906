package greyspell.handover;

import greyspell.report.ReportFiles;
import greyspell.scenario.ScenarioReader;
import greyspell.study.ElectricalCheck;
import greyspell.study.Study;
import greyspell.words.Units;
import greyspell.words.Words;
import java.nio.file.Path;

/** Not a test: writes the pages of a scenario into a folder, to be looked at. */
final class LookAtHandover {
  private LookAtHandover() {}

  public static void main(String[] args) {
    Handover.prepare();
    long t0 = System.nanoTime();
    var home = ScenarioReader.read(Path.of(args[0]));
    var result = Study.run(home, (what, done) -> {});
    long t1 = System.nanoTime();
    var explanation = SampleExplanation.of(result);
    var check = ElectricalCheck.of(home, result);
    long t2 = System.nanoTime();
    greyspell.study.PlayGrids.of(result);
    long t3 = System.nanoTime();
    Words words = Words.of(args[2], args.length > 3 ? Units.US : Units.METRIC);
    Handover.write(
        result,
        explanation,
        check,
        words,
        args.length > 3 ? Paper.LETTER : Paper.A4,
        Path.of(args[1]),
        what -> {});
    long t4 = System.nanoTime();
    ReportFiles.write(result, Path.of(args[1]), false, what -> {});
    System.err.printf("run %d check %d grid %d pages %d ms%n",
        (t1 - t0) / 1000000, (t2 - t1) / 1000000, (t3 - t2) / 1000000, (t4 - t3) / 1000000);
  }
}
