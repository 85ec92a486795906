package greyspell.scenario;

import greyspell.quantity.Dimension;
import greyspell.sky.CloudTable;
import greyspell.sky.SkyChoices;
import greyspell.storage.BankDefaults;
import java.util.List;

/**
 * The keys of the scenario file and of the equipment library: here those of the whole file, its
 * place and sky. Those of its blocks stand in {@link WeatherKeys}, {@link ArrayKeys}, {@link
 * BatteryKeys} with {@link BankKeys}, {@link PowerKeys}, {@link ApplianceKeys} with {@link
 * LoadKeys} and {@link WireKeys}; nothing else declares one.
 */
final class Vocabulary {
  private Vocabulary() {}

  // ---- site, weather, sky -----------------------------------------------------------------------

  static final Key LATITUDE =
      Key.measure("latitude", "South negative.", Dimension.ANGLE, Dimension.NUMBER)
          .within(-90, 90)
          .mend("Are latitude and longitude swapped?")
          .required()
          .into("latitudeDeg");
  static final Key LONGITUDE =
      Key.measure("longitude", "West negative.", Dimension.ANGLE, Dimension.NUMBER)
          .within(-180, 180)
          .mend("Write west with a minus sign.")
          .required()
          .into("longitudeDeg");
  static final Key ELEVATION =
      Key.measure("elevation", "Above the sea.", Dimension.LENGTH)
          .within(-450, 6000)
          .usual("0 m", "not stated")
          .into("elevationM");
  static final Key UTC_OFFSET =
      Key.measure("utc_offset", "Local standard time minus UTC.", Dimension.DURATION)
          .within(-12, 14)
          .mend("Hours ahead of Greenwich in winter, without daylight saving; west is negative.")
          .usual("by longitude", "a whole hour for each 15 degrees")
          .into("utcOffsetH");
  static final Key ALBEDO =
      Key.monthly(
              "albedo",
              "Share of light that the ground reflects without snow.",
              Dimension.NUMBER,
              Dimension.SHARE)
          .within(0, 1)
          .usual("0.2", "grass and soil; " + CommonKeys.PRACTICE)
          .into("groundAlbedo");
  static final Key HORIZON =
      Key.of(
              "horizon",
              Key.Kind.HORIZON,
              "How high land, trees and roofs stand: {SE: 8 deg, S: 4 deg, SW: 12 deg} or pairs"
                  + " [azimuth, height]; straight lines between the points, all around.")
          .within(0, 85)
          .usual("open", "nothing in the way stated")
          .into("horizon");
  static final Key RECORD_LOW =
      Key.measure("record_low", "Coldest air ever noted.", Dimension.TEMPERATURE)
          .within(-90, 30)
          .into("recordLowC");
  static final Key RECORD_HIGH =
      Key.measure("record_high", "Hottest air ever noted.", Dimension.TEMPERATURE)
          .within(0, 60)
          .into("recordHighC");
  static final Shape SITE =
      Shape.of(
          "site",
          "The place of the house.",
          LATITUDE,
          LONGITUDE,
          ELEVATION,
          UTC_OFFSET,
          ALBEDO,
          HORIZON,
          RECORD_LOW,
          RECORD_HIGH);

  static final Key CLEAR_SKY =
      Key.word("clear_sky", "Which model gives the cloudless sky.", SkyChoices.ClearSky.values())
          .usual("ineichen_perez", "heeds height and haze")
          .into("clearSky");
  static final Key CLOUD =
      Key.word(
              "cloud",
              "How cloud dims the light where the weather has no irradiance: the classic curve, or a"
                  + " table from measurement.",
              SkyChoices.Cloud.values())
          .usual("classic", "")
          .into("cloudTable");
  static final Key CLOUD_SEASON =
      Key.word(
              "season",
              "The part of the year that the row is for: winter is November to February, in the"
                  + " south May to August.",
              CloudTable.Season.values())
          .usual("all", "");
  static final Key CLOUD_SUN =
      Key.measure("sun", "Height of the sun; straight lines between rows.", Dimension.ANGLE)
          .within(0, 90)
          .required();
  static final Key CLOUD_SHARES =
      Key.curve(
              "shares",
              "Points [eighths covered, share of the clear light]; straight lines between them.",
              Dimension.NUMBER,
              Dimension.NUMBER)
          .within(0, 4)
          .required();
  static final Shape CLOUD_ROW =
      Shape.of(
          "cloud row",
          "A row of a cloud table; greyspell weather calibrate makes whole tables.",
          CLOUD_SEASON,
          CLOUD_SUN,
          CLOUD_SHARES);
  static final Key CLOUD_TABLE =
      Key.list(
              "cloud_table",
              "What cloud leaves of the clear light, for cloud: table; without it the table of a"
                  + " lowland station at 52 degrees north.",
              CLOUD_ROW)
          .into("cloudTable");
  static final Key CLOUD_DEPTH =
      Key.measure(
              "cloud_depth",
              "Share of clear light lost under full cloud.",
              Dimension.NUMBER,
              Dimension.SHARE)
          .within(0, 1)
          .usual("0.75", "Kasten and Czeplak (1980), from memory")
          .into("cloudDepth");
  static final Key CLOUD_EXPONENT =
      Key.measure("cloud_exponent", "How late cloud begins to tell.", Dimension.NUMBER)
          .within(0.5, 10)
          .usual("3.4", "Kasten and Czeplak (1980), from memory")
          .into("cloudExponent");
  static final Key TILT_MODEL =
      Key.word(
              "tilt_model",
              "Which model turns level light to the panels.",
              SkyChoices.Tilt.values())
          .usual("perez", "heeds the bright sky around the sun and at the horizon")
          .into("tilt");
  static final Key TURBIDITY =
      Key.monthly("turbidity", "Linke turbidity of the cloudless sky.", Dimension.NUMBER)
          .within(1, 10)
          .usual("3", "clear country air; " + CommonKeys.PRACTICE)
          .into("linkeTurbidity");
  static final Key SNOW_ALBEDO =
      Key.measure(
              "snow_albedo",
              "Share of light that lying snow reflects.",
              Dimension.NUMBER,
              Dimension.SHARE)
          .within(0, 1)
          .usual("0.6", "neither fresh nor old snow; " + CommonKeys.PRACTICE)
          .into("snowAlbedo");
  static final Shape SKY =
      Shape.of(
          "sky",
          "Which published models turn weather into light on the panels; all have defaults.",
          CLEAR_SKY,
          CLOUD,
          CLOUD_TABLE,
          CLOUD_DEPTH,
          CLOUD_EXPONENT,
          TILT_MODEL,
          TURBIDITY,
          SNOW_ALBEDO);

  // ---- the whole file ---------------------------------------------------------------------------

  static final Key HOME =
      Key.of("home", Key.Kind.TEXT, "Name of the house.").required().into("name");
  static final Key HOME_NOTE =
      Key.of("note", Key.Kind.TEXT, "Free words for the pages.").usual("", "").into("note");
  static final Key HOME_SITE = Key.block("site", "The place.", SITE).required().into("site");
  static final Key HOME_WEATHER =
      Key.block("weather", "The weather.", WeatherKeys.WEATHER).required().into("weather");
  static final Key HOME_SKY = Key.block("sky", "Models of the sky.", SKY).into("sky");
  static final Key ARRAYS =
      Key.list("arrays", "The planes of panels, any number.", ArrayKeys.ARRAY)
          .required()
          .into("arrays");
  static final Key HOME_CONTROLLER =
      Key.block("controller", "The charge controller.", ArrayKeys.CONTROLLER)
          .usual(
              "the inverter's own, else one without limits",
              "nothing is clipped; state yours to see what it clips")
          .into("controller");
  static final Key HOME_BANK =
      Key.block("bank", "The battery bank.", BatteryKeys.BANK).required().into("bank");
  static final Key HOME_INVERTER =
      Key.block("inverter", "The inverter.", PowerKeys.INVERTER).required().into("inverter");
  static final Key HOME_GENERATOR =
      Key.block("generator", "An engine for the grey weeks, if there is one.", PowerKeys.GENERATOR)
          .into("generator");
  static final Key HOME_OTHER_SOURCE =
      Key.block("other_source", "A second source, if there is one.", PowerKeys.OTHER_SOURCE)
          .into("otherSource");
  static final Key HOME_LOADS =
      Key.block("loads", "What the house asks for.", ApplianceKeys.LOADS).required().into("load");
  static final Key RESERVE =
      Key.measure("reserve", "Never drawn below this share of the capacity.", Dimension.SHARE)
          .within(0, 0.95)
          .usual("by chemistry", BankDefaults.USUAL_WHY)
          .into("bank.reserveFraction");
  static final Key START =
      Key.of(
              "start",
              Key.Kind.START,
              "Charge on the first day: a share of the usable window, or steady (as after the same"
                  + " years before).")
          .within(0, 1)
          .usual("steady", "the years before were like these")
          .into("startChargeFraction");
  static final Key HOME_COSTS = Key.block("costs", "Prices.", CostKeys.COSTS).into("costs");
  static final Key HOME_ELECTRICAL =
      Key.block("electrical", "For the electrical checks.", WireKeys.ELECTRICAL).into("electrical");
  static final Key CONDUCTORS =
      Key.list(
              "conductors",
              "The wires from the panels to the inverter, any number.",
              WireKeys.CONDUCTOR)
          .into("electrical.conductors");
  static final Key SEED =
      Key.whole("seed", "Where whatever is drawn at random begins.")
          .within(0, 1_000_000_000)
          .usual("1", "")
          .into("seed");
  static final Shape SCENARIO =
      Shape.of(
          "scenario",
          "One home.",
          HOME,
          HOME_NOTE,
          HOME_SITE,
          HOME_WEATHER,
          HOME_SKY,
          ARRAYS,
          HOME_CONTROLLER,
          HOME_BANK,
          HOME_INVERTER,
          HOME_GENERATOR,
          HOME_OTHER_SOURCE,
          HOME_LOADS,
          RESERVE,
          START,
          HOME_ELECTRICAL,
          CONDUCTORS,
          HOME_COSTS,
          SEED);

  /** In the order of the reference page. */
  static List<Shape> shapes() {
    return List.of(
        SCENARIO,
        SITE,
        WeatherKeys.WEATHER,
        SKY,
        CLOUD_ROW,
        ArrayKeys.ARRAY,
        ArrayKeys.MODULE,
        ArrayKeys.CONTROLLER,
        BatteryKeys.BANK,
        BatteryKeys.BATTERY,
        BatteryKeys.ENCLOSURE,
        PowerKeys.INVERTER,
        PowerKeys.SEARCH,
        PowerKeys.CHARGER,
        PowerKeys.GENERATOR,
        PowerKeys.DERATING,
        PowerKeys.OTHER_SOURCE,
        ApplianceKeys.LOADS,
        ApplianceKeys.APPLIANCE,
        LoadKeys.HEATING,
        LoadKeys.COOLING,
        LoadKeys.ROOM,
        LoadKeys.WATER,
        ApplianceKeys.LOG,
        LoadKeys.POLICY,
        WireKeys.ELECTRICAL,
        WireKeys.CONDUCTOR,
        CostKeys.COSTS,
        CostKeys.MEASURE);
  }
}
