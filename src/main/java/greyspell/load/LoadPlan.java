package greyspell.load;

import greyspell.quantity.Check;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the house asks for: appliances, a measured log, or both.
 *
 * @param dailyVariationFraction standard deviation of the day-to-day variation of all appliance
 *     loads, 0 for none
 * @param hourlyVariationFraction the same from hour to hour within a day
 * @param growthFraction added to everything, for what the house will use one day
 * @param policy what is switched off or moved when the charge is low
 */
public record LoadPlan(
    List<ApplianceSpec> appliances,
    @Nullable LogSpec log,
    double dailyVariationFraction,
    double hourlyVariationFraction,
    double growthFraction,
    LoadPolicy policy) {
  public LoadPlan {
    appliances = List.copyOf(appliances);
    Check.within("dailyVariationFraction", dailyVariationFraction, 0.0, 2.0);
    Check.within("hourlyVariationFraction", hourlyVariationFraction, 0.0, 2.0);
    Check.within("growthFraction", growthFraction, -0.9, 10.0);
  }

  /** Without growth, without variation within the day, nothing switched off. */
  public LoadPlan(
      List<ApplianceSpec> appliances, @Nullable LogSpec log, double dailyVariationFraction) {
    this(appliances, log, dailyVariationFraction, 0.0, 0.0, LoadPolicy.NONE);
  }

  /** How many loads: the appliances, then the log; they are numbered from 0 in this order. */
  public int loads() {
    return appliances.size() + (log == null ? 0 : 1);
  }

  public String name(int load) {
    return load < appliances.size() ? appliances.get(load).name() : LoadHours.LOG_NAME;
  }

  /** How far the energy of a load may lie from what is stated. */
  public LoadRange range(int load) {
    return load < appliances.size()
        ? appliances.get(load).range()
        : LoadRange.of(Evidence.MEASURED);
  }

  /** With the energy of one load multiplied. */
  public LoadPlan withFactor(int load, double factor) {
    Check.within("load", load, 0, loads() - 1);
    Check.notNegative("factor", factor);
    var changed = new ArrayList<>(appliances);
    LogSpec changedLog = log;
    if (load < changed.size()) {
      changed.set(load, changed.get(load).times(factor));
    } else if (changedLog != null) {
      changedLog = changedLog.times(factor);
    }
    return with(changed, changedLog);
  }

  /** With these appliances instead. */
  public LoadPlan withAppliances(List<ApplianceSpec> others) {
    return with(others, log);
  }

  /** Every load at the low end of its range. */
  public LoadPlan low() {
    return allAt(true);
  }

  /** Every load at the high end of its range. */
  public LoadPlan high() {
    return allAt(false);
  }

  private LoadPlan allAt(boolean isLow) {
    LoadPlan plan = this;
    for (int i = 0; i < loads(); i++) {
      plan = plan.withFactor(i, isLow ? range(i).lowFactor() : range(i).highFactor());
    }
    return plan;
  }

  private LoadPlan with(List<ApplianceSpec> changed, @Nullable LogSpec changedLog) {
    return new LoadPlan(
        changed,
        changedLog,
        dailyVariationFraction,
        hourlyVariationFraction,
        growthFraction,
        policy);
  }
}
