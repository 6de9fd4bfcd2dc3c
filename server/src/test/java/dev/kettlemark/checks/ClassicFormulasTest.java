package dev.kettlemark.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.Pinned;
import dev.kettlemark.library.Document;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Formulas as they are made everywhere, of other kinds than the samples: nothing may be held against them.
 *
 * <p>Their proportions are common practice, no source.
 */
class ClassicFormulasTest {

  static List<Path> formulas() throws IOException {
    try (Stream<Path> files = Files.list(Pinned.folder("checks/classics"))) {
      return files.sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("formulas")
  void isFreeOfErrorsAndWarnings(Path file) throws IOException {
    Document document = Document.of(file.getFileName().toString(), Files.readString(file));
    assertEquals(
        List.of(),
        Listing.findings(List.of(document)).stream()
            .filter(finding -> finding.severity().compareTo(Severity.WARNING) <= 0)
            .map(Listing.Shown::line)
            .toList());
  }

  @Test
  void thereAreManyKinds() throws IOException {
    assertTrue(formulas().size() >= 20);
  }
}
