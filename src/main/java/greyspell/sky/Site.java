package greyspell.sky;

import greyspell.calendar.Monthly;
import greyspell.quantity.Check;
import org.jspecify.annotations.Nullable;

/**
 * The place of the house.
 *
 * @param latitudeDeg south negative, -90 to 90
 * @param longitudeDeg east positive, -180 to 180
 * @param elevationM above the sea, -450 to 6000
 * @param utcOffsetH local standard time minus UTC, -12 to 14
 * @param groundAlbedo share of light that the ground reflects, by month, without snow
 * @param recordLowC coldest air ever noted, null if not stated
 * @param recordHighC hottest air ever noted, null if not stated
 */
public record Site(
    String name,
    double latitudeDeg,
    double longitudeDeg,
    double elevationM,
    double utcOffsetH,
    Monthly groundAlbedo,
    Horizon horizon,
    @Nullable Double recordLowC,
    @Nullable Double recordHighC) {
  public Site {
    Check.within("latitudeDeg", latitudeDeg, -90.0, 90.0);
    Check.within("longitudeDeg", longitudeDeg, -180.0, 180.0);
    Check.within("elevationM", elevationM, -450.0, 6000.0);
    Check.within("utcOffsetH", utcOffsetH, -12.0, 14.0);
    for (int month = 1; month <= 12; month++) {
      Check.share("groundAlbedo", groundAlbedo.in(month));
    }
    if (recordLowC != null && recordHighC != null && !(recordLowC <= recordHighC)) {
      throw new IllegalArgumentException(
          "recordLowC " + recordLowC + " is above recordHighC " + recordHighC);
    }
  }

  public boolean isNorthern() {
    return latitudeDeg >= 0.0;
  }
}
