package greyspell.operate;

import greyspell.balance.Forcing;
import greyspell.load.Priority;
import java.util.Arrays;

/**
 * What one appliance asks for, hour by hour: the home with it less the home without. Where the home
 * lets loads go by their class, it is taken out of its class too.
 */
final class OneLoad {
  private final Priority priority;
  private final double[] acWh;
  private final double[] dcWh;

  private OneLoad(Priority priority, double[] acWh, double[] dcWh) {
    this.priority = priority;
    this.acWh = acWh;
    this.dcWh = dcWh;
  }

  static OneLoad of(Priority priority, Forcing with, Forcing without) {
    return new OneLoad(
        priority,
        less(with.acAskedWh(), without.acAskedWh()),
        less(with.dcAskedWh(), without.dcAskedWh()));
  }

  private static double[] less(double[] all, double[] without) {
    var rest = new double[all.length];
    for (int h = 0; h < rest.length; h++) {
      rest[h] = Math.max(0.0, all[h] - without[h]);
    }
    return rest;
  }

  double sumWh() {
    return Arrays.stream(acWh).sum() + Arrays.stream(dcWh).sum();
  }

  /** Gives the columns demands of their own, which may be written. */
  static void own(Forcing.Columns columns) {
    columns.acAskedWh = columns.acAskedWh.clone();
    columns.dcAskedWh = columns.dcAskedWh.clone();
    columns.acShouldRunWh = columns.acShouldRunWh.clone();
    columns.dcShouldRunWh = columns.dcShouldRunWh.clone();
    columns.acCanWaitWh = columns.acCanWaitWh.clone();
    columns.dcCanWaitWh = columns.dcCanWaitWh.clone();
  }

  /** Takes it out of one hour of columns that are owned. */
  void leaveOff(Forcing.Columns columns, int hour) {
    take(columns.acAskedWh, acWh, hour);
    take(columns.dcAskedWh, dcWh, hour);
    if (priority == Priority.SHOULD_RUN) {
      take(columns.acShouldRunWh, acWh, hour);
      take(columns.dcShouldRunWh, dcWh, hour);
    } else if (priority == Priority.CAN_WAIT) {
      take(columns.acCanWaitWh, acWh, hour);
      take(columns.dcCanWaitWh, dcWh, hour);
    }
  }

  private static void take(double[] wh, double[] lessWh, int hour) {
    if (wh.length > 0) {
      wh[hour] = Math.max(0.0, wh[hour] - lessWh[hour]);
    }
  }
}
