package greyspell.array;

/**
 * How hot a module gets under light, with wind cooling it.
 *
 * <pre>
 * Tc = Ta + G / (u0 + u1 v)
 *
 * Ta  air temperature                      °C
 * G   light on the module's plane          W/m²        0 .. 1500
 * v   wind at the module                   m/s         0 or more
 * u0  heat loss                            W/(m² K)    25.0 for an open rack
 * u1  heat loss by wind                    W/(m² K) per m/s   6.84 for an open rack
 * Tc  result                               °C
 * </pre>
 *
 * The source's equation gives the temperature at the back of the module; it is taken as that of the
 * cell, which is up to about 3 K warmer in full sun (common practice, no source). Its heat losses
 * already hold the share of light that leaves as electricity and by reflection. Steady state: a
 * module follows within minutes, so an hour's mean is fair. Not for modules laid on a roof without
 * air behind them: state smaller heat losses. Nothing is clamped; without light the cell is as warm
 * as the air (the sky's cooling at night is left out: no power then).
 *
 * <p>Source: Faiman (2008), Assessing the outdoor operating temperature of photovoltaic modules,
 * Progress in Photovoltaics 16, 307-315 (from memory). Held by ArrayPublishedTest.
 *
 * @param heatLossWm2K u0
 * @param windHeatLossWm2KPerMs u1
 */
public record FaimanCell(double heatLossWm2K, double windHeatLossWm2KPerMs)
    implements CellTemperature {
  @Override
  public double cellC(double irradianceWm2, double airC, double windMs) {
    return airC + irradianceWm2 / (heatLossWm2K + windHeatLossWm2KPerMs * windMs);
  }
}
