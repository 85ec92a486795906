package greyspell.study;

import greyspell.array.ArraySpec;
import greyspell.array.CellHours;
import greyspell.array.DataSheetFit;
import greyspell.array.LitString;
import greyspell.array.PlanesTogether;
import greyspell.array.SingleDiode;
import greyspell.calendar.HourCalendar;
import greyspell.sky.PlaneIrradiance;
import greyspell.weather.WeatherSeries;
import org.jspecify.annotations.Nullable;

/**
 * What two planes of one home, a string each, would bring on inputs of their own, in parallel and
 * in a row: in one morning hour and over a year of its weather.
 *
 * @param hour of the weather that is shown: the wanted hour of the day with the most light
 * @param year energy in an average year of the weather
 */
public record PlanesCompared(
    ArraySpec first,
    LitString firstString,
    ArraySpec second,
    LitString secondString,
    HourCalendar calendar,
    int hour,
    PlanesTogether.Energy year) {

  /** Null if no single-diode curve fits the module's sheet. */
  static @Nullable PlanesCompared of(
      HomeLight home, ArraySpec first, ArraySpec second, int hourOfDay) {
    SingleDiode firstDiode = DataSheetFit.of(first.module()).diode();
    SingleDiode secondDiode = DataSheetFit.of(second.module()).diode();
    if (firstDiode == null || secondDiode == null) {
      return null;
    }
    HourCalendar calendar = home.weather().calendar();
    CellHours firstCells = cells(home, first);
    CellHours secondCells = cells(home, second);
    int hour = brightest(firstCells, secondCells, calendar, hourOfDay);
    LitString firstString = lit(firstDiode, first, firstCells, hour);
    LitString secondString = lit(secondDiode, second, secondCells, hour);
    PlanesTogether.Energy all =
        PlanesTogether.over(firstString, firstCells, secondString, secondCells);
    double years = calendar.years();
    return new PlanesCompared(
        first,
        firstString,
        second,
        secondString,
        calendar,
        hour,
        new PlanesTogether.Energy(
            all.separateWh() / years, all.parallelWh() / years, all.seriesWh() / years));
  }

  private static CellHours cells(HomeLight home, ArraySpec array) {
    WeatherSeries weather = home.weather();
    PlaneIrradiance light = home.on(array);
    return CellHours.of(
        array,
        weather.calendar(),
        light.frontWm2(),
        light.absorbedWm2(),
        weather.airTemperatureC(),
        weather.windMs());
  }

  private static int brightest(
      CellHours first, CellHours second, HourCalendar calendar, int hourOfDay) {
    int best = hourOfDay;
    double mostWm2 = -1.0;
    for (int h = 0; h < first.hours(); h++) {
      double sumWm2 = first.lightWm2()[h] + second.lightWm2()[h];
      if (calendar.hourOfDay(h) == hourOfDay && sumWm2 > mostWm2) {
        best = h;
        mostWm2 = sumWm2;
      }
    }
    return best;
  }

  private static LitString lit(SingleDiode diode, ArraySpec array, CellHours cells, int hour) {
    return new LitString(
        diode,
        array.inSeries(),
        LitString.USUAL_BYPASS_GROUPS,
        cells.lightWm2()[hour],
        cells.cellC()[hour]);
  }
}
