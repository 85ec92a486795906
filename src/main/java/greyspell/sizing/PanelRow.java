package greyspell.sizing;

import greyspell.balance.BusHours;
import java.util.List;
import java.util.function.Supplier;

/**
 * A number of panels that is tried with every bank.
 *
 * @param parts of the weather, each run round and round by itself; made when its turn comes and let
 *     go after it. Rows that hand over the same supplier share what it makes.
 * @param solarFactor panels over those of the parts
 */
public record PanelRow(Supplier<List<BusHours>> parts, double solarFactor) {}
