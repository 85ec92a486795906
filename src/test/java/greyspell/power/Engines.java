package greyspell.power;

import greyspell.power.GeneratorRules.Policy;
import greyspell.power.GeneratorSpec.Derating;
import greyspell.power.GeneratorSpec.FuelAt;
import java.time.DayOfWeek;
import java.time.Month;
import java.util.EnumSet;
import java.util.List;

/** Generators for tests. */
final class Engines {
  private Engines() {}

  static final Charger CHARGER = new Charger(3000.0, 0.9);

  static GeneratorSpec diesel(Derating derating, FuelAt... fuelUse) {
    return new GeneratorSpec("engine", 1, 4000.0, Fuel.DIESEL, List.of(fuelUse), derating);
  }

  static GeneratorSpec diesel() {
    return diesel(
        new Derating(0.0, 0.035 / 300.0, 25.0, 0.0018),
        new FuelAt(0.25, 0.6),
        new FuelAt(0.5, 0.9),
        new FuelAt(1.0, 1.6));
  }

  static GeneratorRules rules(Policy policy, RunTimes permitted, RunTimes home) {
    return new GeneratorRules(policy, 0.2, 0.8, 2, permitted, home, CHARGER);
  }

  static RunTimes daily(double fromH, double toH) {
    return new RunTimes(
        List.of(new RunTimes.Span(fromH, toH)),
        EnumSet.allOf(DayOfWeek.class),
        EnumSet.allOf(Month.class));
  }
}
