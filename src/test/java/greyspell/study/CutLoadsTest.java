package greyspell.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.balance.Ledger;
import greyspell.balance.LedgerColumn;
import greyspell.cause.CutLoads;
import greyspell.cause.CutLoads.Cut;
import greyspell.cause.SaidValue.Amount;
import greyspell.load.LoadBook;
import greyspell.load.LoadHours;
import greyspell.load.Priority;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioEdit;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Which loads went without, beside what each asked for in the same hours. */
final class CutLoadsTest {
  private static final int ALL = Integer.MAX_VALUE;

  private record Books(Ledger ledger, LoadHours asked, CutLoads cut) {
    static Books of(String file, String... edits) {
      ScenarioEdit text = ScenarioEdit.of(Path.of("scenarios", file));
      for (String edit : edits) {
        int at = edit.indexOf('=');
        text = text.set(edit.substring(0, at), edit.substring(at + 1));
      }
      Scenario home = text.scenario(null);
      Trials trials = Trials.of(home, (what, done) -> {});
      Ledger ledger = trials.books(0, home, Set.of());
      LoadHours asked = trials.load(0, home);
      return new Books(ledger, asked, ExplainStudy.loads(ledger, asked));
    }

    Cut unserved(int mostNamed) {
      return cut.unserved(0, ledger.hours(), mostNamed);
    }

    double lacked(String name) {
      return unserved(ALL).named().stream()
          .filter(a -> a.name().equals(name))
          .mapToDouble(Amount::wh)
          .sum();
    }
  }

  private static double sum(Cut told) {
    return told.named().stream().mapToDouble(Amount::wh).sum() + told.othersWh() + told.unknownWh();
  }

  /** What the loads ask for is what the house asks for, whole weather long. */
  @Test
  void loadsSumToTheHouse() {
    for (String file :
        new String[] {"tamarisk-mesa.yaml", "sedge-island.yaml", "whin-cabin.yaml"}) {
      Books other = Books.of(file);
      var sumWh = new double[other.ledger.hours()];
      for (int i = 0; i < other.asked.books().size(); i++) {
        double[] wh = other.asked.wh(i);
        for (int h = 0; h < wh.length; h++) {
          sumWh[h] += wh[h];
        }
      }
      for (int h = 0; h < sumWh.length; h++) {
        assertEquals(other.ledger.askedWh(h), sumWh[h], 1e-9);
      }
    }
  }

  /** No rules, no generator: everything at the sockets is off for the same share of the hour. */
  @Test
  void whereNothingIsLetGoEachLacksTheSameShareOfWhatItAsked() {
    Books mesa = Books.of("tamarisk-mesa.yaml");
    Ledger ledger = mesa.ledger();
    LoadHours asked = mesa.asked();
    for (int i = 0; i < asked.books().size(); i++) {
      double[] wh = asked.wh(i);
      double lackWh = 0.0;
      for (int h = 0; h < wh.length; h++) {
        lackWh += ledger.isUnmet(h) ? wh[h] * ledger.unmetWh(h) / ledger.askedWh(h) : 0.0;
      }
      assertEquals(lackWh, mesa.lacked(asked.books().get(i).name()), 1e-6);
    }
    Cut all = mesa.unserved(ALL);
    assertEquals(0.0, all.unknownWh());
    assertTrue(sum(all) > 1000.0);
  }

  /** In rules' hours only what still runs can lack; all is told, or told as unknown. */
  @Test
  void whatWasLetGoIsNotAmongWhatWentWithout() {
    Books ruled = Books.of("harrow-combe.yaml");
    int hours = ruled.ledger.hours();
    Cut unserved = ruled.cut.unserved(0, hours, ALL), letGo = ruled.cut.letGo(0, hours, ALL);
    double unmetWh = 0.0, shedWh = 0.0;
    for (int h = 0; h < hours; h++) {
      unmetWh += ruled.ledger.unmetWh(h);
      shedWh += LedgerColumn.SHED.of(ruled.ledger)[h];
    }
    assertEquals(unmetWh, sum(unserved), 1.0);
    assertEquals(shedWh, sum(letGo), 1.0);
    assertTrue(unserved.unknownWh() < 0.5 * unmetWh, "most is known: " + unserved.unknownWh());
    for (Amount load : letGo.named()) {
      LoadBook book =
          ruled.asked.books().stream().filter(b -> b.name().equals(load.name())).findFirst().get();
      assertTrue(book.priority() != Priority.MUST_RUN, load.name());
    }
  }

  /** Above its limit the inverter keeps from the sockets alone. */
  @Test
  void anInverterThatIsTooSmallTakesNothingFromTheBus() {
    Books small =
        Books.of(
            "tamarisk-mesa.yaml",
            "bank.in_parallel=8",
            "inverter.continuous_power=0.3 kW",
            "inverter.surge_power=6 kW",
            "loads.appliances[1].supply=dc");
    Cut told = small.unserved(ALL);
    assertTrue(sum(told) > 1000.0);
    double emptyWh = 0.0;
    for (double wh : LedgerColumn.UNMET_EMPTY.of(small.ledger)) {
      emptyWh += wh;
    }
    assertEquals(0.0, emptyWh, 1e-9);
    assertTrue(small.asked.books().get(1).isDirectCurrent());
    assertEquals(0.0, small.lacked(small.asked.books().get(1).name()), 1e-9);
  }

  /** However little it lacks; and what is not named is not lost. */
  @Test
  void aMedicalLoadIsAlwaysNamed() {
    Books kelp = Books.of("kelp-point.yaml");
    Cut one = kelp.unserved(1);
    String medical =
        kelp.asked.books().stream().filter(LoadBook::isMedical).findFirst().get().name();
    assertTrue(one.named().stream().anyMatch(a -> a.name().equals(medical)), medical);
    assertEquals(2, one.named().size());
    Cut all = kelp.unserved(ALL);
    assertEquals(0.0, all.othersWh());
    assertEquals(sum(all), sum(one), 1e-6);
  }
}
