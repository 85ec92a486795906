package greyspell.array;

import greyspell.quantity.Check;
import org.jspecify.annotations.Nullable;

/**
 * At which voltage the panels work on a controller's input.
 *
 * <pre>
 * MPPT   V = Vmp held within max(Vlow, Vbank) .. Vhigh, from the hour on in which Voc reaches Vstart
 *        until dark
 * PWM    V = Vbank
 *
 * Vmp, Voc      of the string at the hour's light and cell temperature       V
 * Vlow, Vhigh   tracking window; an end that is not stated does not bind     V
 * Vstart        voltage from which the controller starts                     V   not stated: the low end
 * Vbank         voltage of the bank; the drop of the cables is left out      V
 * </pre>
 *
 * A tracking controller is taken to step the voltage down, as nearly all do: it passes nothing on
 * from below the bank's voltage, for which the nominal one stands. Whether the open-circuit voltage
 * exceeds the absolute maximum, which destroys a controller, is not judged here. An hour is judged
 * by its mean light. Source: common practice, no source. Held by ControllerInputTest.
 */
public final class ControllerInput {
  private final ControllerKind kind;
  private final double lowV;
  private final double highV;
  private final double startV;
  private final double bankV;
  private final double @Nullable [] hourlyBankV;

  private ControllerInput(
      ControllerKind kind,
      double lowV,
      double highV,
      double startV,
      double bankV,
      double @Nullable [] hourlyBankV) {
    this.kind = kind;
    this.lowV = lowV;
    this.highV = highV;
    this.startV = startV;
    this.bankV = bankV;
    this.hourlyBankV = hourlyBankV;
  }

  /** Follows the maximum-power point wherever it lies. */
  public static ControllerInput boundless() {
    return window(0.0, Double.POSITIVE_INFINITY, 0.0);
  }

  /**
   * As the data sheet says.
   *
   * @param bankV nominal voltage of the bank
   */
  public static ControllerInput of(ControllerSpec controller, double bankV) {
    return switch (controller.kind()) {
      case MPPT -> {
        Double low = controller.lowestTrackingV();
        Double high = controller.highestTrackingV();
        Double start = controller.startV();
        double lowV = Math.max(bankV, low == null ? 0.0 : low);
        yield window(
            lowV,
            high == null ? Double.POSITIVE_INFINITY : high,
            Math.max(lowV, start == null ? 0.0 : start));
      }
      case PWM -> atBankVoltage(bankV);
    };
  }

  /** A controller that does not track, on a bank whose voltage is taken as constant. */
  public static ControllerInput atBankVoltage(double bankV) {
    Check.positive("bankV", bankV);
    return new ControllerInput(ControllerKind.PWM, 0.0, 0.0, 0.0, bankV, null);
  }

  /** A controller that does not track; one bank voltage an hour. */
  public static ControllerInput atBankVoltage(double[] hourlyBankV) {
    return new ControllerInput(ControllerKind.PWM, 0.0, 0.0, 0.0, 0.0, hourlyBankV);
  }

  private static ControllerInput window(double lowV, double highV, double startV) {
    return new ControllerInput(ControllerKind.MPPT, lowV, highV, startV, 0.0, null);
  }

  public ControllerKind kind() {
    return kind;
  }

  /** True if every voltage will do, so that none need be worked out. */
  public boolean isBoundless() {
    return kind == ControllerKind.MPPT
        && lowV == 0.0
        && startV == 0.0
        && highV == Double.POSITIVE_INFINITY;
  }

  /** The name under which what is lost by the voltage is booked. */
  public ArrayLoss loss() {
    return switch (kind) {
      case MPPT -> ArrayLoss.OUTSIDE_WINDOW;
      case PWM -> ArrayLoss.HELD_AT_BANK_VOLTAGE;
    };
  }

  double lowV() {
    return lowV;
  }

  double highV() {
    return highV;
  }

  double startV() {
    return startV;
  }

  double bankV(int hour) {
    return hourlyBankV == null ? bankV : hourlyBankV[hour];
  }
}
