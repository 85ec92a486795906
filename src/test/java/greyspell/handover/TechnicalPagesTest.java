package greyspell.handover;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.cause.Said;
import greyspell.cause.SaidValue.Count;
import greyspell.cause.SaidValue.Name;
import greyspell.handover.Block.Row;
import greyspell.handover.Block.Table;
import greyspell.study.ElectricalCheck;
import greyspell.study.Explanation;
import greyspell.study.Explanation.Part;
import greyspell.study.Explanation.Shares;
import greyspell.study.Explanation.Verdict;
import greyspell.study.WinterCause;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What the pages behind must hold, and that their sums close. */
class TechnicalPagesTest {
  private final HandedOver handed = HandedOver.english();

  private List<Row> rows(String captionKey, String headKey) {
    String caption = handed.words.say(captionKey), head = handed.words.say(headKey);
    for (Block block : handed.pages.technical()) {
      if (block instanceof Table t && t.caption().equals(caption) && t.head().contains(head)) {
        return t.rows();
      }
    }
    throw new AssertionError(captionKey + " is not on the pages");
  }

  private static double number(Row row, int column) {
    return Double.parseDouble(row.cells().get(column).replaceAll("[^-0-9.]", ""));
  }

  @Test
  void everySectionOfADesignReportIsThereInOrder() {
    var ids =
        handed.pages.technical().stream()
            .filter(b -> b instanceof Block.Heading h && h.level() == 2)
            .map(b -> ((Block.Heading) b).id())
            .collect(Collectors.toList());
    assertEquals(
        List.of(
            "purpose",
            "site",
            "weather",
            "load",
            "panels",
            "bank",
            "inverter",
            "generator",
            "books",
            "autonomy",
            "reliability",
            "spells",
            "options",
            "losses",
            "sensitivity",
            "assumptions",
            "maintenance",
            "operator",
            "safety",
            "revision"),
        ids);
  }

  @Test
  void lossesStandInTheOrderOfTheFlowAndTheSunThatIsUsedIsWhatTheyLeave() {
    List<Row> rows = rows("section.losses", "head.kwh_year");
    double left = 0.0;
    for (Row row : rows) {
      if (row.cells().get(0).equals(handed.words.say("losses.used"))) {
        assertEquals(number(row, 1), left, 1.0);
        left = number(row, 1);
      } else if (row.cells().get(0).equals(handed.words.say("losses.served"))) {
        // what the bank gained stands in no row
        assertEquals(number(row, 1), left, 5.0);
        return;
      } else {
        left = row.isMarked() ? number(row, 1) : left - number(row, 1);
      }
    }
    throw new AssertionError("the table does not end with what is served");
  }

  @Test
  void causesStandOneByOneAndAddUpToAllThatWasMissing() {
    double wh = 0.0, percent = 0.0;
    for (Row row : rows("client.causes", "head.alone")) {
      wh += number(row, 2);
      percent += number(row, row.cells().size() - 2);
    }
    var shares = handed.explanation.shares();
    assertNotNull(shares);
    double restShare = shares.restWh() / shares.wholeWh();
    assertEquals(100.0 * (1.0 - restShare), percent, 2.0);
    assertEquals(handed.result.outcome().total().unmetWh() / 1000.0, wh, 1.0);
  }

  @Test
  void drawnSharesHaveTheirErrorBesideThemAndExactOnesNone() {
    Shares drawn = handed.explanation.shares();
    assertNotNull(drawn);
    assertFalse(drawn.isExact());
    List<Row> rows = rows("client.causes", "head.error");
    for (int k = 0; k < rows.size(); k++) {
      Part part = drawn.parts().get(k);
      assertEquals(part.standardErrorWh() / 1000.0, number(rows.get(k), 3), 0.0501);
    }
    var exact = new Shares(drawn.wholeWh(), drawn.parts(), drawn.restWh(), true, drawn.runs());
    var pages = causesOf(exact).toString();
    assertTrue(pages.contains(handed.words.say("head.alone")));
    assertFalse(pages.contains(handed.words.say("head.error")));
    assertFalse(pages.contains(handed.words.say("causes.drawn")));
    assertTrue(causesOf(drawn).toString().contains(handed.words.say("causes.drawn")));
  }

  @Test
  void anErrorIsNeverNought() {
    var part = new Part(WinterCause.WIRING, 900.0, 3.0, 0.9, 900.0, List.of());
    var rows = causesOf(new Shares(1000.0, List.of(part), 100.0, false, 40)).toString();
    assertTrue(rows.contains("< 0.1"), rows);
  }

  @Test
  void whatIsMissingWithoutAnyCauseStandsWithThem() {
    var part = new Part(WinterCause.WIRING, 900.0, 3.0, 0.9, 900.0, List.of());
    for (boolean isExact : new boolean[] {false, true}) {
      String rest = handed.words.say("explain.text.rest");
      var with = new Shares(1000.0, List.of(part), 100.0, isExact, 40);
      var row =
          causesOf(with).stream()
              .filter(b -> b instanceof Table t && t.rows().toString().contains(rest))
              .flatMap(b -> ((Table) b).rows().stream())
              .filter(r -> r.cells().get(0).equals(rest))
              .findFirst()
              .orElseThrow();
      assertEquals(isExact ? 5 : 6, row.cells().size());
      assertEquals("10 %", row.cells().get(row.cells().size() - 2));
      var without = new Shares(900.0, List.of(part), 0.0, isExact, 40);
      assertFalse(causesOf(without).toString().contains(rest));
      String told = handed.words.say("client.causes.rest", "10 %");
      assertTrue(pagesOf(with).client().toString().contains(told));
      assertFalse(pagesOf(without).client().toString().contains("without any of them"));
    }
  }

  @Test
  void whatHelpedIsSaid() {
    var part = new Part(WinterCause.MORE_CLOUD, -400.0, 10.0, -0.4, -2000.0, List.of());
    var shares = new Shares(1000.0, List.of(part), 1400.0, false, 40);
    String said = handed.words.say(shares.helped().get(0));
    assertTrue(
        causesOf(shares).stream()
            .anyMatch(b -> b instanceof Block.Text t && t.text().equals(said)));
  }

  /** The technical pages of the home with other shares. */
  private List<Block> causesOf(Shares shares) {
    return pagesOf(shares).technical();
  }

  private Pages pagesOf(Shares shares) {
    Explanation e = handed.explanation;
    return pagesOf(shares, e.weather(), e.verdict());
  }

  /** Winters may be drawn while the books are of the file: page one and reliability are of them. */
  @Test
  void whatTheVerdictIsOfIsWhatReliabilityTells() {
    var shares = handed.explanation.shares();
    assertNotNull(shares);
    Said drawn = Said.of("weather.drawn", new Count(20), new Name("made"));
    var verdict =
        new Verdict(handed.explanation.verdict().said(), 20, 20, 3210.0, 876.6, 77.0, 88.0, null);
    Pages pages = pagesOf(shares, drawn, verdict);
    var facts =
        pages.technical().stream()
            .filter(b -> b instanceof Block.Facts)
            .flatMap(b -> ((Block.Facts) b).facts().stream())
            .collect(Collectors.toMap(Block.Fact::word, Block.Fact::text, (a, b) -> a));
    assertEquals("3.21 kWh", facts.get(handed.words.say("reliability.unmet")));
    assertEquals("10 %", facts.get(handed.words.say("reliability.lost_hours")));
    String night = "between six in the evening";
    assertFalse(pages.client().toString().contains(night));
    assertTrue(handed.pages.client().toString().contains(night));
  }

  private Pages pagesOf(Shares shares, Said weather, Verdict verdict) {
    Explanation e = handed.explanation;
    var other =
        new Explanation(
            e.home(),
            weather,
            verdict,
            e.winters(),
            e.months(),
            e.spells(),
            shares,
            e.remedies(),
            e.free(),
            e.uncertainties(),
            e.cautions());
    return Handover.pages(
        handed.result, other, ElectricalCheck.of(other.home(), handed.result), handed.words);
  }

  @Test
  void theWorstSpellIsToldInFull() {
    var story = handed.explanation.spells().get(0).story();
    String last = handed.words.say(story.get(story.size() - 1));
    assertTrue(
        handed.pages.technical().stream()
            .anyMatch(b -> b instanceof Block.Text t && t.text().endsWith(last)));
    assertEquals(
        Set.of(),
        story.stream()
            .map(handed.words::say)
            .filter(
                said ->
                    handed.pages.technical().stream()
                        .noneMatch(b -> b instanceof Block.Text t && t.text().contains(said)))
            .collect(Collectors.toSet()));
  }
}
