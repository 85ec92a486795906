package greyspell.power;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The inverter, or several alike in parallel (figures are for all together).
 *
 * @param count how many, for the record
 * @param continuousW AC power that it can hold
 * @param surgeW AC power for a motor start, null if not stated
 * @param standbyDayW drawn from the bus between sunrise and sunset whether or not anything is on
 * @param standbyNightW drawn from the bus at night
 * @param efficiencies data-sheet points, one to many; standby is in them, as on data sheets
 */
public record InverterSpec(
    String name,
    int count,
    double continuousW,
    @Nullable Double surgeW,
    double standbyDayW,
    double standbyNightW,
    List<EfficiencyAt> efficiencies) {
  /** Efficiency at a share of the continuous power. */
  public record EfficiencyAt(double loadShare, double efficiency) {}
}
