package greyspell.chart;

import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.chart.Look.Tone;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Colours stand in one place: report.html, whose style is written by hand, keeps to it. */
class LookTest {
  /** Names that both have. */
  private static final List<String> SHARED =
      List.of("paper", "ink", "faint", "rule", "band", "bad", "good");

  private static double luminance(int rgb) {
    double sum = 0.0;
    double[] weight = {0.0722, 0.7152, 0.2126};
    for (int k = 0; k < 3; k++) {
      double c = ((rgb >> (8 * k)) & 255) / 255.0;
      sum += weight[k] * (c <= 0.03928 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4));
    }
    return sum;
  }

  /** WCAG 2.1, from memory: (lighter + 0.05) / (darker + 0.05). */
  private static double contrast(int a, int b) {
    double la = luminance(a), lb = luminance(b);
    return (Math.max(la, lb) + 0.05) / (Math.min(la, lb) + 0.05);
  }

  private static Tone tone(String name) {
    return Look.tones().stream().filter(t -> t.name().equals(name)).findFirst().orElseThrow();
  }

  @Test
  void wordsStandOutFromTheirGroundByDayAndByNight() {
    Tone paper = tone("paper");
    for (String words : List.of("ink", "faint", "bad", "good")) {
      assertTrue(contrast(tone(words).light(), paper.light()) >= 4.5, words);
      assertTrue(contrast(tone(words).dark(), paper.dark()) >= 4.5, words);
    }
  }

  @Test
  void theReportKeepsToTheSameDarkColours() throws IOException {
    String page = Files.readString(Path.of("src/main/jte/report.jte"));
    for (String name : SHARED) {
      String dark = "--" + name + ":" + Tone.hex(tone(name).dark());
      assertTrue(page.contains(dark), dark);
    }
  }
}
