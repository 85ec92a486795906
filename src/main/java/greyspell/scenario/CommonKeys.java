package greyspell.scenario;

/** Keys and words that many blocks share. */
final class CommonKeys {
  static final String PRACTICE = "common practice, no source";
  static final String SILICON = "typical of crystalline silicon; " + PRACTICE;

  private CommonKeys() {}

  static Key from() {
    return Key.of(
        "from",
        Key.Kind.TEXT,
        "Name of an entry of the equipment library; what is written beside it goes before the"
            + " entry's own values.");
  }

  static Key name(String usual) {
    return Key.of("name", Key.Kind.TEXT, "What it is called on the pages.")
        .usual(usual, "")
        .into("name");
  }

  static Key note() {
    return Key.of("note", Key.Kind.TEXT, "Free words; not used.");
  }
}
