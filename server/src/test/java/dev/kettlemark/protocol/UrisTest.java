package dev.kettlemark.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Escapes as RFC 3986 has them, section 2.1, and as clients were seen to write them. */
class UrisTest {

  @ParameterizedTest
  @CsvSource({
    "file:///a/b.kettle, /a/b.kettle",
    "file:///a/50%20%25%20s%C3%BC%C3%9F%20%231/b.kettle, /a/50 % süß #1/b.kettle",
    // Eglot 1.9 leaves the percent sign of the name as it is.
    "file:///a/50%20%%20s%C3%BC%C3%9F%20%231/b.kettle, /a/50 % süß #1/b.kettle",
    "file:///a/100%.kettle, /a/100%.kettle",
    // Kate 22.12 writes the folder of its project so.
    "file:///a/Rook Haven süß/b.kettle, /a/Rook Haven süß/b.kettle",
    "file:///a/{1}|^`.kettle, /a/{1}|^`.kettle",
  })
  void readsTheFileOfAnAddress(String uri, String path) {
    assertEquals(Optional.of(Path.of(path)), Uris.path(uri));
  }

  @ParameterizedTest
  @CsvSource({"untitled:Untitled-1", "kettlemark-page:/a.md", "file://", "%%", "a b"})
  void otherAddressesHaveNoFile(String uri) {
    assertEquals(Optional.empty(), Uris.path(uri));
  }
}
