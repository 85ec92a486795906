package greyspell.balance;

import greyspell.calendar.HourCalendar;
import java.util.List;

/**
 * Everything that comes to the hourly loop from outside and does not depend on the charge: light
 * already turned into solar energy, and what the house asks for. Arrays hold one value an hour and
 * are not written by who receives them.
 */
public final class Forcing {
  /** Hourly arrays; see {@link Forcing}'s readers for their meaning. */
  public static final class Columns {
    public double[] solarNominalWh = {};
    public double[] solarAvailableWh = {};
    public double[] clippedWh = {};
    public double[] controllerLossWh = {};
    public double[] solarBusWh = {};
    public double[] acAskedWh = {};
    public double[] dcAskedWh = {};
    public double[] standingWh = {};
    public double[] bankTemperatureC = {};
    public double[] lockedShare = {};
    public double[] chargeShare = {};
    public double[] acShouldRunWh = {};
    public double[] acCanWaitWh = {};
    public double[] dcShouldRunWh = {};
    public double[] dcCanWaitWh = {};
    public double[] otherBusWh = {};
    public boolean[] asleep = {};
    public double[] resistanceFactor = {};
    public List<NamedHours> arrayLosses = List.of();
    public List<NamedHours> standingParts = List.of();
    public List<NamedHours> controllerParts = List.of();
  }

  private final HourCalendar calendar;
  private final Columns columns;

  public Forcing(HourCalendar calendar, Columns columns) {
    this.calendar = calendar;
    this.columns = columns;
  }

  /** The same columns in a new bundle, to change some of them for another forcing. */
  public Columns columns() {
    var copy = new Columns();
    copy.solarNominalWh = columns.solarNominalWh;
    copy.solarAvailableWh = columns.solarAvailableWh;
    copy.clippedWh = columns.clippedWh;
    copy.controllerLossWh = columns.controllerLossWh;
    copy.solarBusWh = columns.solarBusWh;
    copy.acAskedWh = columns.acAskedWh;
    copy.dcAskedWh = columns.dcAskedWh;
    copy.standingWh = columns.standingWh;
    copy.bankTemperatureC = columns.bankTemperatureC;
    copy.lockedShare = columns.lockedShare;
    copy.chargeShare = columns.chargeShare;
    copy.acShouldRunWh = columns.acShouldRunWh;
    copy.acCanWaitWh = columns.acCanWaitWh;
    copy.dcShouldRunWh = columns.dcShouldRunWh;
    copy.dcCanWaitWh = columns.dcCanWaitWh;
    copy.otherBusWh = columns.otherBusWh;
    copy.asleep = columns.asleep;
    copy.resistanceFactor = columns.resistanceFactor;
    copy.arrayLosses = columns.arrayLosses;
    copy.standingParts = columns.standingParts;
    copy.controllerParts = columns.controllerParts;
    return copy;
  }

  public HourCalendar calendar() {
    return calendar;
  }

  public int hours() {
    return columns.solarBusWh.length;
  }

  /**
   * Rated power times the light on the plane: what the panels would give at test conditions without
   * any loss.
   */
  public double[] solarNominalWh() {
    return columns.solarNominalWh;
  }

  /** Between nominal and available, each by name; nominal minus all of these is available. */
  public List<NamedHours> arrayLosses() {
    return columns.arrayLosses;
  }

  /** At the controller's input. Available = clipped + controller loss + solar on the bus. */
  public double[] solarAvailableWh() {
    return columns.solarAvailableWh;
  }

  /** Above the controller's limits. */
  public double[] clippedWh() {
    return columns.clippedWh;
  }

  /** Turned to heat in the controller and its wires if all of the solar energy is used. */
  public double[] controllerLossWh() {
    return columns.controllerLossWh;
  }

  /** The parts of that loss by name: the controller itself, the wires to the bank. */
  public List<NamedHours> controllerParts() {
    return columns.controllerParts;
  }

  /** What the controller can put on the bus. */
  public double[] solarBusWh() {
    return columns.solarBusWh;
  }

  /** Asked for at the sockets. */
  public double[] acAskedWh() {
    return columns.acAskedWh;
  }

  /** Asked for by loads on the bus. */
  public double[] dcAskedWh() {
    return columns.dcAskedWh;
  }

  /**
   * Always-on draw of the system itself on the bus: inverter and controller standby, bank
   * electronics, bank heater.
   */
  public double[] standingWh() {
    return columns.standingWh;
  }

  /** The parts of the always-on draw by name. */
  public List<NamedHours> standingParts() {
    return columns.standingParts;
  }

  public double[] bankTemperatureC() {
    return columns.bankTemperatureC;
  }

  /** Share of the usable window that cold keeps from being drawn in this hour, 0 to 1. */
  public double[] lockedShare() {
    return columns.lockedShare;
  }

  /** Share of the charge limit that the cells accept in this hour: 0 when too cold, else 1. */
  public double[] chargeShare() {
    return columns.chargeShare;
  }

  /** Part of the demand at the sockets that should run; empty if none may be let go. */
  public double[] acShouldRunWh() {
    return columns.acShouldRunWh;
  }

  /** Part of the demand at the sockets that can wait; empty if none can. */
  public double[] acCanWaitWh() {
    return columns.acCanWaitWh;
  }

  /** Part of the demand on the bus that should run; empty if none may be let go. */
  public double[] dcShouldRunWh() {
    return columns.dcShouldRunWh;
  }

  /** Part of the demand on the bus that can wait; empty if none can. */
  public double[] dcCanWaitWh() {
    return columns.dcCanWaitWh;
  }

  /** From a second source, wind or water, on the bus; empty if there is none. */
  public double[] otherBusWh() {
    return columns.otherBusWh;
  }

  /** Hours in which the inverter searches and what is asked does not wake it; empty if never. */
  public boolean[] asleep() {
    return columns.asleep;
  }

  /** From a second source in this hour; 0 if there is none. */
  public double otherWh(int hour) {
    return at(columns.otherBusWh, hour);
  }

  /** By which temperature changes the bank's resistance; empty for not at all. */
  public double[] resistanceFactor() {
    return columns.resistanceFactor;
  }

  /** Wh of an array that may be empty, which means none. */
  static double at(double[] wh, int hour) {
    return wh.length == 0 ? 0.0 : wh[hour];
  }
}
