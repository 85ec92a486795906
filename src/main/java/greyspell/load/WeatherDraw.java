package greyspell.load;

/** How the weather moves what an appliance draws within its hours, days and months. */
public sealed interface WeatherDraw permits DegreeHours, RoomDraw {
  /** Multiplies the duty of a whole day with this mean outdoor temperature; 0 or more. */
  double dayFactor(double meanAirC);

  /** Whether {@link #hourShare} changes from hour to hour. */
  boolean isHourly();

  /** Share of its power that it draws in an hour with this outdoor temperature, 0 to 1. */
  double hourShare(double airC, double powerW);
}
