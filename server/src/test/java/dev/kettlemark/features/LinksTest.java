package dev.kettlemark.features;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.kettlemark.syntax.ParsedText;
import java.util.List;
import org.junit.jupiter.api.Test;

class LinksTest {

  private static List<String> targets(String text) {
    return Links.of(ParsedText.of(text)).stream()
        .peek(link -> assertEquals(link.target(), link.span().of(text)))
        .map(Links.Link::target)
        .toList();
  }

  @Test
  void findsAddressesInQuotesAndComments() {
    assertEquals(
        List.of("https://example.org/a?b=c#d", "http://example.org/x"),
        targets(
            "ingredient i\n  note \"see https://example.org/a?b=c#d.\" # (http://example.org/x)\n"));
  }

  @Test
  void findsNothingElsewhere() {
    assertEquals(List.of(), targets("formula f\n  note \"www and https:// alone, ftp://x.org\"\n"));
    assertEquals(List.of(), targets("formula https://example.org\n"));
  }
}
