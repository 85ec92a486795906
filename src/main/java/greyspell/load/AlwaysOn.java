package greyspell.load;

import java.util.List;

/**
 * What the loads draw day and night, all year: standby, and appliances that run round the clock on
 * every day without a thermostat. A fridge's compressor comes and goes and is not in it.
 *
 * @param parts by load, those that draw something, largest first
 */
public record AlwaysOn(List<Part> parts) {
  public AlwaysOn {
    parts = List.copyOf(parts);
  }

  /** One load's part. */
  public record Part(String name, double meanW) {}

  /** All together. */
  public double meanW() {
    double sumW = 0.0;
    for (Part part : parts) {
      sumW += part.meanW();
    }
    return sumW;
  }
}
