package greyspell.scenario;

import greyspell.weather.ensemble.WinterKind;

/** The keys of the weather and of its many winters. */
final class WeatherKeys {
  static final int MOST_WINTERS = 10_000;

  private WeatherKeys() {}

  static final Key FILE =
      Key.of(
              "file",
              Key.Kind.PATHS,
              "Hourly weather, relative to this file; of several years perhaps a list of files. May"
                  + " be left out beside means.")
          .into("files");
  static final Key YEARS =
      Key.of(
              "years",
              Key.Kind.PATHS,
              "Measured years of the place from which winters are drawn; a typical year in file is"
                  + " ranked beside them. Left out, the years of file.")
          .into("years");
  static final Key MEANS =
      Key.of(
              "means",
              Key.Kind.PATH,
              "Twelve monthly means of sunshine and temperature (docs/weather-files.md), from which"
                  + " winters are made.")
          .into("means");
  static final Key WINTERS =
      Key.whole("winters", "So many winters are drawn and run by each run.")
          .within(1, MOST_WINTERS)
          .mend("100 tell of the winter that comes once in ten years.")
          .into("winters");
  static final Key HOW =
      Key.word(
              "how",
              "Where winters come from: measured replays those of the years one by one, spliced"
                  + " joins stretches of them anew, made draws them from monthly means.",
              WinterKind.values())
          .usual("by what there is", "")
          .into("how");
  static final Key MEMORY =
      Key.word(
              "memory",
              "How long the sky of made winters lasts: grey_spells has grey and bright weeks,"
                  + " one_lag remembers only the day before.",
              WeatherChoice.Memory.values())
          .usual("grey_spells", "")
          .into("memory");
  static final Key SEED =
      Key.whole("seed", "Where the drawing of winters begins; another number, other winters.")
          .within(0, 1_000_000_000)
          .usual("1", "")
          .into("seed");
  static final Shape WEATHER =
      Shape.shortened(
          "weather",
          "Which weather the house stands in, and how many winters of it are drawn.",
          FILE,
          YEARS,
          MEANS,
          WINTERS,
          HOW,
          MEMORY,
          SEED);
}
