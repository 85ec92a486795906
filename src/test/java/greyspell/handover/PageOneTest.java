package greyspell.handover;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.cause.Said;
import greyspell.chart.Pictures;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioEdit;
import greyspell.study.ElectricalCheck;
import greyspell.study.ExplainStudy;
import greyspell.study.Explanation;
import greyspell.study.Study;
import greyspell.study.StudyResult;
import greyspell.study.Trials;
import greyspell.words.Units;
import greyspell.words.Words;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Page one of every shipped home is one page, in each language and on each paper. */
class PageOneTest {
  /** Front and back: taken where nothing smaller fits. */
  private static final Fit TWO_PAGES = Fit.TRIED.get(Fit.TRIED.size() - 1);

  static List<Path> homes() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("scenarios"))) {
      return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  /** Explained for other tests too. */
  private static @Nullable HandedOver kept(Path file) {
    if (file.endsWith("alder-fold.yaml")) {
      return HandedOver.english();
    }
    return file.endsWith("harrow-combe.yaml") ? HandedOver.german() : null;
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("homes")
  void isOnePage(Path file) {
    StudyResult result;
    Explanation why;
    HandedOver kept = kept(file);
    if (kept != null) {
      result = kept.result;
      why = kept.explanation;
    } else {
      ScenarioEdit text = ScenarioEdit.of(file);
      Scenario home = text.scenario(null);
      result = Study.run(home, (what, done) -> {});
      Trials trials = Trials.of(home, (what, done) -> {});
      why = ExplainStudy.of(trials, Said.of("unsure.not_told"), text, null, (what, done) -> {});
    }
    ElectricalCheck check = ElectricalCheck.of(result.scenario(), result);
    for (String language : Words.LANGUAGES) {
      Words words = Words.of(language, Units.METRIC);
      Pages pages = Handover.pages(result, why, check, words);
      for (Paper paper : Paper.values()) {
        assertNotEquals(TWO_PAGES, Pdf.fit(pages, words, paper), language + " " + paper);
      }
      noDaysNeedReadsAsNought(pages, words);
      secondSourceIsNamed(pages, words, result.scenario().otherSource() != null);
    }
  }

  /** A hut asks for a few Wh a day. */
  private static void noDaysNeedReadsAsNought(Pages pages, Words words) {
    int seen = 0;
    for (Block block : pages.technical()) {
      if (block instanceof Block.Table t && t.caption().equals(words.say("client.worst"))) {
        for (Block.Row row : t.rows()) {
          assertTrue(row.cells().get(2).matches(".*[1-9].*"), row.toString());
          seen++;
        }
      }
    }
    assertTrue(seen > 0);
  }

  /** Its energy is part of the bars and of the first column. */
  private static void secondSourceIsNamed(Pages pages, Words words, boolean hasOther) {
    for (Block block : pages.client()) {
      if (block instanceof Block.Figure f
          && f.figures().caption().equals(words.say("client.sun_and_need"))) {
        String svg = Pictures.svg(f.pictures().column());
        assertEquals(hasOther, svg.contains(words.say("picture.both_used")));
        assertEquals(hasOther, f.figures().head().contains(words.say("head.both")));
      }
    }
  }
}
