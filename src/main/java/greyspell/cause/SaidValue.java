package greyspell.cause;

import greyspell.quantity.Show;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;

/** One value within a sentence: what it is, so that each language can write it in its own way. */
public sealed interface SaidValue {
  /** As English writes it. */
  String shown();

  /** An amount of energy. */
  record Energy(double wh) implements SaidValue {
    @Override
    public String shown() {
      return Show.energy(wh);
    }
  }

  /** A power. */
  record Power(double powerW) implements SaidValue {
    @Override
    public String shown() {
      return Show.power(powerW);
    }
  }

  /** A share of 1. */
  record Percent(double ofWholeShare) implements SaidValue {
    @Override
    public String shown() {
      return Show.percent(ofWholeShare);
    }
  }

  /** A bare number of things: panels, packs, winters; the pattern has the word for them. */
  record Count(int number) implements SaidValue {
    @Override
    public String shown() {
      return Integer.toString(number);
    }
  }

  /** A length of time in hours; with its word, since languages tell one from many. */
  record Hours(double lengthH) implements SaidValue {
    @Override
    public String shown() {
      return Show.hours(lengthH);
    }
  }

  /** A length of time in days, with its word. */
  record Days(double lengthD) implements SaidValue {
    @Override
    public String shown() {
      return Show.days(lengthD);
    }
  }

  /** A day of the calendar. In a typical or drawn year the year means nothing and is not shown. */
  record Day(LocalDate date, boolean isYearShown) implements SaidValue {
    @Override
    public String shown() {
      return isYearShown ? Show.date(date) : Show.day(date);
    }
  }

  /** An hour of the clock by its start, 0 to 24. */
  record Clock(int hourOfDay) implements SaidValue {
    @Override
    public String shown() {
      return (hourOfDay < 10 ? "0" : "") + hourOfDay + ":00";
    }
  }

  /** An angle. */
  record Angle(double angleDeg) implements SaidValue {
    @Override
    public String shown() {
      return Show.angle(angleDeg);
    }
  }

  /** Fuel. */
  record Litres(double fuelL) implements SaidValue {
    @Override
    public String shown() {
      return Show.number(fuelL).concat(" L");
    }
  }

  /** A temperature. */
  record Temperature(double temperatureC) implements SaidValue {
    @Override
    public String shown() {
      return Show.temperature(temperatureC);
    }
  }

  /** What another room has written out in English; said in a language that has words for it. */
  record Phrase(String english) implements SaidValue {
    @Override
    public String shown() {
      return english;
    }
  }

  /**
   * The user's own word: a home, a plane, an appliance, a winter. Never translated; what the
   * program calls a thing without a name is.
   */
  record Name(String name) implements SaidValue {
    @Override
    public String shown() {
      return name;
    }
  }

  /** Energy by the user's own names, most first: "Well pump 1.20 kWh; Laptop 0.31 kWh". */
  record Amounts(List<Amount> amounts) implements SaidValue {
    public Amounts {
      amounts = List.copyOf(amounts);
    }

    @Override
    public String shown() {
      return amounts.stream()
          .map(a -> a.name() + " " + Show.energy(a.wh()))
          .collect(Collectors.joining("; "));
    }
  }

  /** Of one load. */
  record Amount(String name, double wh) {}

  /** A word of the program, by its own key, to be said in the same language: "cause.snow". */
  record Word(String key) implements SaidValue {
    @Override
    public String shown() {
      return key;
    }
  }
}
