package greyspell.array;

import greyspell.calendar.HourCalendar;
import greyspell.calendar.Monthly;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.List;

/**
 * CPU time (of the running thread, so that a busy machine counts less) of light to solar energy in
 * a cold JVM, and warm: three years, two planes. Run as {@code java -cp
 * target/classes:target/test-classes:LIBRARIES greyspell.array.SolarColdMain KIND}, where KIND is
 * free, inside, outside or pwm.
 */
final class SolarColdMain {
  private SolarColdMain() {}

  public static void main(String[] arguments) {
    ControllerInput input =
        switch (arguments[0]) {
          case "inside" -> ControllerInput.of(window(60.0, 145.0), 48.0);
          case "outside" -> ControllerInput.of(window(105.0, 145.0), 48.0);
          case "pwm" -> ControllerInput.atBankVoltage(51.2);
          default -> ControllerInput.boundless();
        };
    ModuleSpec module =
        new ModuleSpec(
            "cold", 300.6, 39.8, 9.83, 32.5, 9.25, -0.0038, -0.0031, 0.0005, 45.0, 60, null, null);
    var array =
        new ArraySpec(
            "roof",
            45.0,
            180.0,
            module,
            3,
            2,
            Monthly.constant(0.02),
            Monthly.constant(0.0),
            0.01,
            0.02,
            0.0,
            ModuleChoices.usual());
    HourCalendar calendar = HourCalendar.of(2015, 3);
    var light = new double[calendar.hours()];
    var air = new double[calendar.hours()];
    for (int h = 0; h < light.length; h++) {
      double hour = h % 24;
      light[h] =
          Math.max(0.0, 800.0 - 22.0 * (hour - 12.0) * (hour - 12.0)) * (0.2 + 0.8 * (h % 7) / 7.0);
      air[h] = 5.0 + h % 20;
    }
    var thread = ManagementFactory.getThreadMXBean();
    for (int run = 0; run < 30; run++) {
      long start = thread.getCurrentThreadCpuTime();
      ModulePower power = PowerModel.of(module, array.choices()).power();
      long fitted = thread.getCurrentThreadCpuTime();
      SolarHours first = SolarChain.run(array, power, calendar, light, light, air, null, input);
      SolarHours second = SolarChain.run(array, power, calendar, light, light, air, null, input);
      long done = thread.getCurrentThreadCpuTime();
      if (run < 2 || run == 29) {
        System.out.println(
            arguments[0]
                + " run "
                + run
                + ": fit "
                + (fitted - start) / 1e6
                + " ms, two planes "
                + (done - fitted) / 1e6
                + " ms; kWh "
                + Arrays.stream(SolarHours.sum(List.of(first, second)).availableWh()).sum()
                    / 1000.0);
      }
    }
  }

  private static ControllerSpec window(double lowV, double highV) {
    return new ControllerSpec(
        "c",
        1,
        null,
        60.0,
        0.97,
        lowV,
        highV,
        lowV,
        null,
        null,
        1.0,
        ControllerKind.MPPT,
        List.of());
  }
}
