package dev.kettlemark.sheets;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What stands around a page that is one of several: the ways to the others, a way past them, and a policy
 * that lets the page do nothing but show itself.
 *
 * @param label what the ways are called to those who do not see them
 * @param skip the words of the way to the content
 * @param mark what is written across the page, such as that it is a draft
 */
public record Frame(String label, String skip, List<Way> ways, Optional<String> mark) {

  private static final String MAIN = "main";

  /** Where the policy will stand. */
  private static final String POLICY = "policy-of-this-page";

  private static final Pattern STYLE = Pattern.compile("<style>(.*?)</style>", Pattern.DOTALL);
  private static final Pattern STYLED = Pattern.compile(" style=\"([^\"]*)\"");
  private static final Pattern SCRIPT = Pattern.compile("<script>(.*?)</script>", Pattern.DOTALL);

  public Frame {
    ways = List.copyOf(ways);
  }

  /** A way to another page; the page itself has no address. */
  public record Way(String text, Optional<String> address) {}

  /** The page with all that stands around it. */
  String around(Element html) {
    html.child("body").ifPresent(body -> {
      body.child(MAIN).ifPresent(main -> main.with("id", MAIN).with("tabindex", "-1"));
      mark.ifPresent(text -> body.with("data-mark", text));
      body.insert(
          0,
          Element.of("a").with("class", "skip").with("href", "#" + MAIN).text(skip),
          navigation());
    });
    html.child("head")
        .ifPresent(head -> head.insert(
            1,
            Element.of("meta")
                .with("http-equiv", "Content-Security-Policy")
                .with("content", POLICY),
            Element.of("meta").with("name", "referrer").with("content", "no-referrer")));
    // Written once: the policy is hashed from the page, and no text of a source stands before its
    // place.
    StringBuilder page = new StringBuilder(html.page());
    int place = page.indexOf(POLICY);
    return page.replace(place, place + POLICY.length(), policy(page.toString())).toString();
  }

  private Element navigation() {
    Element list = Element.of("ul");
    for (Way way : ways) {
      list.add(Element.of("li")
          .add(way.address()
              .map(address -> Element.of("a").with("href", address))
              .orElseGet(() -> Element.of("span").with("aria-current", "page"))
              .text(way.text())));
    }
    Element navigation =
        Element.of("nav").with("class", "ways").with("aria-label", label).add(list);
    mark.ifPresent(text -> navigation.add(Element.of("p").with("class", "mark").text(text)));
    return navigation;
  }

  /**
   * Nothing is fetched, sent or framed, and only the styles and scripts that the page carries count.
   *
   * <p>W3C Content Security Policy Level 3, from memory: a hash allows exactly one text.
   */
  static String policy(String page) {
    String styles = hashes(STYLE, page);
    String styled = hashes(STYLED, page);
    String scripts = hashes(SCRIPT, page);
    return "default-src 'none'; style-src"
        + (styles + styled).concat(styles.isEmpty() && styled.isEmpty() ? " 'none'" : "")
        + (styled.isEmpty() ? "" : " 'unsafe-hashes'")
        + "; script-src"
        + (scripts.isEmpty() ? " 'none'" : scripts)
        + "; img-src data:; base-uri 'none'; form-action 'none'";
  }

  private static String hashes(Pattern pattern, String page) {
    TreeSet<String> hashes = new TreeSet<>();
    Matcher found = pattern.matcher(page);
    while (found.find()) {
      hashes.add(" 'sha256-" + hash(found.group(1)) + "'");
    }
    return String.join("", hashes);
  }

  private static String hash(String text) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return Base64.getEncoder().encodeToString(digest);
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
