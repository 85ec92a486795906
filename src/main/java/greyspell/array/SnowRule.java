package greyspell.array;

/** What becomes of snow on a plane of panels. */
public enum SnowRule {
  /** It never lies, or is swept away at once. */
  NONE,
  /** It lies until it slides, see {@link SnowCover}. */
  SLIDES
}
