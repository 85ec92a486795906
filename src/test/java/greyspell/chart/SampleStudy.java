package greyspell.chart;

import greyspell.array.ArraySpec;
import greyspell.array.ControllerKind;
import greyspell.array.ControllerSpec;
import greyspell.array.ModuleChoices;
import greyspell.array.ModuleSpec;
import greyspell.balance.Design;
import greyspell.balance.Forcing;
import greyspell.balance.HourLoop;
import greyspell.balance.Ledger;
import greyspell.balance.NamedHours;
import greyspell.calendar.HourCalendar;
import greyspell.calendar.Monthly;
import greyspell.electrical.Ampacity;
import greyspell.electrical.ConductorRun;
import greyspell.electrical.WireResistance;
import greyspell.electrical.WireSize;
import greyspell.load.ApplianceSpec;
import greyspell.load.ApplianceSpec.HourSpan;
import greyspell.load.Evidence;
import greyspell.load.LoadPlan;
import greyspell.load.Priority;
import greyspell.outcome.OutcomeReader;
import greyspell.power.InverterSpec;
import greyspell.power.PeakCheck;
import greyspell.power.step.InverterLimits;
import greyspell.scenario.Scenario;
import greyspell.scenario.Scenario.Assumption;
import greyspell.scenario.WeatherChoice;
import greyspell.sky.Horizon;
import greyspell.sky.Site;
import greyspell.sky.SkyChoices;
import greyspell.storage.BankSpec;
import greyspell.storage.Chemistry;
import greyspell.storage.Enclosure;
import greyspell.storage.FullCharge;
import greyspell.storage.step.BankLimits;
import greyspell.study.Besides;
import greyspell.study.StudyResult;
import greyspell.study.Unmet;
import greyspell.weather.GapReport;
import greyspell.weather.WeatherSeries;
import greyspell.weather.WeatherSource;
import java.time.DayOfWeek;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;

/**
 * A made-up home in made-up weather: short days, grey spells that last, a simple sun. Good enough
 * to look like the real thing on a page; no figure of it is a claim.
 */
public final class SampleStudy {
  public static final Scenario.Electrical WIRED =
      new Scenario.Electrical(
          true,
          null,
          0.006,
          44.0,
          List.of(
              wire(ConductorRun.Kind.ARRAY_TO_CONTROLLER, 22.0, WireSize.AWG_10, 50.0),
              wire(ConductorRun.Kind.CONTROLLER_TO_BANK, 2.0, WireSize.AWG_2, 30.0),
              wire(ConductorRun.Kind.BANK_TO_INVERTER, 1.5, WireSize.MM2_35, 30.0)));

  private static Scenario.Wire wire(
      ConductorRun.Kind kind, double lengthM, WireSize size, double ambientC) {
    return new Scenario.Wire(
        new ConductorRun(
            kind,
            kind.words(),
            lengthM,
            size,
            WireSize.Strands.STRANDED,
            WireResistance.Metal.COPPER,
            1,
            ambientC,
            Ampacity.Insulation.C90,
            null),
        "");
  }

  private static final double STANDING_W = 45.5;

  public double latitudeDeg = 51.0;
  public HourCalendar calendar = HourCalendar.of(2021, 3);
  public double panelsW = 6_000.0;
  public double bankWh = 15_000.0;
  public double inverterW = 3_000.0;
  public double maxDischargeW = 6_000.0;
  public double sunFactor = 1.0;
  public double loadFactor = 1.0;
  public boolean isMedical;
  public String name = "Heron Cabin";
  public String note = "";
  public Scenario.Electrical electrical = WIRED;

  /** Peaks, full charges and the rest are not this sample's matter: plain figures. */
  private static Besides besides(Ledger ledger, Unmet tenWattsLess) {
    return new Besides(
        null,
        new PeakCheck(0, null, 0, ledger.askedWh(0), 0, ledger.askedWh(0)),
        new FullCharge(480, 0, 40),
        List.of(),
        null,
        null,
        tenWattsLess);
  }

  public StudyResult run() {
    var weather = weather();
    var forcing = forcing(weather, STANDING_W);
    var bank = new BankLimits(bankWh * 0.9, 0.97, 0.97, bankWh * 0.5, maxDischargeW, 0.99997);
    var design = new Design(bank, new InverterLimits(inverterW, 0.03, 0.05));
    var ledger = run(forcing, design);
    return new StudyResult(
        scenario(),
        weather,
        ledger,
        OutcomeReader.read(ledger, design, latitudeDeg >= 0.0),
        besides(ledger, unmet(run(forcing(weather, STANDING_W - 10.0), design))),
        List.of(
            new StudyResult.PlaneBooks(
                "barn roof", Arrays.stream(forcing.solarAvailableWh()).sum(), 0.0)),
        List.of(
            new Assumption("arrays[0].mismatch", "1 %", "common practice, no source"),
            new Assumption("bank.self_discharge", "2 % a month", "data sheets of the kind")),
        List.of("The inverter's surge power is not stated, so motor starts were not looked at."),
        "The charge at the start is the one at the end of the same weather run once before.");
  }

  private static Ledger run(Forcing forcing, Design design) {
    var ledger = new Ledger(forcing, design.bank().windowWh());
    double end = HourLoop.run(forcing, design, design.bank().windowWh(), ledger);
    HourLoop.run(forcing, design, end, ledger);
    return ledger;
  }

  private static Unmet unmet(Ledger ledger) {
    double wh = 0.0;
    int hours = 0;
    for (int h = 0; h < ledger.hours(); h++) {
      wh += ledger.unmetWh(h);
      hours += ledger.unmetWh(h) > 0.0 ? 1 : 0;
    }
    double years = ledger.forcing().calendar().years();
    return new Unmet(wh / years, hours / years, 0.0, 0.0);
  }

  public WeatherSeries weather() {
    int hours = calendar.hours();
    var global = new double[hours];
    var air = new double[hours];
    var random = new Random(7);
    double phi = Math.toRadians(latitudeDeg);
    double cloud = 0.0;
    for (int day = 0; day < calendar.days(); day++) {
      int h0 = day * 24;
      double angle = 2.0 * Math.PI * (calendar.dayOfYear(h0) - 81) / 365.0;
      double delta = Math.toRadians(23.45) * Math.sin(angle);
      double season = Math.sin(angle) * Math.signum(latitudeDeg);
      cloud = 0.8 * cloud + 0.6 * random.nextGaussian();
      double clearness =
          Math.max(0.08, Math.min(0.78, 0.46 + 0.10 * season + 0.20 * cloud)) * sunFactor;
      double warmth = 9.0 + 8.0 * season + 3.0 * random.nextGaussian();
      for (int h = 0; h < 24; h++) {
        double omega = Math.toRadians(15.0 * (h + 0.5 - 12.0));
        double up =
            Math.sin(phi) * Math.sin(delta) + Math.cos(phi) * Math.cos(delta) * Math.cos(omega);
        global[h0 + h] = Math.max(0.0, 1361.0 * up * clearness);
        air[h0 + h] = warmth - 4.0 * Math.cos(Math.toRadians(15.0 * (h - 3.0)));
      }
    }
    var columns = new WeatherSeries.Columns();
    columns.globalHorizontalWm2 = global;
    columns.airTemperatureC = air;
    return new WeatherSeries(
        calendar,
        new WeatherSource("made-up.csv", "plain CSV", "Heronmoor", latitudeDeg, 3.0, 40.0, 1.0),
        new GapReport(5, 3, List.of("temperature: 5 hours by a straight line")),
        columns);
  }

  private Forcing forcing(WeatherSeries weather, double standingW) {
    int hours = calendar.hours();
    var c = new Forcing.Columns();
    c.solarNominalWh = new double[hours];
    c.solarAvailableWh = new double[hours];
    c.clippedWh = new double[hours];
    c.controllerLossWh = new double[hours];
    c.solarBusWh = new double[hours];
    c.acAskedWh = new double[hours];
    c.dcAskedWh = new double[hours];
    c.standingWh = new double[hours];
    c.bankTemperatureC = new double[hours];
    c.lockedShare = new double[hours];
    c.chargeShare = new double[hours];
    var soiling = new double[hours];
    var heat = new double[hours];
    var inverter = new double[hours];
    var controller = new double[hours];
    double[] global = java.util.Objects.requireNonNull(weather.globalHorizontalWm2());
    for (int h = 0; h < hours; h++) {
      double angle = 2.0 * Math.PI * (calendar.dayOfYear(h) - 81) / 365.0;
      double tilted = global[h] * (1.5 - 0.65 * Math.sin(angle) * Math.signum(latitudeDeg));
      c.solarNominalWh[h] = panelsW * tilted / 1000.0;
      soiling[h] = c.solarNominalWh[h] * 0.03;
      heat[h] = c.solarNominalWh[h] * 0.06;
      c.solarAvailableWh[h] = c.solarNominalWh[h] - soiling[h] - heat[h];
      c.clippedWh[h] = Math.max(0.0, c.solarAvailableWh[h] - panelsW * 0.7);
      c.controllerLossWh[h] = (c.solarAvailableWh[h] - c.clippedWh[h]) * 0.03;
      c.solarBusWh[h] = c.solarAvailableWh[h] - c.clippedWh[h] - c.controllerLossWh[h];
      int t = h % 24;
      double house = 110.0 + (t >= 6 && t < 9 ? 300.0 : 0.0) + (t >= 17 && t < 22 ? 480.0 : 0.0);
      c.acAskedWh[h] = loadFactor * (house + (h / 24 % 7 == 5 && t == 11 ? 2_300.0 : 0.0));
      c.dcAskedWh[h] = loadFactor * 30.0;
      inverter[h] = standingW - 3.5;
      controller[h] = 3.5;
      c.standingWh[h] = standingW;
      c.bankTemperatureC[h] = 15.0;
      c.chargeShare[h] = 1.0;
    }
    c.arrayLosses = List.of(new NamedHours("soiling", soiling), new NamedHours("heat", heat));
    var heatWh = new double[hours];
    var wiresWh = new double[hours];
    for (int h = 0; h < hours; h++) {
      heatWh[h] = 0.75 * c.controllerLossWh[h];
      wiresWh[h] = c.controllerLossWh[h] - heatWh[h];
    }
    c.controllerParts =
        List.of(new NamedHours("controller", heatWh), new NamedHours("controller_wiring", wiresWh));
    c.standingParts =
        List.of(
            new NamedHours("inverter_standby", inverter),
            new NamedHours("controller_standby", controller));
    return new Forcing(calendar, c);
  }

  private Scenario scenario() {
    var module =
        new ModuleSpec(
            "Quillon Q-400",
            400,
            37.1,
            13.8,
            31.0,
            12.9,
            -0.0034,
            -0.0027,
            0.0005,
            44,
            54,
            1000.0,
            1.95);
    var array =
        new ArraySpec(
            "roof",
            55,
            latitudeDeg >= 0 ? 180 : 0,
            module,
            3,
            5,
            Monthly.constant(0.03),
            Monthly.constant(0.0),
            0.01,
            0.02,
            0.0,
            ModuleChoices.usual());
    return new Scenario(
        "scenarios/heron-cabin.yaml",
        name,
        note,
        new Site(
            "Heronmoor",
            latitudeDeg,
            3.0,
            40.0,
            1.0,
            Monthly.constant(0.2),
            Horizon.OPEN,
            -18.0,
            33.0),
        new WeatherChoice("made-up.csv", "made-up.csv"),
        SkyChoices.usual(),
        List.of(array),
        new ControllerSpec(
            "Orrin 60",
            1,
            null,
            85.0,
            0.97,
            null,
            null,
            null,
            250.0,
            null,
            3.5,
            ControllerKind.MPPT,
            List.of()),
        new BankSpec(
            "Vantor 51-15",
            Chemistry.LITHIUM_IRON_PHOSPHATE,
            3,
            bankWh,
            51.2,
            1.0,
            0.1,
            0.97,
            0.97,
            bankWh * 0.5,
            maxDischargeW,
            0.02,
            List.of(new BankSpec.CapacityAt(25.0, 1.0)),
            0.0,
            0.0,
            new Enclosure.Indoors(15.0)),
        new InverterSpec(
            "Tessel 3000",
            1,
            inverterW,
            null,
            42.0,
            42.0,
            List.of(new InverterSpec.EfficiencyAt(0.5, 0.93))),
        new LoadPlan(
            List.of(
                appliance("fridge", Priority.MUST_RUN, false),
                appliance("well pump", Priority.MUST_RUN, false),
                appliance("lights", Priority.SHOULD_RUN, false),
                appliance(isMedical ? "breathing aid" : "laptop", Priority.CAN_WAIT, isMedical)),
            null,
            0.0),
        null,
        Scenario.Costs.NONE,
        electrical,
        1,
        List.of(),
        List.of());
  }

  private static ApplianceSpec appliance(String name, Priority priority, boolean isMedical) {
    Set<DayOfWeek> days = EnumSet.allOf(DayOfWeek.class);
    return new ApplianceSpec(
        name,
        1,
        80,
        2,
        null,
        0.4,
        List.of(new HourSpan(0, 24)),
        days,
        Monthly.constant(1.0),
        priority,
        Evidence.LABEL,
        false,
        isMedical);
  }
}
