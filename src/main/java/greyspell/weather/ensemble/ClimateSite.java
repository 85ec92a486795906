package greyspell.weather.ensemble;

import greyspell.quantity.BadInput;
import greyspell.quantity.Check;
import greyspell.quantity.Place;
import greyspell.weather.WeatherSource;
import org.jspecify.annotations.Nullable;

/**
 * Where winters are made for, and on which clock their hours run.
 *
 * @param place name, may be empty
 * @param latitudeDeg south negative; within the polar circles, where every month has sun
 * @param longitudeDeg west negative
 * @param elevationM above the sea; null where it is not stated, made years do not ask for it
 * @param utcOffsetH local standard time minus UTC
 */
public record ClimateSite(
    String place,
    double latitudeDeg,
    double longitudeDeg,
    @Nullable Double elevationM,
    double utcOffsetH) {
  /** North of this a month may bring nothing, and its clearness is no number. */
  public static final double FARTHEST_DEG = 66.0;

  public ClimateSite {
    Check.within("latitudeDeg", latitudeDeg, -FARTHEST_DEG, FARTHEST_DEG);
    Check.within("longitudeDeg", longitudeDeg, -180.0, 180.0);
    if (elevationM != null) {
      Check.within("elevationM", elevationM, -500.0, 9000.0);
    }
    Check.within("utcOffsetH", utcOffsetH, -14.0, 14.0);
  }

  /**
   * Where a weather file says it was measured; where it does not say, what the user says.
   *
   * @param latitudeDeg null to take the file's
   * @param longitudeDeg null to take the file's
   */
  public static ClimateSite of(
      WeatherSource source, @Nullable Double latitudeDeg, @Nullable Double longitudeDeg) {
    Double latitude = latitudeDeg == null ? source.latitudeDeg() : latitudeDeg;
    Double longitude = longitudeDeg == null ? source.longitudeDeg() : longitudeDeg;
    if (latitude == null || longitude == null) {
      throw BadInput.of(
          Place.of(source.file()),
          "the file does not say where it was measured",
          "latitude and longitude are needed",
          "State both; south and west are negative.");
    }
    if (!(Math.abs(latitude) <= FARTHEST_DEG)) {
      throw BadInput.of(
          Place.of(source.file()),
          "found latitude " + latitude + " deg",
          "must be -" + (int) FARTHEST_DEG + " to " + (int) FARTHEST_DEG + " deg",
          "Beyond the polar circles there are months without sun; take measured years there.");
    }
    return new ClimateSite(
        source.place(), latitude, longitude, source.elevationM(), source.utcOffsetH());
  }

  public boolean isNorthern() {
    return latitudeDeg >= 0.0;
  }

  WeatherSource source(String name, String format) {
    return new WeatherSource(
        name, format, place, latitudeDeg, longitudeDeg, elevationM, utcOffsetH);
  }
}
