package dev.kettlemark.protocol.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;

/** SECURITY.md says how many cases of hostile clients are tried; here they are counted. */
class NamedCasesTest {

  private static final Pattern TOLD =
      Pattern.compile("(\\d+) named cases .* of which (\\d+) are tried on the whole server");

  @Test
  void areAsManyAsTheSecurityPageSays() throws Exception {
    WholeServerTest whole = new WholeServerTest();
    HostileProtocolTest wire = new HostileProtocolTest();
    HostileDocumentTest documents = new HostileDocumentTest();
    int onTheWhole = distinct(
        whole.lifeCycle(), whole.messages(), whole.edits(), whole.texts(), whole.spellings());
    int onTheWire = distinct(
        wire.frames(),
        wire.json(),
        wire.lifecycle(),
        wire.methods(),
        wire.parameters(),
        wire.ids(),
        documents.edits(),
        documents.texts(),
        documents.spellings(),
        documents.encodings());
    Matcher told = TOLD.matcher(Files.readString(Path.of("SECURITY.md")));
    assertTrue(told.find());
    assertEquals(
        (onTheWire + onTheWhole) + " and " + onTheWhole, told.group(1) + " and " + told.group(2));
  }

  /** Cases of one name are one case. */
  @SafeVarargs
  private static int distinct(Stream<DynamicTest>... factories) {
    List<String> names = new ArrayList<>();
    for (Stream<DynamicTest> factory : factories) {
      names.addAll(factory.map(DynamicTest::getDisplayName).distinct().toList());
    }
    return names.size();
  }
}
