package greyspell.load;

/** How much the house depends on a load. */
public enum Priority {
  MUST_RUN,
  SHOULD_RUN,
  CAN_WAIT
}
