package greyspell.study;

import greyspell.cause.log.Finding;
import greyspell.cause.log.Shade;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is changed in a home for the weeks of a log.
 *
 * @param arrayFactor on the sun
 * @param shade null for none
 * @param loadFactor on what the house asks for
 * @param alwaysOnLoadW added to it
 * @param standbyW added to what the system draws
 * @param drawFactor on both
 * @param bankFactor on what the bank holds
 * @param chargingFactor on what comes back of the charge
 * @param isLoadAsSeen whether the load of the log is taken where it has one
 */
record LogChange(
    double arrayFactor,
    @Nullable Shade shade,
    double loadFactor,
    double alwaysOnLoadW,
    double standbyW,
    double drawFactor,
    double bankFactor,
    double chargingFactor,
    boolean isLoadAsSeen) {
  static final LogChange NONE = new LogChange(1.0, null, 1.0, 0.0, 0.0, 1.0, 1.0, 1.0);

  /** With the load that is asked for. */
  LogChange(
      double arrayFactor,
      @Nullable Shade shade,
      double loadFactor,
      double alwaysOnLoadW,
      double standbyW,
      double drawFactor,
      double bankFactor,
      double chargingFactor) {
    this(
        arrayFactor,
        shade,
        loadFactor,
        alwaysOnLoadW,
        standbyW,
        drawFactor,
        bankFactor,
        chargingFactor,
        false);
  }

  /** With the load that the log has seen, hour by hour; factor and watts where it has none. */
  LogChange withLoadAsSeen() {
    return new LogChange(
        arrayFactor,
        shade,
        loadFactor,
        alwaysOnLoadW,
        standbyW,
        drawFactor,
        bankFactor,
        chargingFactor,
        true);
  }

  /** As these findings say. */
  static LogChange of(List<Finding> findings, @Nullable Shade shade) {
    double array = 1.0, load = 1.0, alwaysOn = 0.0, standby = 0.0, draw = 1.0, bank = 1.0;
    double charging = 1.0;
    Shade shaded = null;
    for (Finding finding : findings) {
      double value = finding.estimate().value();
      switch (finding.about()) {
        case ARRAY -> array = value;
        case SHADE -> shaded = shade;
        case LOAD -> load = value;
        case ALWAYS_ON_LOAD -> alwaysOn = value;
        case STANDBY -> standby = value;
        case DRAW -> draw = value;
        case BANK -> bank = value;
        case CHARGING -> charging = value;
      }
    }
    return new LogChange(array, shaded, load, alwaysOn, standby, draw, bank, charging);
  }
}
