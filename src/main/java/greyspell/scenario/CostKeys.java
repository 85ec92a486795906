package greyspell.scenario;

import greyspell.quantity.Dimension;

/** Prices and what else money needs. The part of {@link Vocabulary} about them. */
final class CostKeys {
  private CostKeys() {}

  static final Key CURRENCY =
      Key.of("currency", Key.Kind.TEXT, "The user's own word.").usual("", "").into("currency");
  static final Key PER_MODULE = price("per_module", "One panel, mounted.", "perModuleCost");
  static final Key PER_PACK =
      price(
          "per_pack",
          "One battery more; of a bank with batteries in series one row.",
          "perPackCost");
  static final Key PER_CONTROLLER =
      price("per_controller", "One charge controller more, mounted.", "perControllerCost");
  static final Key PER_TILTED_MODULE =
      price("per_tilted_module", "Setting one panel to another tilt.", "perTiltedModuleCost");
  static final Key GENERATOR_PRICE =
      price("generator", "A generator with its charger, joined to the house.", "generatorCost");
  static final Key FUEL_PER_LITRE =
      Key.measure("fuel_per_litre", "Generator fuel.", Dimension.NUMBER)
          .within(0, 1e6)
          .into("fuelPerLitreCost");
  static final Key FUEL_PER_GALLON =
      Key.measure(
              "fuel_per_gallon",
              "Generator fuel for a US gallon, instead of fuel_per_litre.",
              Dimension.NUMBER)
          .within(0, 1e6)
          .into("fuelPerLitreCost");
  static final Key PER_GENERATOR_HOUR =
      price(
          "per_generator_hour",
          "Oil and wear of an hour of running, beside the fuel.",
          "perGeneratorHourCost");
  static final Key YEARLY = price("yearly", "Upkeep each year.", "yearlyCost");
  static final Key YEARS =
      Key.whole("years", "Over which costs are added up.")
          .within(1, 100)
          .usual("20", "common practice, no source")
          .into("years");
  static final Key DISCOUNT_RATE =
      Key.measure(
              "discount_rate",
              "By which money of next year counts less than money now, above inflation.",
              Dimension.SHARE)
          .within(0, 0.5)
          .usual("0 %", "money now and later counts alike")
          .into("discountFraction");

  static final Key MEASURE_NAME =
      Key.of("name", Key.Kind.TEXT, "What is done, in a few words.").required().into("name");
  static final Key MEASURE_PRICE =
      Key.measure("price", "What it costs once.", Dimension.NUMBER)
          .within(0, 1e9)
          .required()
          .into("onceCost");
  static final Key MEASURE_KEY =
      Key.of(
              "key",
              Key.Kind.TEXT,
              "Which key of this file it changes: loads.appliances[LED lamp].power.")
          .required()
          .into("path");
  static final Key MEASURE_VALUE =
      Key.of("value", Key.Kind.TEXT, "What that key is then.").required().into("value");
  static final Shape MEASURE =
      Shape.of(
          "measure",
          "Something that could be done beside buying panels and batteries: thrifty lamps, a better freezer.",
          MEASURE_NAME,
          MEASURE_PRICE,
          MEASURE_KEY,
          MEASURE_VALUE);
  static final Key MEASURES =
      Key.list("measures", "What else could be done, any number.", MEASURE).into("measures");

  static final Shape COSTS =
      Shape.of(
          "costs",
          "Prices, all optional, plain numbers in the user's own money. None is ever supplied: what is not stated is told in kWh and hours alone.",
          CURRENCY,
          PER_MODULE,
          PER_PACK,
          PER_CONTROLLER,
          PER_TILTED_MODULE,
          GENERATOR_PRICE,
          FUEL_PER_LITRE,
          FUEL_PER_GALLON,
          PER_GENERATOR_HOUR,
          YEARLY,
          YEARS,
          DISCOUNT_RATE,
          MEASURES);

  private static Key price(String name, String meaning, String component) {
    return Key.measure(name, meaning, Dimension.NUMBER).within(0, 1e9).into(component);
  }
}
