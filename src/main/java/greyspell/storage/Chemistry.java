package greyspell.storage;

/** Kinds of battery. */
public enum Chemistry {
  LITHIUM_IRON_PHOSPHATE,
  LEAD_ACID_FLOODED,
  LEAD_ACID_SEALED
}
