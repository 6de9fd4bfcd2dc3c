package dev.kettlemark.checks;

import dev.kettlemark.model.Threshold;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** The page of each rule: what, why, example, better, when to ignore, source. */
public final class RulePages {

  private static final String FOLDER = "/dev/kettlemark/rules/";

  private RulePages() {}

  /** The page as Markdown; empty where no rule has that id. */
  public static Optional<String> page(String id) {
    if (Rules.named(id).isEmpty()) {
      return Optional.empty();
    }
    try (InputStream stream = RulePages.class.getResourceAsStream(FOLDER + id + ".md")) {
      return stream == null
          ? Optional.empty()
          : Optional.of(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  /** The thresholds that a rule goes by, as its page names them. */
  public static List<Threshold<?>> thresholds(String id) {
    String page = page(id).orElse("");
    return Threshold.all().stream()
        .filter(threshold -> page.contains("`" + threshold.word() + "`")
            || page.contains("`threshold " + threshold.word() + "`"))
        .toList();
  }
}
