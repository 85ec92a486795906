package greyspell.handover;

import greyspell.cause.Said;
import greyspell.cause.SaidValue.Count;
import greyspell.cause.SaidValue.Name;
import greyspell.report.ReportFiles;
import greyspell.scenario.ScenarioEdit;
import greyspell.scenario.ScenarioReader;
import greyspell.study.ElectricalCheck;
import greyspell.study.ExplainStudy;
import greyspell.study.Explanation;
import greyspell.study.PlayGrids;
import greyspell.study.Study;
import greyspell.study.StudyResult;
import greyspell.study.Trials;
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
  private static @Nullable HandedOver keptGerman;

  final StudyResult result;
  final Explanation explanation;
  final Pages pages;
  final Words words;
  final Path dir;

  /** Not made while the class is: other threads call into it meanwhile. */
  static synchronized HandedOver english() {
    HandedOver made = kept == null ? new HandedOver("alder-fold", "en") : kept;
    kept = made;
    return made;
  }

  /** A home with a generator, in German. */
  static synchronized HandedOver german() {
    HandedOver made = keptGerman == null ? new HandedOver("harrow-combe", "de") : keptGerman;
    keptGerman = made;
    return made;
  }

  HandedOver(String home, String language) {
    Path file = Path.of("scenarios", home + ".yaml");
    var scenario = ScenarioReader.read(file);
    result = Study.run(scenario, (w, d) -> {});
    words = Words.of(language, Units.METRIC);
    explanation =
        ExplainStudy.of(
            Trials.of(scenario, (w, d) -> {}),
            Said.of("weather.file", new Name(home), new Count(3), new Name(home)),
            ScenarioEdit.of(file),
            null,
            (w, d) -> {});
    var check = ElectricalCheck.of(result.scenario(), result);
    pages = Handover.pages(result, explanation, check, words);
    try {
      dir = Files.createTempDirectory("handover");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Handover.write(result, PlayGrids.of(result), explanation, check, words, Paper.A4, dir, w -> {});
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
