package greyspell.handover;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.handover.Block.Row;
import greyspell.handover.Block.Table;
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
      percent += number(row, 3);
    }
    var shares = handed.explanation.shares();
    assertNotNull(shares);
    double restShare = shares.restWh() / shares.wholeWh();
    assertEquals(100.0 * (1.0 - restShare), percent, 2.0);
    assertEquals(handed.result.outcome().total().unmetWh() / 1000.0, wh, 1.0);
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
