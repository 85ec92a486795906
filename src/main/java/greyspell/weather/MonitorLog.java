package greyspell.weather;

import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * What a home's monitor wrote, row by row as it came, holes left in: mean power over each row's
 * interval, and the charge at a moment. The arrays are not written.
 */
public final class MonitorLog {
  /** Where solar power was measured. */
  public enum SolarAt {
    /** Behind the controller, as it goes to the bank and the house. */
    BUS,
    /** Before the controller. */
    PANELS
  }

  /** Where the load was measured. */
  public enum LoadAt {
    /** Behind the inverter. */
    SOCKETS,
    /** Behind the inverter and on the bus, both together; not what inverter and system lose. */
    HOUSE,
    /** All that leaves the bus: the inverter's input, loads on the bus, the system's own draw. */
    BUS
  }

  private final long[] startMinute;
  private final Map<MonitorColumn, double[]> values;
  private final int stepMinutes;
  private final int chargeAtMinutes;
  private final boolean isChargeInWh;
  private final SolarAt solarAt;
  private final LoadAt loadAt;
  private final List<String> notes;

  MonitorLog(
      long[] startMinute,
      Map<MonitorColumn, double[]> values,
      int stepMinutes,
      int chargeAtMinutes,
      boolean isChargeInWh,
      MonitorMap map,
      List<String> notes) {
    this.startMinute = startMinute;
    this.values = values;
    this.stepMinutes = stepMinutes;
    this.chargeAtMinutes = chargeAtMinutes;
    this.isChargeInWh = isChargeInWh;
    solarAt = map.solarAt;
    loadAt = map.loadAt;
    this.notes = List.copyOf(notes);
  }

  public int rows() {
    return startMinute.length;
  }

  public int stepMinutes() {
    return stepMinutes;
  }

  /** Start of a row's interval, minutes since 1970 UTC, rising. */
  public long startMinute(int row) {
    return startMinute[row];
  }

  /** Minutes after the start of its row at which the charge was read. */
  public int chargeAtMinutes() {
    return chargeAtMinutes;
  }

  /** Whether the charge is in Wh, not a share of the bank. */
  public boolean isChargeInWh() {
    return isChargeInWh;
  }

  /** Whether a column has any value. */
  public boolean has(MonitorColumn column) {
    double[] of = values.get(column);
    return of != null && Arrays.stream(of).anyMatch(v -> !Double.isNaN(v));
  }

  /** W, V, A, or share or Wh of charge; NaN where nothing was written. */
  public double value(MonitorColumn column, int row) {
    double[] of = values.get(column);
    return of == null ? Double.NaN : of[row];
  }

  public SolarAt solarAt() {
    return solarAt;
  }

  public LoadAt loadAt() {
    return loadAt;
  }

  /** What reading it took for granted, sentences. */
  public List<String> notes() {
    return notes;
  }
}
