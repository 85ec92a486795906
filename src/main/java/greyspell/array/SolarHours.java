package greyspell.array;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Solar energy of one plane or of several, hour by hour: nominal minus all losses is available, to
 * rounding. The arrays are not written.
 */
public final class SolarHours {
  private final double[] nominalWh;
  private final Map<ArrayLoss, double[]> lossWh = new EnumMap<>(ArrayLoss.class);
  private final double[] cableHeatWh;
  private final double[] availableWh;

  SolarHours(int hours) {
    nominalWh = new double[hours];
    for (ArrayLoss loss : ArrayLoss.values()) {
      lossWh.put(loss, new double[hours]);
    }
    cableHeatWh = new double[hours];
    availableWh = new double[hours];
  }

  private SolarHours(double[] availableWh, double[] rubbishWh) {
    nominalWh = rubbishWh;
    for (ArrayLoss loss : ArrayLoss.values()) {
      lossWh.put(loss, rubbishWh);
    }
    cableHeatWh = rubbishWh;
    this.availableWh = availableWh;
  }

  private SolarHours(SolarHours other, double[] availableWh) {
    nominalWh = other.nominalWh;
    lossWh.putAll(other.lossWh);
    cableHeatWh = other.cableHeatWh;
    this.availableWh = availableWh;
  }

  /**
   * For those who ask for {@link #availableWh} alone, over and over: all other columns are one and
   * the same array, and what stands in it means nothing.
   */
  public static SolarHours availableOnly(int hours) {
    return new SolarHours(new double[hours], new double[hours]);
  }

  public int hours() {
    return nominalWh.length;
  }

  /** Rated power times light on the plane. */
  public double[] nominalWh() {
    return nominalWh;
  }

  public double[] lossWh(ArrayLoss loss) {
    return Objects.requireNonNull(lossWh.get(loss));
  }

  /**
   * Heat of the stated cable alone: the part of {@link ArrayLoss#ARRAY_WIRING} that is no flat
   * share.
   */
  public double[] cableHeatWh() {
    return cableHeatWh;
  }

  /** At the controller's input. */
  public double[] availableWh() {
    return availableWh;
  }

  /** Several planes on one controller input; at least one. */
  public static SolarHours sum(List<SolarHours> planes) {
    int hours = planes.get(0).hours();
    var sum = new SolarHours(hours);
    for (SolarHours plane : planes) {
      if (plane.hours() != hours) {
        throw new IllegalArgumentException(
            "planes of " + hours + " and " + plane.hours() + " hours");
      }
      add(plane.nominalWh, sum.nominalWh);
      add(plane.cableHeatWh, sum.cableHeatWh);
      add(plane.availableWh, sum.availableWh);
      for (ArrayLoss loss : ArrayLoss.values()) {
        add(plane.lossWh(loss), sum.lossWh(loss));
      }
    }
    return sum;
  }

  /**
   * So many strings like this one side by side on one cable: everything times the count, the heat
   * of the cable times its square.
   *
   * @param ohmShare resistance of their cable over that of this string's
   */
  public SolarHours strings(int count, double ohmShare) {
    var all = new SolarHours(hours());
    double heatShare = (double) count * count * ohmShare;
    times(nominalWh, count, all.nominalWh);
    for (ArrayLoss loss : ArrayLoss.values()) {
      times(lossWh(loss), count, all.lossWh(loss));
    }
    double[] wiringWh = all.lossWh(ArrayLoss.ARRAY_WIRING);
    for (int h = 0; h < cableHeatWh.length; h++) {
      double heatWh = cableHeatWh[h], keptWh = count * (availableWh[h] + heatWh);
      double allHeatWh = Math.min(heatShare * heatWh, keptWh);
      wiringWh[h] += allHeatWh - count * heatWh;
      all.cableHeatWh[h] = allHeatWh;
      all.availableWh[h] = keptWh - allHeatWh;
    }
    return all;
  }

  /**
   * As if some losses were not there: each is given back at the end, and the losses after it are
   * not worked out anew. Only snow is, since it may take all: light that it keeps off does not come
   * back with what was booked before it.
   *
   * @param out in the order of {@link ArrayLoss}
   */
  public SolarHours without(EnumSet<ArrayLoss> out) {
    if (out.isEmpty()) {
      return this;
    }
    var rest = new SolarHours(this, availableWithoutWh(out));
    var none = new double[hours()];
    double[] snowWh = lossWh(ArrayLoss.SNOW).clone();
    double[] shareOfSnow = snowShare(out);
    for (ArrayLoss loss : out) {
      if (isBeforeSnow(loss) && shareOfSnow.length > 0) {
        double[] wh = lossWh(loss);
        for (int h = 0; h < wh.length; h++) {
          snowWh[h] += wh[h] * shareOfSnow[h];
        }
      }
      rest.lossWh.put(loss, none);
    }
    if (!out.contains(ArrayLoss.SNOW)) {
      rest.lossWh.put(ArrayLoss.SNOW, snowWh);
    }
    return rest;
  }

  /** What {@link #without} leaves available, sooner; the array is not to be written. */
  public double[] availableWithoutWh(EnumSet<ArrayLoss> out) {
    if (out.isEmpty()) {
      return availableWh;
    }
    double[] restWh = availableWh.clone();
    double[] shareOfSnow = snowShare(out);
    for (ArrayLoss loss : out) {
      double[] wh = lossWh(loss);
      if (isBeforeSnow(loss) && shareOfSnow.length > 0) {
        for (int h = 0; h < wh.length; h++) {
          restWh[h] += wh[h] - wh[h] * shareOfSnow[h];
        }
      } else {
        add(wh, restWh);
      }
    }
    return restWh;
  }

  private static boolean isBeforeSnow(ArrayLoss loss) {
    return loss.compareTo(ArrayLoss.SNOW) < 0;
  }

  private boolean hasSnow() {
    for (double wh : lossWh(ArrayLoss.SNOW)) {
      if (wh > 0.0) {
        return true;
      }
    }
    return false;
  }

  /** Of the light that comes as far; empty where no snow lies, or none is to lie. */
  private double[] snowShare(EnumSet<ArrayLoss> out) {
    if (out.contains(ArrayLoss.SNOW) || !hasSnow()) {
      return new double[0];
    }
    double[] snowWh = lossWh(ArrayLoss.SNOW);
    var upToWh = nominalWh.clone();
    for (ArrayLoss loss : ArrayLoss.values()) {
      if (isBeforeSnow(loss)) {
        double[] wh = lossWh(loss);
        for (int h = 0; h < upToWh.length; h++) {
          upToWh[h] -= wh[h];
        }
      }
    }
    for (int h = 0; h < upToWh.length; h++) {
      upToWh[h] = upToWh[h] > 0.0 ? Math.min(1.0, snowWh[h] / upToWh[h]) : 0.0;
    }
    return upToWh;
  }

  private static void times(double[] from, int count, double[] to) {
    for (int h = 0; h < to.length; h++) {
      to[h] = from[h] * count;
    }
  }

  private static void add(double[] from, double[] to) {
    for (int h = 0; h < to.length; h++) {
      to[h] += from[h];
    }
  }
}
