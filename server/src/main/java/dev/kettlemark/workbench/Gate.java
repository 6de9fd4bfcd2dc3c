package dev.kettlemark.workbench;

import dev.kettlemark.workbench.http.Answer;
import dev.kettlemark.workbench.http.Refused;
import dev.kettlemark.workbench.http.RequestHead;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Who may come in.
 *
 * <p>Any page that the user has open elsewhere can send requests to this machine, under its own name or, once its name
 * has been pointed here, under a foreign one. So every request must name this very host and port ({@code Host}), must
 * come from this page if the browser says where from ({@code Origin}, {@code Sec-Fetch-Site}), and must show a cookie.
 * The cookie is given once, for a token that only the terminal has told.
 */
final class Gate {

  private static final String FIRST_PAGE = """
      <!doctype html>
      <html lang="en"><meta charset="utf-8"><meta http-equiv="refresh" content="0; url=/">
      <title>Kettlemark</title><p><a href="/">Open the workbench</a></p></html>
      """;

  private final SecureRandom random = new SecureRandom();
  private final Set<String> tokens = ConcurrentHashMap.newKeySet();
  private final String secret = secret();
  private final String host;

  Gate(int port) {
    this.host = "127.0.0.1:" + port;
  }

  /** What the page is called by its browser. */
  String origin() {
    return "http://" + host;
  }

  /** A fresh address, good for one browser. */
  String address() {
    String token = secret();
    tokens.add(token);
    return origin() + "/?token=" + token;
  }

  /** Hands the cookie to who brings a token; empty for any other request. */
  Optional<Answer> greet(RequestHead head) throws Refused {
    checkHost(head);
    String token = head.query().get("token");
    if (!head.path().equals("/") || token == null) {
      return Optional.empty();
    }
    if (!head.method().equals("GET") || head.field("origin").isPresent()) {
      throw new Refused(403, "an address is opened, not sent");
    }
    if (!tokens.remove(token)) {
      throw new Refused(
          403,
          "This address has been used, or belongs to a workbench that has ended."
              + " Press Enter in the terminal for a fresh one.");
    }
    // A page that leads on, instead of a redirect: what follows then comes from this site, whoever
    // opened the address, and the browser sends the strict cookie along.
    return Optional.of(Answer.of(200, "text/html; charset=utf-8", FIRST_PAGE)
        .with("Set-Cookie", cookieName() + "=" + secret + "; Path=/; HttpOnly; SameSite=Strict"));
  }

  /**
   * Lets a request in, or refuses it.
   *
   * @param fromPage whether only the page itself has reason to send it, so that its origin must be told
   */
  void check(RequestHead head, boolean fromPage) throws Refused {
    checkHost(head);
    Optional<String> from = head.field("origin");
    if (from.isPresent() ? !from.get().equals(origin()) : fromPage) {
      throw new Refused(403, "another site has no business here");
    }
    String site = head.field("sec-fetch-site").orElse("none");
    if (!site.equals("same-origin") && !site.equals("none")) {
      throw new Refused(403, "another site has no business here");
    }
    byte[] shown = head.cookie(cookieName()).orElse("").getBytes(StandardCharsets.UTF_8);
    if (!MessageDigest.isEqual(shown, secret.getBytes(StandardCharsets.UTF_8))) {
      throw new Refused(
          403, "Open the workbench with the address that the terminal shows after Enter.");
    }
  }

  private void checkHost(RequestHead head) throws Refused {
    if (!head.field("host").orElse("").equals(host)) {
      throw new Refused(421, "The workbench is at " + origin());
    }
  }

  /** Cookies do not tell ports apart; the name does, so that two workbenches can be open. */
  private String cookieName() {
    return "kettlemark-" + host.substring(host.indexOf(':') + 1);
  }

  private String secret() {
    byte[] bytes = new byte[24];
    random.nextBytes(bytes);
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }
}
