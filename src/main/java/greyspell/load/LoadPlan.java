package greyspell.load;

import greyspell.quantity.Check;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the house asks for: appliances, a measured log, or both.
 *
 * @param dailyVariationFraction standard deviation of the day-to-day variation of all appliance
 *     loads, 0 for none
 */
public record LoadPlan(
    List<ApplianceSpec> appliances, @Nullable LogSpec log, double dailyVariationFraction) {
  public LoadPlan {
    appliances = List.copyOf(appliances);
    Check.within("dailyVariationFraction", dailyVariationFraction, 0.0, 2.0);
  }
}
