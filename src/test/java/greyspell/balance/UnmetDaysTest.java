package greyspell.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Unmet hours day by day, against the ledger's. */
class UnmetDaysTest {
  private static final int DAYS = 40;

  @Property(tries = 150)
  void unmetHoursOfDaysAreThoseOfTheLedger(@ForAll long seed) {
    var random = new Random(seed);
    Design design = Houses.randomDesign(seed);
    Forcing forcing = Houses.random(seed, DAYS);
    double moreWh = random.nextBoolean() ? 0.0 : 40.0 * random.nextDouble();
    double startWh = random.nextDouble() * design.bank().windowWh();
    BusHours hours = BusHours.of(forcing, design.inverter()).drawing(moreWh);
    var days = new byte[DAYS];
    double endWh = UnmetDays.run(hours, design.bank(), startWh, days);
    var columns = forcing.columns();
    columns.standingWh = forcing.standingWh().clone();
    for (int h = 0; h < columns.standingWh.length; h++) {
      columns.standingWh[h] += moreWh;
    }
    var more = new Forcing(forcing.calendar(), columns);
    Ledger ledger = Ledger.of(more, design);
    assertEquals(Balance.run(more, design, startWh, ledger), endWh, 1e-6);
    for (int day = 0; day < DAYS; day++) {
      int booked = 0;
      for (int h = 24 * day; h < 24 * day + 24; h++) {
        booked += ledger.isUnmet(h) ? 1 : 0;
      }
      assertEquals(booked, days[day], "day " + day);
      assertTrue(days[day] >= 0 && days[day] <= 24);
    }
  }
}
