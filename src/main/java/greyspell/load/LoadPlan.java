package greyspell.load;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the house asks for: appliances, a measured log, or both.
 *
 * @param dailyVariationFraction standard deviation of the day-to-day variation of all appliance
 *     loads, 0 for none
 */
public record LoadPlan(
    List<ApplianceSpec> appliances, @Nullable LogSpec log, double dailyVariationFraction) {}
