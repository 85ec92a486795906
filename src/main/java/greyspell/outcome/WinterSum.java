package greyspell.outcome;

/** What is summed up of each month of a winter, in Wh. */
public enum WinterSum {
  LOAD("load", "asked for at the sockets and on the bus"),
  SERVED("served", "served, what was made up for included"),
  UNMET("unmet", "asked for and not served, whatever the reason"),
  UNMET_EMPTY("unmet_empty", "of it, because the bank was empty"),
  SOLAR_AVAILABLE("solar_available", "from the panels, at the controller's input"),
  SOLAR_USED("solar_used", "from the panels, put on the bus"),
  STANDING("standing", "always-on draw of the system itself"),
  OTHER_USED("other_used", "from the second source, put on the bus"),
  GENERATOR("generator", "from the generator, at its own terminals"),
  LET_GO("shed", "let go by the house's own rules");

  private final String key;
  private final String meaning;

  WinterSum(String key, String meaning) {
    this.key = key;
    this.meaning = meaning;
  }

  /** Name without the unit, as in files. */
  public String key() {
    return key;
  }

  public String meaning() {
    return meaning;
  }
}
