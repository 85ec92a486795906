package greyspell.quantity;

/**
 * Where in a user's file something was read; line and column count from 1, 0 means "the file as a
 * whole".
 */
public record Place(String file, int line, int column) {
  public static Place of(String file) {
    return new Place(file, 0, 0);
  }

  @Override
  public String toString() {
    return line == 0 ? file : file + ":" + line + ":" + column;
  }
}
