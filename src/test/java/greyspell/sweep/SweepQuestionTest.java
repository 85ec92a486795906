package greyspell.sweep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.quantity.BadInput;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class SweepQuestionTest {
  private static final Path CABIN = Path.of("scenarios", "whin-cabin.yaml");
  private static final Path FARM = Path.of("scenarios", "grandfell-farm.yaml");

  private static SweepQuestion of(boolean isSideBySide, List<Path> files, String... vary) {
    return new SweepQuestion(
        files.stream().map(SweepQuestion.Home::of).toList(),
        Stream.of(vary).map(Variation::parse).toList(),
        isSideBySide,
        SweepWinters.NOT_SAID,
        null);
  }

  @Test
  void everyValueMeetsEveryOtherTheFirstKeySlowest() {
    var question = of(false, List.of(CABIN, FARM), "seed=1,2", "bank.in_parallel=3,4,5");
    assertEquals(12, question.runs());
    assertEquals("2 homes x 2 x 3", question.sum());
    var seen = new ArrayList<List<String>>();
    for (int run = 0; run < 6; run++) {
      seen.add(question.values(run));
      assertEquals(question.values(run), question.values(run + 6));
      assertEquals("Whin Cabin", question.home(run).name());
      assertEquals("Grandfell Farm", question.home(run + 6).name());
    }
    assertEquals(
        Arrays.asList(
            List.of("1", "3"),
            List.of("1", "4"),
            List.of("1", "5"),
            List.of("2", "3"),
            List.of("2", "4"),
            List.of("2", "5")),
        seen);
  }

  @Test
  void sideBySideTheyGoTogether() {
    var question = of(true, List.of(CABIN), "seed=1,2", "bank.in_parallel=3,4");
    assertEquals(2, question.runs());
    assertEquals(List.of("2", "4"), question.values(1));
    String told =
        String.valueOf(
            assertThrows(BadInput.class, () -> of(true, List.of(CABIN), "seed=1,2", "reserve=3 %"))
                .getMessage());
    assertTrue(told.contains("2 values of seed and 1 of reserve"), told);
  }

  @Test
  void withoutVariationsEveryHomeIsRunOnce() {
    assertEquals(2, of(false, List.of(CABIN, FARM)).runs());
    assertEquals(2, of(true, List.of(CABIN, FARM)).runs());
  }

  @Test
  void leftOutAndAsIs() {
    var question = of(false, List.of(CABIN), "reserve=left out, as is, 20 %");
    assertNull(question.text(0).written("reserve"));
    assertEquals("10 %", question.text(1).written("reserve"));
    assertEquals(question.home(0).text().text(), question.text(1).text());
    assertEquals("20 %", question.text(2).written("reserve"));
    var absent = of(false, List.of(CABIN), "generator=left out");
    assertEquals(absent.home(0).text().text(), absent.text(0).text());
  }

  @Test
  void onlyWhatChangesTheLightPartsIt() {
    var bank = of(false, List.of(CABIN), "bank.in_parallel=3,4");
    assertEquals(bank.light(0), bank.light(1));
    var sky = of(false, List.of(CABIN, FARM), "sky.turbidity=3,4");
    assertNotEquals(sky.light(0), sky.light(1));
    assertNotEquals(sky.light(0), sky.light(2));
  }

  @Test
  void aPathThatNoHomeKnowsIsRefusedOneThatSomeLackIsNot() {
    String told =
        String.valueOf(
            assertThrows(
                    BadInput.class, () -> of(false, List.of(CABIN, FARM), "arrays[0].tlit=3 deg"))
                .getMessage());
    assertTrue(told.contains("Nearest: \"arrays[0].tilt\""), told);
    var question = of(false, List.of(CABIN, FARM), "arrays[1].tilt=30 deg");
    assertThrows(BadInput.class, () -> question.text(0));
    assertEquals("30 deg", question.text(1).written("arrays[1].tilt"));
    assertThrows(BadInput.class, () -> of(false, List.of(CABIN), "seed=1", "seed=2"));
  }
}
