package greyspell.sky;

/** Direction to the sun at one moment, from {@link SunGeometry}. */
record Direction(double east, double north, double up) {

  static Direction of(double latitudeDeg, double declinationRad, double hourAngleRad) {
    double phi = Math.toRadians(latitudeDeg);
    double sinPhi = Math.sin(phi);
    double cosPhi = Math.cos(phi);
    double sinDelta = Math.sin(declinationRad);
    double cosDelta = Math.cos(declinationRad);
    double cosW = Math.cos(hourAngleRad);
    return new Direction(
        SunGeometry.east(cosDelta, Math.sin(hourAngleRad)),
        SunGeometry.north(sinPhi, cosPhi, sinDelta, cosDelta, cosW),
        SunGeometry.up(sinPhi, cosPhi, sinDelta, cosDelta, cosW));
  }

  /** By the table of the program, without the parallax (0.0024 degree at most). */
  static Direction of(SunTable table, double utcDays, double latitudeDeg, double longitudeDeg) {
    double w =
        (utcDays - Math.floor(utcDays) - 0.5) * 2.0 * Math.PI
            + table.equationOfTimeRad(utcDays)
            + Math.toRadians(longitudeDeg);
    return of(latitudeDeg, table.declinationRad(utcDays), w);
  }

  /** By the textbook's declination and a solar clock. */
  static Direction ofBook(double latitudeDeg, int dayOfYear, double solarHour) {
    return of(
        latitudeDeg,
        Math.toRadians(SunPublishedTest.declinationDeg(dayOfYear)),
        Math.toRadians(15.0 * (solarHour - 12.0)));
  }

  static Direction ofAngles(double zenithDeg, double azimuthDeg) {
    double z = Math.toRadians(zenithDeg);
    double azimuth = Math.toRadians(azimuthDeg);
    return new Direction(
        Math.sin(z) * Math.sin(azimuth), Math.sin(z) * Math.cos(azimuth), Math.cos(z));
  }

  double zenithDeg() {
    return Math.toDegrees(Math.acos(up));
  }

  double azimuthDeg() {
    return SunGeometry.azimuthDeg(east, north);
  }

  double cosIncidence(double tiltDeg, double azimuthDeg) {
    return up * SunGeometry.planeUp(tiltDeg)
        + north * SunGeometry.planeNorth(tiltDeg, azimuthDeg)
        + east * SunGeometry.planeEast(tiltDeg, azimuthDeg);
  }

  double incidenceDeg(double tiltDeg, double azimuthDeg) {
    return Math.toDegrees(Math.acos(cosIncidence(tiltDeg, azimuthDeg)));
  }

  double beamRatio(double tiltDeg, double azimuthDeg) {
    return cosIncidence(tiltDeg, azimuthDeg) / up;
  }

  /** Angle between two directions. */
  double apartDeg(Direction other) {
    double dx = east - other.east;
    double dy = north - other.north;
    double dz = up - other.up;
    return Math.toDegrees(2.0 * Math.asin(0.5 * Math.sqrt(dx * dx + dy * dy + dz * dz)));
  }
}
