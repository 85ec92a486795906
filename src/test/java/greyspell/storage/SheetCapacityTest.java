package greyspell.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.scenario.ScenarioReader;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a bank gives when it is emptied fast. */
class SheetCapacityTest {
  private static BankSpec bank(String home) {
    return ScenarioReader.read(Path.of("scenarios/" + home + ".yaml")).bank();
  }

  @ParameterizedTest
  @ValueSource(strings = {"harrow-combe", "tamarisk-mesa", "peat-hut"})
  void leadGivesLessTheFasterItIsEmptied(String home) {
    BankSpec bank = bank(home);
    double last = 0.0;
    for (double inH : new double[] {0.5, 1.0, 3.0, 5.0, 10.0, 19.0}) {
      double share = SheetCapacity.share(bank, inH);
      assertTrue(share > last && share < 1.0, inH + " h: " + share);
      last = share;
    }
    assertEquals(1.0, SheetCapacity.share(bank, 20.0));
    assertEquals(1.0, SheetCapacity.share(bank, 400.0));
  }

  /** The sheet of its cells: 310 Ah in 5 hours, 390 Ah in 20, both within the fit. */
  @Test
  void theBanksOwnTanksGiveWhatItsSheetSays() {
    assertEquals(310.0 / 390.0, SheetCapacity.share(bank("harrow-combe"), 5.0), 0.02);
  }

  @Test
  void lithiumGivesTheSame() {
    assertEquals(1.0, SheetCapacity.share(bank("alder-fold"), 0.5));
  }
}
