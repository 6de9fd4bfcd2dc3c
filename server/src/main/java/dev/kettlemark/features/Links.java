package dev.kettlemark.features;

import dev.kettlemark.syntax.Lexeme;
import dev.kettlemark.syntax.ParsedText;
import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Addresses of pages in quotes and comments; the language itself names no files. */
public final class Links {

  /** A point, a bracket or a comma at the end belongs to the sentence. */
  private static final Pattern ADDRESS =
      Pattern.compile("https?://[^\\s\"<>\\\\^`{|}]*[^\\s\"<>\\\\^`{|}.,;:!?')\\]]");

  private Links() {}

  /**
   * An address in a text.
   *
   * @param span where it stands, absolute
   */
  public record Link(Span span, String target) {}

  /** The addresses of a text, in order. */
  public static List<Link> of(ParsedText text) {
    List<Link> links = new ArrayList<>();
    for (ParsedText.PlacedSection placed : text.sections()) {
      for (Lexeme lexeme : placed.section().lexemes()) {
        if (lexeme.kind() == Lexeme.Kind.TEXT || lexeme.kind() == Lexeme.Kind.COMMENT) {
          Matcher found = ADDRESS.matcher(placed.section().text());
          found.region(lexeme.span().start(), lexeme.span().end());
          while (found.find()) {
            Span span = new Span(found.start(), found.end());
            links.add(new Link(span.shiftedBy(placed.offset()), found.group()));
          }
        }
      }
    }
    return links;
  }
}
