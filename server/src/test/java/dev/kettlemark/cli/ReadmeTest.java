package dev.kettlemark.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.Pinned;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What the README shows of the terminal is what the program prints. */
class ReadmeTest {

  private static final Pinned README = Pinned.file(Path.of("../README.md"));

  /** A block that starts with a command, which may go on over lines that end in a backslash. */
  private static final Pattern SHOWN = Pattern.compile(
      "```text\n(\\$ kettlemark (?:[^\n]*\\\\\n)*[^\n]*\n)(.*?)```", Pattern.DOTALL);

  @Test
  void showsWhatTheProgramPrints() {
    StringBuilder actual = new StringBuilder();
    Matcher block = SHOWN.matcher(README.text());
    int blocks = 0;
    while (block.find()) {
      String shown = "```text\n" + block.group(1) + printed(block.group(1)) + "```";
      block.appendReplacement(actual, Matcher.quoteReplacement(shown));
      blocks++;
    }
    block.appendTail(actual);
    assertTrue(blocks >= 4, "only " + blocks + " blocks");
    README.check(actual.toString(), ReadmeTest.class);
  }

  /** What a command prints that is typed in the project's own folder. */
  private static String printed(String command) {
    String[] words = command.replace("\\\n", " ").strip().substring(2).split("\\s+");
    String[] arguments = Arrays.stream(words)
        .skip(1)
        .map(word -> word.startsWith("samples/") ? "../" + word : word)
        .toArray(String[]::new);
    return Run.of(arguments).out().stripTrailing().replace("../samples/", "samples/") + "\n";
  }
}
