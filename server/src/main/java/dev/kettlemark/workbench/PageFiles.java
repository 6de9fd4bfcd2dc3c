package dev.kettlemark.workbench;

import dev.kettlemark.workbench.http.Answer;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.Map;
import java.util.Optional;

/** The page itself, as the build has packed it into the program. */
final class PageFiles {

  /** Every file by the path under which it is served; nothing else is looked for. */
  private static final Map<String, String> TYPES = Map.of(
      "/workbench.js", "text/javascript; charset=utf-8",
      "/workbench.css", "text/css; charset=utf-8",
      "/mark.svg", "image/svg+xml",
      "/notices.txt", "text/plain; charset=utf-8");

  /** Stands in the page where the nonce of its styles goes. */
  private static final String NONCE = "@nonce@";

  private static final String ABSENT = """
      The page of the workbench was not built into this program.
      Build it with Node and npm: mvn -B -q -DskipTests -pl server -am package
      """;

  private final SecureRandom random = new SecureRandom();

  /** Whether the page was built. */
  static boolean arePacked() {
    return PageFiles.class.getResource("page/index.html") != null;
  }

  Optional<Answer> find(String path) {
    if (path.equals("/")) {
      return Optional.of(index());
    }
    return Optional.ofNullable(TYPES.get(path))
        .flatMap(type -> read(path.substring(1))
            .map(body -> new Answer(200, Map.of("Content-Type", type), body)));
  }

  private Answer index() {
    Optional<byte[]> page = read("index.html");
    if (page.isEmpty()) {
      return Answer.text(501, ABSENT);
    }
    byte[] bytes = new byte[18];
    random.nextBytes(bytes);
    String nonce = Base64.getEncoder().encodeToString(bytes);
    String html = new String(page.get(), StandardCharsets.UTF_8).replace(NONCE, nonce);
    return Answer.of(200, "text/html; charset=utf-8", html)
        .with("Content-Security-Policy", policy(nonce));
  }

  /** The editor component writes its styles into the page itself, and has to show the nonce for it. */
  private static String policy(String nonce) {
    return String.join(
        "; ",
        "default-src 'none'",
        "script-src 'self'",
        "style-src 'self' 'nonce-" + nonce + "'",
        "img-src 'self' data:",
        "connect-src 'self'",
        "base-uri 'none'",
        "form-action 'none'",
        "frame-ancestors 'none'");
  }

  private static Optional<byte[]> read(String name) {
    try (InputStream in = PageFiles.class.getResourceAsStream("page/" + name)) {
      return in == null ? Optional.empty() : Optional.of(in.readAllBytes());
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
