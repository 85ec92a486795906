package greyspell.study;

import greyspell.array.ArrayLoss;
import greyspell.array.ArraySpec;
import greyspell.array.ControllerChain;
import greyspell.array.ControllerHours;
import greyspell.array.ControllerInput;
import greyspell.array.ControllerKind;
import greyspell.array.ControllerSpec;
import greyspell.array.ModulePower;
import greyspell.array.PowerModel;
import greyspell.array.SolarChain;
import greyspell.array.SolarHours;
import greyspell.electrical.Arrangement;
import greyspell.electrical.StringJudgement;
import greyspell.scenario.Scenario;
import greyspell.sky.PlaneIrradiance;
import greyspell.weather.WeatherSeries;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What every arrangement of one plane's modules brings in an average year of the home's weather:
 * the same chain as in a run, with these strings on the controller alone.
 *
 * <pre>
 * output = Σ controllers ( available × strings on it / all strings, clipped, less its own loss )
 * </pre>
 *
 * What leaves the controllers towards the bank, if the bank took all of it; the wire from there on
 * is the same for every arrangement. Strings are shared as evenly as whole strings can be, while a
 * run shares their energy evenly. An arrangement whose cold open circuit lies above a limit has no
 * figure: it would not live through the year. Held by StringYearsTest.
 */
public final class StringYears {
  private final List<@Nullable Year> years;
  private final List<Year> ifTracked;
  private final int builtInSeries;
  private final int builtInParallel;
  private final boolean isBuiltModule;
  private final boolean isWireStated;
  private final boolean isAlone;

  /**
   * One arrangement in an average year.
   *
   * @param outputWh at the controllers' output
   * @param outsideWindowWh lost because the strings do not start the controller or work outside its
   *     tracking window
   * @param heldWh lost because a controller that does not track holds them at the bank's voltage
   * @param cableHeatWh in the stated wire to the controller, 0 if none is stated
   * @param clippedWh above the controller's limits
   * @param controllerLossWh the controller's own
   */
  public record Year(
      double outputWh,
      double outsideWindowWh,
      double heldWh,
      double cableHeatWh,
      double clippedWh,
      double controllerLossWh) {}

  private StringYears(
      List<@Nullable Year> years,
      List<Year> ifTracked,
      ArraySpec plane,
      boolean isBuiltModule,
      boolean isWireStated,
      boolean isAlone) {
    this.years = years;
    this.ifTracked = ifTracked;
    builtInSeries = plane.inSeries();
    builtInParallel = plane.inParallel();
    this.isBuiltModule = isBuiltModule;
    this.isWireStated = isWireStated;
    this.isAlone = isAlone;
  }

  /** Of the judgement's arrangement in this place; null where the cold would exceed a limit. */
  public @Nullable Year at(int place) {
    return years.get(place);
  }

  /**
   * The same on a controller that tracks at any voltage, with the same limits and efficiency; null
   * if the controller tracks anyway, or where {@link #at} is null.
   */
  public @Nullable Year ifTracked(int place) {
    return ifTracked.isEmpty() || years.get(place) == null ? null : ifTracked.get(place);
  }

  /** Whether these are the strings that the scenario states. */
  public boolean isBuilt(Arrangement arrangement) {
    return isBuiltModule
        && arrangement.inSeries() == builtInSeries
        && arrangement.inParallel() == builtInParallel;
  }

  /** Whether the plane's wire to the controller is stated, so that its heat is known. */
  public boolean isWireStated() {
    return isWireStated;
  }

  /** Whether the plane is the home's only one. */
  public boolean isAlone() {
    return isAlone;
  }

  /** A home's weather, read once for all of its planes. */
  public static final class Weather {
    private final HomeLight light;
    private final Scenario home;
    private final WeatherSeries weather;

    private Weather(HomeLight light) {
      this.light = light;
      home = light.home();
      weather = light.weather();
    }

    public static Weather read(Scenario home) {
      return new Weather(HomeLight.of(home, Study.read(home)));
    }

    HomeLight light() {
      return light;
    }

    /**
     * All arrangements of one plane; null where the module's curve is not known and the controller
     * does not track.
     *
     * @param judged of the plane's modules or of others in their place
     */
    public @Nullable StringYears of(ArraySpec plane, StringJudgement judged) {
      boolean isHeld = judged.controller().kind() == ControllerKind.PWM;
      if (isHeld && !SolarChain.isVoltageKnown(judged.module())) {
        return null;
      }
      PlaneIrradiance onPlane = light.on(plane);
      ModulePower power = PowerModel.of(judged.module(), plane.choices()).power();
      double bankV = judged.rules().bankV();
      ControllerInput input = ControllerInput.of(judged.controller(), bankV);
      var wires = new Wires(home);
      var years = new ArrayList<@Nullable Year>();
      var ifTracked = new ArrayList<Year>();
      for (Arrangement a : judged.arrangements()) {
        Double limitV = a.limitV();
        if (limitV != null && a.coldOpenV() > limitV) {
          years.add(null);
          if (isHeld) {
            ifTracked.add(new Year(0.0, 0.0, 0.0, 0.0, 0.0, 0.0));
          }
          continue;
        }
        ArraySpec wired = plane.withStrings(judged.module(), a.inSeries(), a.inParallel());
        double ohm = wires.arrayOhm(wired);
        years.add(year(wired, power, onPlane, input, ohm, judged.controller(), bankV));
        if (isHeld) {
          ControllerInput any = ControllerInput.boundless();
          ifTracked.add(year(wired, power, onPlane, any, ohm, judged.controller(), bankV));
        }
      }
      return new StringYears(
          Collections.unmodifiableList(years),
          List.copyOf(ifTracked),
          plane,
          judged.module().equals(plane.module()),
          wires.arrayOhm(plane) > 0.0,
          home.arrays().size() == 1);
    }

    private Year year(
        ArraySpec wired,
        ModulePower power,
        PlaneIrradiance onPlane,
        ControllerInput input,
        double ohm,
        ControllerSpec controller,
        double bankV) {
      SolarHours hours =
          SolarChain.run(
              wired,
              power,
              weather.calendar(),
              onPlane.frontWm2(),
              onPlane.absorbedWm2(),
              weather.airTemperatureC(),
              weather.windMs(),
              SnowOn.share(wired, weather, onPlane.frontWm2()),
              input,
              ohm);
      double perYear = 1.0 / weather.calendar().years();
      var passed = new Passed(hours.availableWh(), wired.inParallel());
      var chain = new ControllerChain(controller.withCount(1), bankV);
      int more = wired.inParallel() % controller.count();
      passed.through(chain, wired.inParallel() / controller.count(), controller.count() - more);
      passed.through(chain, wired.inParallel() / controller.count() + 1, more);
      return new Year(
          perYear * passed.busWh,
          perYear * sum(hours.lossWh(ArrayLoss.OUTSIDE_WINDOW)),
          perYear * sum(hours.lossWh(ArrayLoss.HELD_AT_BANK_VOLTAGE)),
          perYear * sum(hours.cableHeatWh()),
          perYear * passed.clippedWh,
          perYear * passed.lossWh);
    }
  }

  /** Sums behind the controllers, each with its own strings. */
  private static final class Passed {
    private final double[] availableWh;
    private final int strings;
    private double busWh;
    private double clippedWh;
    private double lossWh;

    Passed(double[] availableWh, int strings) {
      this.availableWh = availableWh;
      this.strings = strings;
    }

    void through(ControllerChain one, int stringsOnOne, int controllers) {
      if (stringsOnOne == 0 || controllers == 0) {
        return;
      }
      double share = (double) stringsOnOne / strings;
      ControllerHours hours = one.run(Arrays.stream(availableWh).map(wh -> wh * share).toArray());
      busWh += controllers * sum(hours.busWh());
      clippedWh += controllers * sum(hours.clippedWh());
      lossWh += controllers * sum(hours.lossWh());
    }
  }

  private static double sum(double[] wh) {
    return Arrays.stream(wh).sum();
  }
}
