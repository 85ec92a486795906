package greyspell.electrical;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Equal strings side by side, and what was found about them. Currents and power are those of one
 * controller where several share the array.
 *
 * @param stringsOnOne strings that one controller gets
 * @param coldOpenV open circuit on the coldest morning, by the maker's coefficient
 * @param coldOpenTableV the same by the handbook's table, null where it ends
 * @param limitV lowest of the stated limits, null if none is stated
 * @param limitName whose limit that is, empty if none is stated
 * @param coldPowerV operating voltage in full sun on the coldest morning
 * @param hotPowerV operating voltage in full sun on the hottest afternoon
 * @param neededV what the hottest afternoon must stay above: the tracking window's low end or the
 *     bank's charging voltage, the higher
 * @param shortCircuitA at test conditions
 * @param circuitA with the factor for bright sun: the most that is reckoned with
 * @param conductorA with the factor for currents that last for hours besides
 * @param operatingA at test conditions
 * @param ratedPowerW of the whole array
 * @param controllerShare what the strings bring at test conditions over what the controller can
 *     pass on, null if not stated
 */
public record Arrangement(
    int inSeries,
    int inParallel,
    int stringsOnOne,
    double coldOpenV,
    @Nullable Double coldOpenTableV,
    @Nullable Double limitV,
    String limitName,
    double coldPowerV,
    double hotPowerV,
    double neededV,
    double shortCircuitA,
    double circuitA,
    double conductorA,
    double operatingA,
    double ratedPowerW,
    @Nullable Double controllerShare,
    List<Finding> findings) {
  public Arrangement {
    findings = List.copyOf(findings);
  }

  public int modules() {
    return inSeries * inParallel;
  }

  public Finding.Severity verdict() {
    return Finding.worst(findings);
  }

  /** Room below the lowest limit as a share of it, negative above; null if no limit is stated. */
  public @Nullable Double marginShare() {
    return limitV == null ? null : (limitV - coldOpenV) / limitV;
  }

  /** "3 in series", "3 in series, 2 strings". */
  public String words() {
    return inSeries
        + " in series"
        + (inParallel == 1 ? ", one string" : ", " + inParallel + " strings");
  }
}
