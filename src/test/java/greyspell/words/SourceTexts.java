package greyspell.words;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Texts between quotation marks in a Java file; those that are only added up are one. */
final class SourceTexts {
  private static final String BLOCK = "\"".repeat(3);

  private record Text(int from, int to, String words) {}

  /** Without comments, which are blank. */
  private final StringBuilder source;

  private final List<Text> texts = new ArrayList<>();

  private SourceTexts(String source) {
    this.source = new StringBuilder(source);
    read();
  }

  static SourceTexts of(Path java) throws IOException {
    return of(Files.readString(java));
  }

  static SourceTexts of(String source) {
    return new SourceTexts(source);
  }

  List<String> all() {
    return texts.stream().map(Text::words).toList();
  }

  /** Those between the brackets of each call that the pattern finds the start of. */
  List<String> in(Pattern call) {
    var found = new ArrayList<String>();
    Matcher matcher = call.matcher(source);
    while (matcher.find()) {
      int end = endOfCall(matcher.end());
      for (Text text : texts) {
        if (text.from >= matcher.end() && text.to <= end) {
          found.add(text.words);
        }
      }
    }
    return found;
  }

  private int endOfCall(int from) {
    int depth = 1, next = 0;
    for (int at = from; at < source.length(); at++) {
      while (next < texts.size() && texts.get(next).from < at) {
        next++;
      }
      if (next < texts.size() && texts.get(next).from == at) {
        at = texts.get(next).to - 1;
      } else if (source.charAt(at) == '(') {
        depth++;
      } else if (source.charAt(at) == ')' && --depth == 0) {
        return at;
      }
    }
    return source.length();
  }

  private void read() {
    int at = 0;
    while (at < source.length()) {
      char c = source.charAt(at);
      if (source.indexOf("//", at) == at) {
        at = blank(at, source.indexOf("\n", at));
      } else if (source.indexOf("/*", at) == at) {
        at = blank(at, source.indexOf("*/", at) + 2);
      } else if (c == '\'') {
        at = source.indexOf("'", source.charAt(at + 1) == '\\' ? at + 3 : at + 2) + 1;
      } else if (source.indexOf(BLOCK, at) == at) { // no room here writes one for the pages
        at = blank(at, source.indexOf(BLOCK, at + BLOCK.length()) + BLOCK.length());
      } else if (c == '"') {
        at = text(at);
      } else {
        at++;
      }
    }
  }

  private int blank(int from, int to) {
    source.replace(from, to, " ".repeat(to - from));
    return to;
  }

  private int text(int from) {
    var words = new StringBuilder();
    int at = from + 1;
    while (source.charAt(at) != '"') {
      char c = source.charAt(at);
      if (c == '\\') {
        at++;
        c = source.charAt(at) == 'n' ? '\n' : source.charAt(at);
      }
      words.append(c);
      at++;
    }
    at++;
    Text before = texts.isEmpty() ? null : texts.get(texts.size() - 1);
    if (before != null && source.substring(before.to, from).strip().equals("+")) {
      texts.set(texts.size() - 1, new Text(before.from, at, before.words + words));
    } else {
      texts.add(new Text(from, at, words.toString()));
    }
    return at;
  }
}
