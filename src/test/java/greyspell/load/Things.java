package greyspell.load;

import greyspell.calendar.Monthly;
import greyspell.load.ApplianceSpec.HourSpan;
import java.time.DayOfWeek;
import java.util.EnumSet;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Small appliances for tests. */
final class Things {
  static final HourSpan ALL_DAY = new HourSpan(0, 24);

  private Things() {}

  static ApplianceSpec thing(String name, double powerW, double duty, HourSpan... hours) {
    return thing(name, 1, powerW, 0.0, null, duty, Priority.MUST_RUN, false, hours);
  }

  static ApplianceSpec thing(
      String name,
      int quantity,
      double powerW,
      double standbyW,
      @Nullable Double surgeW,
      double duty,
      Priority priority,
      boolean isDirectCurrent,
      HourSpan... hours) {
    return new ApplianceSpec(
        name,
        quantity,
        powerW,
        standbyW,
        surgeW,
        duty,
        List.of(hours),
        EnumSet.allOf(DayOfWeek.class),
        Monthly.constant(1.0),
        priority,
        Evidence.GUESS,
        isDirectCurrent,
        false);
  }

  static LoadPlan plan(ApplianceSpec... appliances) {
    return new LoadPlan(List.of(appliances), null, 0.0);
  }

  static LoadPlan varied(double dailyFraction, double hourlyFraction, ApplianceSpec... appliances) {
    return new LoadPlan(
        List.of(appliances), null, dailyFraction, hourlyFraction, 0.0, LoadPolicy.NONE);
  }
}
