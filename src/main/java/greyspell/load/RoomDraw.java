package greyspell.load;

import greyspell.quantity.Check;
import org.jspecify.annotations.Nullable;

/**
 * A fridge or freezer: the warmer its room, the longer it runs.
 *
 * <pre>
 * duty = duty as stated × max(0, 1 + k (room - stated at)),     held at 1 at most
 * room = stated, or the day's mean outdoor temperature held between its least and its most
 *
 * k          change of its energy for each degree of the room      1/K    0 .. 0.2
 * room       temperature around it                                 °C
 * stated at  room temperature for which the duty holds             °C     0 .. 45
 * </pre>
 *
 * A straight line, so for rooms from about 5 to 35 °C only; many a fridge with one thermostat for
 * two parts fails in a cold room, which is not told here.
 *
 * <p>Source: own choice of form; the usual 4 % a degree is from memory, no copy opened. Held by
 * WeatherLoadsTest.
 *
 * @param roomC fixed, or null if the room follows the outdoor temperature
 * @param leastC below which the room never falls
 * @param mostC above which it never rises
 * @param changePerK k
 * @param statedAtC stated at
 */
public record RoomDraw(
    @Nullable Double roomC, double leastC, double mostC, double changePerK, double statedAtC)
    implements WeatherDraw {
  public RoomDraw {
    if (roomC != null) {
      Check.within("roomC", roomC, -40.0, 60.0);
    }
    Check.within("leastC", leastC, -60.0, 60.0);
    Check.within("mostC", mostC, leastC, 60.0);
    Check.within("changePerK", changePerK, 0.0, 0.2);
    Check.within("statedAtC", statedAtC, 0.0, 45.0);
  }

  @Override
  public double dayFactor(double meanAirC) {
    Double fixed = roomC;
    double room = fixed != null ? fixed : Math.max(leastC, Math.min(mostC, meanAirC));
    return Math.max(0.0, 1.0 + changePerK * (room - statedAtC));
  }

  @Override
  public boolean isHourly() {
    return false;
  }

  @Override
  public double hourShare(double airC, double powerW) {
    return 1.0;
  }
}
