package greyspell.cli;

import picocli.CommandLine;
import picocli.CommandLine.TypeConversionException;

/** Numbers of the options, refused in words that are no programmer's. */
final class PlainNumbers {
  private PlainNumbers() {}

  /** For a command and those that it has already. */
  static void in(CommandLine line) {
    line.registerConverter(int.class, PlainNumbers::whole);
    line.registerConverter(Integer.class, PlainNumbers::whole);
    line.registerConverter(long.class, PlainNumbers::longWhole);
    line.registerConverter(Long.class, PlainNumbers::longWhole);
    line.registerConverter(double.class, PlainNumbers::number);
    line.registerConverter(Double.class, PlainNumbers::number);
  }

  private static int whole(String text) {
    long number = longWhole(text);
    if (number != (int) number) {
      throw tooLarge(text);
    }
    return (int) number;
  }

  private static long longWhole(String text) {
    try {
      return Long.parseLong(text);
    } catch (NumberFormatException e) {
      throw text.matches("[+-]?[0-9]+")
          ? tooLarge(text)
          : new TypeConversionException("found '" + text + "', must be a whole number");
    }
  }

  private static TypeConversionException tooLarge(String text) {
    return new TypeConversionException("found '" + text + "', which is too large a number");
  }

  /** Neither "NaN" nor "Infinity", which Java would read. */
  private static double number(String text) {
    try {
      double number = Double.parseDouble(text);
      if (Double.isFinite(number)) {
        return number;
      }
    } catch (NumberFormatException e) {
      // told below
    }
    throw new TypeConversionException("found '" + text + "', must be a number");
  }
}
