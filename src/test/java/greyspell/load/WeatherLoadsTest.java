package greyspell.load;

import static greyspell.load.Things.ALL_DAY;
import static greyspell.load.Things.plan;
import static greyspell.load.Things.thing;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import greyspell.calendar.HourCalendar;
import greyspell.load.ApplianceSpec.HourSpan;
import greyspell.load.DegreeHours.CopAt;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Loads that follow the weather and the sun. */
class WeatherLoadsTest {
  private static final HourCalendar Y2018 = HourCalendar.of(2018, 1);

  /** First day 5 °C, second 20 °C by night and -4 °C by day (mean 8 °C), the rest 15 °C. */
  private static LoadWeather weather() {
    var airC = new double[Y2018.hours()];
    Arrays.fill(airC, 15.0);
    Arrays.fill(airC, 0, 24, 5.0);
    Arrays.fill(airC, 24, 36, 20.0);
    Arrays.fill(airC, 36, 48, -4.0);
    return Mild.of(Y2018, airC);
  }

  private static double[] hours(ApplianceSpec spec) {
    return LoadHours.of(plan(spec), null, weather(), 1L).acWh();
  }

  /** 60 W/K, base 15 °C: 10 K are 600 W of heat, with a cop of 3 200 W. */
  @Test
  void heatFollowsTheDegreesAndTheCop() {
    var pump =
        thing("pump", 900, 1, ALL_DAY)
            .with(
                null,
                new DegreeHours(true, 60, 15, List.of(new CopAt(-5, 2), new CopAt(5, 3))),
                null);
    double[] wh = hours(pump);
    assertEquals(200.0, wh[3], 1e-9);
    assertEquals(0.0, wh[24], 0.0, "20 °C needs no heat");
    assertEquals(60.0 * 19 / 2.1, wh[40], 1e-9, "-4 °C: the cop is a tenth of the way from 2 to 3");
    assertEquals(0.0, wh[48], 0.0, "at the base nothing is needed");
  }

  @Test
  void theLimitHoldsHeatBackAndStandbyFillsTheRest() {
    var heater =
        thing("heater", 1, 500, 10, null, 1, Priority.CAN_WAIT, false, ALL_DAY)
            .with(null, new DegreeHours(true, 100, 15, List.of()), null);
    double[] wh = hours(heater);
    assertEquals(500.0, wh[3], 1e-9, "1000 W are wanted");
    assertEquals(10.0, wh[24], 1e-9, "standby alone");
  }

  @Test
  void coolingIsTheSameUpsideDown() {
    var cooler =
        thing("cooler", 900, 1, ALL_DAY)
            .with(null, new DegreeHours(false, 60, 18, List.of(new CopAt(20, 3))), null);
    double[] wh = hours(cooler);
    assertEquals(40.0, wh[24], 1e-9);
    assertEquals(0.0, wh[36], 0.0);
  }

  @Test
  void onlyWithinItsHours() {
    var heater =
        thing("heater", 2000, 1, new HourSpan(6.5, 8))
            .with(null, new DegreeHours(true, 100, 15, List.of()), null);
    double[] wh = hours(heater);
    assertEquals(0.0, wh[5], 0.0);
    assertEquals(500.0, wh[6], 1e-9, "half an hour");
    assertEquals(1000.0, wh[7], 1e-9);
    assertEquals(1500.0, Arrays.stream(wh, 0, 24).sum(), 1e-9);
  }

  /** 4 % a degree from 20 °C: at 5 °C 40 %, at 8 °C 52 %, at 15 °C 80 % of the duty. */
  @Test
  void aFridgeRunsByItsRoom() {
    var fridge =
        thing("fridge", 100, 0.5, ALL_DAY).with(null, new RoomDraw(null, -60, 60, 0.04, 20), null);
    double[] wh = hours(fridge);
    assertEquals(20.0, wh[0], 1e-9);
    assertEquals(26.0, wh[30], 1e-9, "the day's mean, not the hour's");
    assertEquals(40.0, wh[100], 1e-9);
    var kept = fridge.with(null, new RoomDraw(null, 10, 60, 0.04, 20), null);
    assertEquals(30.0, hours(kept)[0], 1e-9, "never below 10 °C");
    var fixed = fridge.with(null, new RoomDraw(25.0, 0, 0, 0.04, 20), null);
    assertEquals(60.0, hours(fixed)[0], 1e-9);
    var oven = fridge.with(null, new RoomDraw(60.0, 0, 0, 0.2, 20), null);
    assertEquals(100.0, hours(oven)[0], 1e-9, "never more than always");
  }

  @Test
  void seasonsByTemperatureAndByDayLength() {
    var cable = thing("cable", 100, 1, ALL_DAY);
    double[] cold = hours(cable.with(new Season.ByTemperature(true, 8.5), null, null));
    assertEquals(48 * 100.0, Arrays.stream(cold).sum(), 1e-9, "two days");
    double[] warm = hours(cable.with(new Season.ByTemperature(false, 8.5), null, null));
    assertEquals(363 * 2400.0, Arrays.stream(warm).sum(), 1e-6);
    double[] dark = hours(cable.with(new Season.ByDayLength(true, 12.5), null, null));
    assertEquals(8760 * 100.0, Arrays.stream(dark).sum(), 1e-6, "each day has twelve hours");
    double[] light = hours(cable.with(new Season.ByDayLength(false, 12.5), null, null));
    assertEquals(0.0, Arrays.stream(light).sum(), 0.0);
  }

  /** A night that begins on a cold day runs on into the warm one. */
  @Test
  void aNightBelongsToTheDayItStartsOn() {
    var lamp =
        thing("lamp", 100, 1, new HourSpan(22, 2))
            .with(new Season.ByTemperature(true, 6.0), null, null);
    double[] wh = hours(lamp);
    assertEquals(100.0, wh[25], 1e-9);
    assertEquals(0.0, wh[46], 0.0);
  }

  /** 300 l at 20 l/min are a quarter of an hour; 300 l, 35 m, 30 % are 95.3 Wh. */
  @Test
  void waterByTheDay() {
    assertEquals(0.25, new WaterUse(300, 1200.0, null, 1).runtimeH(800), 1e-12);
    assertEquals(
        300 * 9.80665 * 35 / 3600 / 0.3,
        800 * new WaterUse(300, null, 35.0, 0.3).runtimeH(800),
        1e-9);
    assertThrows(IllegalArgumentException.class, () -> new WaterUse(300, null, null, 1));
    assertThrows(IllegalArgumentException.class, () -> new WaterUse(300, 1.0, 1.0, 1));
  }

  @Test
  void refusesWhatCannotBe() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new DegreeHours(true, 60, 15, List.of(new CopAt(5, 3), new CopAt(5, 2))));
    assertThrows(
        IllegalArgumentException.class,
        () ->
            thing("no power", 0, 1, ALL_DAY)
                .with(null, new DegreeHours(true, 60, 15, List.of()), null));
    assertThrows(IllegalArgumentException.class, () -> new RoomDraw(null, 10, 5, 0.04, 20));
  }
}
