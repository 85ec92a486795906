package greyspell.quantity;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;

/** What went wrong with a file, in words for people. */
public final class FileTrouble {
  private FileTrouble() {}

  /** A few words without a full stop: {@code permission denied}. */
  public static String words(IOException trouble) {
    if (trouble instanceof NoSuchFileException) {
      return "no such file or folder";
    }
    if (trouble instanceof AccessDeniedException) {
      return "permission denied";
    }
    if (trouble instanceof FileAlreadyExistsException || trouble instanceof NotDirectoryException) {
      return "a file is in the way of a folder";
    }
    if (trouble instanceof CharacterCodingException) {
      return "not a text file in UTF-8";
    }
    String reason = trouble instanceof FileSystemException f ? f.getReason() : trouble.getMessage();
    return reason == null ? "the disk or the network refused" : reason;
  }
}
