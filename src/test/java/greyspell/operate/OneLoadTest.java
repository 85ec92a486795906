package greyspell.operate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.balance.Forcing;
import greyspell.load.ApplianceSpec;
import greyspell.load.Priority;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioReader;
import greyspell.study.Trials;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Set;
import org.junit.jupiter.api.Test;

final class OneLoadTest {
  /** Where loads are let go by class, what must run is asked for as before without the others. */
  @Test
  void whatIsLeftOffLeavesItsClassToo() {
    Trials trials =
        Trials.of(ScenarioReader.read(Path.of("scenarios/harrow-combe.yaml")), (what, done) -> {});
    Scenario home = trials.home();
    Forcing all = trials.forcing(0, home, Set.of());
    for (ApplianceSpec a : home.load().appliances()) {
      var others = new ArrayList<>(home.load().appliances());
      others.remove(a);
      Forcing without =
          trials.forcing(0, home.withLoad(home.load().withAppliances(others)), Set.of());
      OneLoad load = OneLoad.of(a.priority(), all, without);
      Forcing.Columns left = all.columns();
      OneLoad.own(left);
      for (int h = 0; h < all.hours(); h++) {
        load.leaveOff(left, h);
      }
      double goneWh = 0.0, mustGoneWh = 0.0;
      for (int h = 0; h < all.hours(); h++) {
        goneWh += all.acAskedWh()[h] - left.acAskedWh[h] + all.dcAskedWh()[h] - left.dcAskedWh[h];
        double wasWh = all.acAskedWh()[h] - all.acShouldRunWh()[h] - all.acCanWaitWh()[h];
        mustGoneWh += wasWh - (left.acAskedWh[h] - left.acShouldRunWh[h] - left.acCanWaitWh[h]);
      }
      assertTrue(goneWh > 0.0, a.name());
      assertEquals(load.sumWh(), goneWh, 1e-3, a.name());
      // a plan that varies by the day keeps its year's energy, so the others move a little
      assertEquals(
          a.priority() == Priority.MUST_RUN ? goneWh : 0.0, mustGoneWh, 0.02 * goneWh, a.name());
    }
  }
}
