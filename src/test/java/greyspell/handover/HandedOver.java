package greyspell.handover;

import greyspell.report.ReportFiles;
import greyspell.scenario.ScenarioReader;
import greyspell.study.ElectricalCheck;
import greyspell.study.Study;
import greyspell.study.StudyResult;
import greyspell.words.Units;
import greyspell.words.Words;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** The pages of a shipped home, written once for all tests of them. */
final class HandedOver {
  private static @Nullable HandedOver kept;

  final StudyResult result;
  final Pages pages;
  final Words words;
  final Path dir;

  /** Not made while the class is: other threads call into it meanwhile. */
  static synchronized HandedOver english() {
    HandedOver made = kept == null ? new HandedOver("alder-fold", "en") : kept;
    kept = made;
    return made;
  }

  HandedOver(String home, String language) {
    result = Study.run(ScenarioReader.read(Path.of("scenarios", home + ".yaml")), (w, d) -> {});
    words = Words.of(language, Units.METRIC);
    var explanation = SampleExplanation.of(result);
    var check = ElectricalCheck.of(result.scenario(), result);
    pages = Handover.pages(result, explanation, check, words);
    try {
      dir = Files.createTempDirectory("handover");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Handover.write(result, explanation, check, words, Paper.A4, dir, w -> {});
    ReportFiles.write(result, dir, false, w -> {});
  }

  String html() {
    return PageText.screen(pages, words);
  }

  byte[] pdf() {
    try {
      return Files.readAllBytes(dir.resolve(Handover.PAPER));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
