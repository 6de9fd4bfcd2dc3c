package dev.kettlemark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.Today;
import dev.kettlemark.files.CacheFolder;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class PublishCommandTest {

  private static final String DRAFT = """
      formula odd-one "<script>alert('x')</script> & \\"quotes\\""
        code      OO-1
        status    draft
        percent   of charge
        batch     1000 g
        caution   hot-sugar
        note      "</main><img src=x onerror=alert(1)>"

      stage pan
        60.00 %             white-sugar
        40.00 %             water
        boil      white-sugar, water under lid until dissolved
      """;

  @TempDir
  Path folder;

  private Path library = Path.of("");
  private Path site = Path.of("");
  private final String cache = System.getProperty(CacheFolder.PROPERTY, "");

  @BeforeEach
  void remembersInAFolderOfItsOwn() {
    System.setProperty(CacheFolder.PROPERTY, folder.resolve("cache").toString());
  }

  @AfterEach
  void forgetThatFolder() {
    System.setProperty(CacheFolder.PROPERTY, cache);
  }

  @BeforeEach
  void copySamples() throws IOException {
    library = Files.createDirectories(folder.resolve("library"));
    site = folder.resolve("deep/site");
    try (Stream<Path> files = Files.list(Path.of(Run.SAMPLES))) {
      for (Path file : files.toList()) {
        Bench.write(library, file.getFileName().toString(), Bench.read(file));
      }
    }
  }

  private Run publish(String... more) {
    return Run.of(words(more));
  }

  private void edit(String file, String old, String fresh) {
    String text = Bench.read(library.resolve(file));
    assertTrue(text.contains(old), file);
    Bench.write(library, file, text.replace(old, fresh));
  }

  /** Every file of the site with its text. */
  private Map<String, String> texts() throws IOException {
    try (Stream<Path> files = Files.walk(site)) {
      return files
          .filter(Files::isRegularFile)
          .collect(Collectors.toMap(
              file -> site.relativize(file).toString().replace('\\', '/'),
              Bench::read,
              (one, other) -> one,
              TreeMap::new));
    }
  }

  private String page(String name) throws IOException {
    return Objects.requireNonNull(texts().get(name), name);
  }

  private Set<String> changed(Map<String, String> before) throws IOException {
    Set<String> changed = new TreeSet<>();
    texts().forEach((path, text) -> {
      if (!text.equals(before.get(path))) {
        changed.add(path);
      }
    });
    return changed;
  }

  private static Document parsed(String page) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
      return factory.newDocumentBuilder().parse(new InputSource(new StringReader(page)));
    } catch (Exception broken) {
      throw new AssertionError(broken);
    }
  }

  private static List<Element> all(Document page, String name) {
    NodeList found = page.getElementsByTagName(name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < found.getLength(); i++) {
      elements.add((Element) found.item(i));
    }
    return elements;
  }

  @Test
  void everyLinkLeadsSomewhere() throws IOException {
    Run run = publish("--for", "chef,home,production,bench");
    assertEquals(ExitCode.DONE, run.code(), run.err());
    Map<String, String> texts = texts();
    int links = 0;
    for (Map.Entry<String, String> file : texts.entrySet()) {
      if (!file.getKey().endsWith(".html")) {
        continue;
      }
      Document page = parsed(file.getValue());
      for (Element link : all(page, "a")) {
        String address = link.getAttribute("href");
        if (address.startsWith("#")) {
          assertTrue(file.getValue().contains(" id=\"" + address.substring(1) + "\""), address);
        } else {
          Path target = Path.of("/").resolve(file.getKey()).resolveSibling(address);
          assertTrue(
              texts.containsKey(target.normalize().toString().substring(1)),
              file.getKey() + " leads to " + address);
        }
        links++;
      }
    }
    assertTrue(links > 300, links + " links");
  }

  /** HTML Living Standard and WCAG 2.2, success criteria 2.4.1, 3.1.1 and 1.3.1, from memory. */
  @Test
  void everyPageStandsAlone() throws IOException {
    publish("--language", "de-DE");
    texts().forEach((path, text) -> {
      if (path.endsWith(".html")) {
        Document page = parsed(text);
        assertEquals("de-DE", page.getDocumentElement().getAttribute("lang"), path);
        assertEquals(1, all(page, "main").size(), path);
        assertEquals(1, all(page, "h1").size(), path);
        assertEquals("#main", all(page, "a").get(0).getAttribute("href"), path);
        String policy = all(page, "meta").stream()
            .filter(meta -> meta.getAttribute("http-equiv").equals("Content-Security-Policy"))
            .map(meta -> meta.getAttribute("content"))
            .findFirst()
            .orElseThrow();
        assertTrue(policy.startsWith("default-src 'none'; style-src 'sha256-"), policy);
        assertFalse(policy.contains("unsafe-inline"), policy);
        for (Element element : all(page, "*")) {
          for (String attribute : List.of("src", "href", "action", "data", "poster")) {
            assertFalse(element.getAttribute(attribute).matches("(?i)[a-z][a-z0-9+.-]*:.*"), path);
          }
          assertFalse(element.getTagName().equals("link"), path);
        }
        Set<String> ids = new TreeSet<>();
        all(page, "*").stream()
            .map(element -> element.getAttribute("id"))
            .filter(id -> !id.isEmpty())
            .forEach(id -> assertTrue(ids.add(id), path + " has " + id + " twice"));
      }
    });
  }

  @Test
  void writesNothingTheSecondTime() throws IOException {
    publish();
    Map<String, String> before = texts();
    FileTime old = FileTime.from(Instant.EPOCH);
    for (String path : before.keySet()) {
      Files.setLastModifiedTime(site.resolve(path), old);
    }
    Run run = publish();
    assertTrue(run.out().contains(": 0 written, "), run.out());
    assertEquals(before, texts());
    for (String path : before.keySet()) {
      assertEquals(old, Files.getLastModifiedTime(site.resolve(path)), path);
    }
  }

  /** What is the same in every respect is not worked out again; a page that was touched is. */
  @Test
  void knowsASiteThatWasMadeFromTheSame() throws IOException {
    publish();
    Map<String, String> before = texts();
    Run again = Run.of(true, Map.of(), "", words());
    assertFalse(again.err().contains("\r[#"), again.err());
    assertTrue(again.out().contains(": 0 written, "), again.out());
    Bench.write(site, "sheets/white-fondant-chef.html", "spoilt");
    Run mended = Run.of(true, Map.of(), "", words());
    assertTrue(mended.err().contains("\r[#"), mended.err());
    assertEquals(before, texts());
    assertFalse(Run.of(true, Map.of(), "", words()).err().contains("\r[#"));
    assertTrue(Run.of(true, Map.of(), "", words("--for", "home")).err().contains("\r[#"));
  }

  /** A second publication of the same, worked out anew, gives the same bytes. */
  @Test
  void isWrittenTheSameWhenForced() throws IOException {
    publish("--for", "chef,production");
    Map<String, String> before = texts();
    publish("--for", "chef,production", "--force");
    assertEquals(before, texts());
  }

  private String[] words(String... more) {
    List<String> words =
        new ArrayList<>(List.of("publish", library.toString(), "--out", site.toString()));
    words.addAll(List.of(more));
    return words.toArray(String[]::new);
  }

  /** A sheet says when it was made out; that alone is no news. */
  @Test
  void writesNothingTheNextMorning() throws IOException {
    publish();
    Map<String, String> before = texts();
    String out = publish(at(Today.DAY.plusDays(1)));
    assertTrue(out.contains(": 0 written, "), out);
    assertEquals(before, texts());
  }

  /** The clock is set years on and back while the pages are written: they are all of the first day. */
  @Test
  void isMadeOnOneDayWhateverTheClockDoesMeanwhile() throws IOException {
    publish();
    Map<String, String> before = texts();
    try (Stream<Path> files = Files.walk(site)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Files.delete(file);
      }
    }
    publish(new SetClock());
    assertEquals(before, texts());
    String again = publish(at(Today.DAY));
    assertTrue(again.contains(": 0 written, "), again);
  }

  private String publish(Clock clock) {
    StringWriter out = new StringWriter();
    Terminal terminal = new Terminal(
        new ByteArrayInputStream(new byte[0]),
        new ByteArrayOutputStream(),
        new PrintWriter(out),
        new PrintWriter(new StringWriter()),
        false,
        Map.of(),
        () -> clock);
    KettlemarkCommand.run(terminal, words());
    return out.toString();
  }

  /** Shows the day of the tests when it is first looked at, then by turns years later and earlier. */
  private static final class SetClock extends Clock {

    private final AtomicInteger looks = new AtomicInteger();

    @Override
    public Instant instant() {
      int look = looks.getAndIncrement();
      int years = look == 0 ? 0 : look % 2 == 0 ? 30 : -30;
      return at(Today.DAY.plusYears(years)).instant();
    }

    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return this;
    }
  }

  private static Clock at(LocalDate day) {
    return Clock.fixed(day.atStartOfDay(ZoneOffset.UTC).toInstant(), ZoneOffset.UTC);
  }

  @Test
  void writesOnlyWhatAnEditTouches() throws IOException {
    publish();
    Map<String, String> before = texts();
    edit("white-fondant.kettle", "version   1  on 2026-01-22", "version   2  on 2026-04-01");
    publish();
    assertEquals(
        Set.of(
            "changes.html", "index.html", "kettlemark-site.txt", "sheets/white-fondant-chef.html"),
        changed(before));
    String changes = page("changes.html");
    assertTrue(changes.contains("Version: 1 → 2"), changes);
    assertTrue(changes.contains("Date: 2026-01-22 → 2026-04-01"), changes);
  }

  @Test
  void followsAFormulaToTheProductThatIsMadeOfIt() throws IOException {
    publish();
    Map<String, String> before = texts();
    edit("chewy-caramel.kettle", "smoked-salt", "salt");
    publish();
    assertTrue(changed(before)
        .containsAll(Set.of("sheets/chewy-caramel-chef.html", "sheets/caramel-dome-chef.html")));
    assertFalse(changed(before).contains("sheets/peanut-brittle-chef.html"));
  }

  @Test
  void takesAwayOnlyWhatItWrote() throws IOException {
    publish("--for", "chef,home");
    Bench.write(site, "sheets/of-somebody.html", "mine");
    Path kept = site.resolve("sheets/white-fondant-home.html");
    Files.writeString(kept, Files.readString(kept) + "<!-- by hand -->");
    Files.delete(library.resolve("white-fondant.kettle"));
    Run run = publish("--for", "chef,home");
    assertTrue(run.out().contains(" 1 removed"), run.out());
    assertTrue(run.err().contains("sheets/white-fondant-home.html"), run.err());
    assertFalse(Files.exists(site.resolve("sheets/white-fondant-chef.html")));
    assertTrue(Files.exists(kept));
    assertEquals("mine", Bench.read(site.resolve("sheets/of-somebody.html")));
    assertTrue(page("changes.html").contains("White fondant"));
  }

  @Test
  void restoresAPageThatWasSpoilt() throws IOException {
    publish();
    Map<String, String> before = texts();
    Bench.write(site, "sheets/white-fondant-chef.html", "spoilt");
    Files.delete(site.resolve("changes.html"));
    publish();
    assertEquals(
        before.get("sheets/white-fondant-chef.html"), page("sheets/white-fondant-chef.html"));
    assertTrue(Files.exists(site.resolve("changes.html")));
  }

  @Test
  void refusesAFolderWithForeignPages() throws IOException {
    Bench.write(site, "index.html", "of somebody else");
    Run run = publish();
    assertEquals(ExitCode.NOT_RUN, run.code());
    assertTrue(run.err().contains("index.html"), run.err());
    assertEquals(Set.of("index.html"), texts().keySet());
    assertEquals(ExitCode.DONE, publish("--force").code());
    assertTrue(page("index.html").contains("heather-nougat"));
  }

  @Test
  void refusesAFolderThatHoldsTheLibrary() throws IOException {
    for (Path bad : List.of(library, folder, library.resolve("../library"))) {
      site = bad;
      Run run = publish();
      assertEquals(ExitCode.NOT_RUN, run.code());
      assertTrue(run.err().contains("the library lies in it"), run.err());
      assertFalse(Files.exists(bad.resolve("index.html")));
    }
  }

  @Test
  void followsNoLink() throws IOException {
    Path outside = Files.createDirectories(folder.resolve("outside"));
    Files.createDirectories(site);
    Files.createSymbolicLink(site.resolve("sheets"), outside);
    Run run = publish();
    assertEquals(ExitCode.NOT_RUN, run.code());
    assertTrue(run.err().contains("leads over a link"), run.err());
    try (Stream<Path> files = Files.list(outside)) {
      assertEquals(0, files.count());
    }
    Path link = folder.resolve("link");
    Files.createSymbolicLink(link, outside);
    site = link;
    assertTrue(publish("--force").err().contains("it is a link"));
  }

  @Test
  void believesNoManifestThatLeadsOutside() throws IOException {
    publish();
    Path outside = Bench.write(site.resolve(".."), "outside.html", "");
    Files.writeString(
        site.resolve("kettlemark-site.txt"),
        Bench.read(site.resolve("kettlemark-site.txt"))
            + "page\t../outside.html\t47DEQpj8HBSa-_TImW-5JCeuQeRkm5NMpJWZG3hSuFU\t2026-04-01\n");
    publish();
    assertTrue(Files.exists(outside));
    Bench.write(site, "kettlemark-site.txt", "of another program\n");
    assertEquals(ExitCode.NOT_RUN, publish().code());
  }

  @Test
  void refusesWhatIsReleasedAndBroken() throws IOException {
    Bench.write(
        library,
        "broken.kettle",
        Bench.BROKEN.replace("  caution", "  status    released\n  caution"));
    Run run = publish();
    assertEquals(ExitCode.FOUND, run.code(), run.err());
    assertTrue(run.err().contains("plain-syrup"), run.err());
    assertFalse(Files.exists(site));
  }

  @Test
  void marksADraftAndLetsNoTextAct() throws IOException {
    Bench.write(library, "odd.kettle", DRAFT);
    assertEquals(ExitCode.DONE, publish().code());
    String page = page("sheets/odd-one-chef.html");
    Document parsed = parsed(page);
    assertEquals("draft", all(parsed, "body").get(0).getAttribute("data-mark"));
    assertEquals(0, all(parsed, "img").size());
    assertEquals(1, all(parsed, "script").size());
    assertEquals("application/ld+json", all(parsed, "script").get(0).getAttribute("type"));
    Document list = parsed(page("index.html"));
    assertEquals(1, all(list, "script").size());
    assertTrue(page("index.html").contains("&lt;script&gt;alert"));
    publish("--status", "released");
    assertFalse(Files.exists(site.resolve("sheets/odd-one-chef.html")));
  }

  @Test
  void tellsHowFarItIsOnATerminalOnly() {
    Run seen = Run.of(true, Map.of(), "", "publish", library.toString(), "--out", site.toString());
    assertTrue(seen.err().contains("\r[###"), seen.err());
    Run quiet = publish("--quiet");
    assertEquals("", quiet.out() + quiet.err());
  }

  @Test
  void makesTheSamePagesElsewhere() throws IOException {
    publish("--for", "production");
    Map<String, String> here = texts();
    site = folder.resolve("another");
    publish("--for", "production");
    assertEquals(here, texts());
  }
}
