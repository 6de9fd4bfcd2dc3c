package dev.kettlemark.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.Today;
import java.io.IOException;
import java.net.BindException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Who gets what from the workbench, and who does not.
 *
 * <p>Status codes by RFC 9110, section 15; that a server must look at Host and Origin itself, by RFC 9110, section 7.2,
 * and RFC 6455, section 10.2.
 */
@Timeout(value = 90, unit = TimeUnit.SECONDS)
class WorkbenchTest {

  private static final String FORMULA = """
      formula syrup
        batch 1000 g

      stage boil
        60.00 % white-sugar
        40.00 % water
        cook to 110 °C
      """;

  @TempDir
  private Path outside;

  private Path folder;
  private Visit visit;

  @BeforeEach
  void open() throws IOException {
    folder = Files.createDirectory(outside.resolve("library"));
    Files.writeString(folder.resolve("syrup.kettle"), FORMULA);
    Files.writeString(outside.resolve("secret.kettle"), "formula secret\n");
    visit = Visit.of(folder);
  }

  @AfterEach
  void close() {
    visit.close();
  }

  @Test
  void listensOnTheLoopbackAddressAlone() throws IOException {
    Path table = Path.of("/proc/net/tcp");
    Assumptions.assumeTrue(Files.exists(table), "the socket table is Linux's");
    String port = "%04X".formatted(visit.workbench.port());
    List<String> listening = new ArrayList<>();
    for (String name : List.of("tcp", "tcp6")) {
      try (Stream<String> lines = Files.lines(Path.of("/proc/net/" + name))) {
        lines
            .map(line -> line.strip().split("\\s+"))
            .filter(cells -> cells.length > 3 && cells[3].equals("0A"))
            .map(cells -> cells[1])
            .filter(address -> address.endsWith(":" + port))
            .map(address -> address.substring(0, address.indexOf(':')))
            .forEach(listening::add);
      }
    }
    // 127.0.0.1 in the byte order of the machine, or the same written as an address of IPv6.
    assertEquals(1, listening.size(), listening::toString);
    assertTrue(
        List.of("0100007F", "0000000000000000FFFF00000100007F").contains(listening.get(0)),
        listening::toString);
  }

  @Test
  void anAddressIsGoodOnce() throws IOException {
    String address = visit.workbench.address();
    String target = address.substring(address.indexOf("/?"));
    Wire.Reply first = visit.get(target, "Cookie", "");
    assertEquals(200, first.status());
    String cookie = first.header("set-cookie");
    assertTrue(cookie.contains("HttpOnly"), cookie);
    assertTrue(cookie.contains("SameSite=Strict"), cookie);
    assertEquals(403, visit.get(target, "Cookie", "").status());
    assertEquals(403, visit.get("/?token=guessed", "Cookie", "").status());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"/", "/workbench.js", "/api/files", "/api/file?path=syrup.kettle", "/language"})
  void nothingIsShownWithoutTheCookie(String path) throws IOException {
    for (String cookie : List.of("", "kettlemark-1=x", visit.cookie + "x")) {
      Wire.Reply reply = visit.get(path, "Cookie", cookie, "Origin", visit.origin());
      assertEquals(403, reply.status());
      assertFalse(reply.body().contains("white-sugar"), reply::body);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"rebound.example", "localhost", "127.0.0.1", "127.0.0.1:1", "[::1]"})
  void aNameThatWasPointedHereIsRefused(String host) throws IOException {
    assertEquals(421, visit.get("/api/files", "Host", host).status());
    String address = visit.workbench.address();
    assertEquals(
        421, visit.get(address.substring(address.indexOf("/?")), "Host", host).status());
  }

  @ParameterizedTest
  @ValueSource(strings = {"http://evil.example", "null", "https://127.0.0.1", "http://127.0.0.1:1"})
  void anotherSiteIsRefused(String origin) throws IOException {
    assertEquals(403, visit.get("/api/files", "Origin", origin).status());
    assertEquals(
        403,
        visit
            .ask("PUT", "/api/file?path=new.kettle", "x", "Origin", origin, "If-None-Match", "*")
            .status());
    try (Wire wire = visit.wire()) {
      Wire.Reply reply = wire.handshake(
          "/language", "Host", visit.host(), "Cookie", visit.cookie, "Origin", origin);
      assertEquals(403, reply.status());
    }
    assertFalse(Files.exists(folder.resolve("new.kettle")));
  }

  @Test
  void whoDoesNotSayWhereFromMayOnlyLook() throws IOException {
    assertEquals(200, visit.get("/api/files", "Sec-Fetch-Site", "").status());
    assertEquals(403, visit.get("/api/files", "Sec-Fetch-Site", "cross-site").status());
    assertEquals(403, visit.get("/api/files", "Sec-Fetch-Site", "same-site").status());
    assertEquals(403, visit.ask("POST", "/api/end", "", "Origin", "").status());
    try (Wire wire = visit.wire()) {
      assertEquals(
          403,
          wire.handshake("/language", "Host", visit.host(), "Cookie", visit.cookie)
              .status());
    }
  }

  @Test
  void everyAnswerForbidsWhatThePageDoesNotNeed() throws IOException {
    for (String path : List.of("/", "/api/files", "/nowhere")) {
      Wire.Reply reply = visit.get(path);
      assertTrue(reply.header("content-security-policy").contains("default-src 'none'"), path);
      assertTrue(reply.header("content-security-policy").contains("frame-ancestors 'none'"), path);
      assertFalse(reply.header("content-security-policy").contains("unsafe"), path);
      assertEquals("nosniff", reply.header("x-content-type-options"));
      assertEquals("no-referrer", reply.header("referrer-policy"));
      assertEquals("no-store", reply.header("cache-control"));
      assertEquals("", reply.header("access-control-allow-origin"));
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "../secret.kettle",
        "..%2fsecret.kettle",
        "%2e%2e%2fsecret.kettle",
        "..%5csecret.kettle",
        "sub/../../secret.kettle",
        "/etc/passwd",
        "%2fetc%2fpasswd",
        "syrup.kettle%00.txt",
        ".hidden.kettle",
        "C:secret.kettle",
        "",
        "%c0%ae%c0%ae/secret.kettle",
        "syrup.kettle/",
        "notes.txt",
        "link.kettle",
        "linked/secret.kettle"
      })
  void noPathLeadsOutOfTheFolder(String path) throws IOException {
    Files.writeString(folder.resolve("notes.txt"), "secret");
    Files.writeString(folder.resolve(".hidden.kettle"), "formula secret");
    Files.createSymbolicLink(folder.resolve("link.kettle"), outside.resolve("secret.kettle"));
    Files.createSymbolicLink(folder.resolve("linked"), outside);
    String before = Files.readString(outside.resolve("secret.kettle"));
    Wire.Reply read = visit.get("/api/file?path=" + path);
    assertTrue(read.status() == 400 || read.status() == 404, () -> path + ": " + read);
    assertFalse(read.body().contains("formula secret"), read::body);
    for (String condition : List.of("If-None-Match", "If-Match")) {
      Wire.Reply put = visit.ask(
          "PUT",
          "/api/file?path=" + path,
          "formula mine\n",
          condition,
          condition.equals("If-Match") ? "\"00\"" : "*");
      assertTrue(put.status() == 400 || put.status() == 404, () -> path + ": " + put);
    }
    assertEquals(before, Files.readString(outside.resolve("secret.kettle")));
    assertFalse(visit.get("/api/files").body().contains("secret"));
  }

  /** RFC 3986, section 2.4: what is encoded twice is decoded once, and is then a name like any other. */
  @Test
  void aPathIsDecodedOnce() throws IOException {
    String target = "/api/file?path=%252e%252e%252fsecret.kettle";
    assertEquals(404, visit.get(target).status());
    assertEquals(201, visit.ask("PUT", target, "# x\n", "If-None-Match", "*").status());
    assertEquals("# x\n", Files.readString(folder.resolve("%2e%2e%2fsecret.kettle")));
  }

  @Test
  void aNewFileBelowALinkThatLeadsOutIsNotMade() throws IOException {
    Files.createSymbolicLink(folder.resolve("linked"), outside);
    Wire.Reply reply =
        visit.ask("PUT", "/api/file?path=linked/new/x.kettle", "x", "If-None-Match", "*");
    assertEquals(404, reply.status());
    assertFalse(Files.exists(outside.resolve("new")));
  }

  @Test
  void aPathOfThePageIsTakenByTheLetter() throws IOException {
    for (String path :
        List.of("/../etc/passwd", "/%2e%2e/x", "/page/index.html", "//workbench.js")) {
      assertEquals(404, visit.get(path).status(), path);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "POST, /api/files, 405",
    "DELETE, /api/file?path=syrup.kettle, 405",
    "PUT, /of-nobody.css, 404",
    "POST, /, 405",
    "GET, /api/end, 405",
    "GET, /api/file, 400",
    "GET, /api/file?path=a&path=b, 400",
    "GET, /language, 426"
  })
  void aMethodIsGoodForWhatItIsMeantFor(String method, String target, int status)
      throws IOException {
    assertEquals(status, visit.ask(method, target, "", "Origin", visit.origin()).status());
  }

  @Test
  void aTextIsSavedOnlyAsATextOverWhatWasSeen() throws IOException {
    String target = "/api/file?path=syrup.kettle";
    String tag = visit.get(target).header("etag");
    assertEquals(
        415,
        visit
            .ask("PUT", target, "x", "If-Match", tag, "Content-Type", "application/json")
            .status());
    assertEquals(428, visit.ask("PUT", target, "x").status());
    assertEquals(
        428,
        visit.ask("PUT", target, "x", "If-Match", tag, "If-None-Match", "*").status());
    assertEquals(400, visit.ask("PUT", target, "x", "If-Match", "*").status());
    assertEquals(
        411, visit.ask("PUT", target, "", "If-Match", tag, "Content-Length", "").status());
    assertEquals(
        501,
        visit
            .ask("PUT", target, "", "If-Match", tag, "Transfer-Encoding", "chunked")
            .status());
    assertEquals(FORMULA, Files.readString(folder.resolve("syrup.kettle")));
  }

  @Test
  void aBodyIsBounded() throws IOException {
    String target = "/api/file?path=new.kettle";
    String huge = "x".repeat(KettleStore.LARGEST + 1);
    assertEquals(413, visit.ask("PUT", target, huge, "If-None-Match", "*").status());
    assertEquals(
        413,
        visit
            .ask("PUT", target, "", "If-None-Match", "*", "Content-Length", "999999999999")
            .status());
    assertFalse(Files.exists(folder.resolve("new.kettle")));
    assertEquals(201, visit.ask("PUT", target, "# new\n", "If-None-Match", "*").status());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "GET / HTTP/1.1\nHost: x\n\n",
        "GET  / HTTP/1.1\r\n\r\n",
        "get / HTTP/1.1\r\n\r\n",
        "GET http://127.0.0.1/ HTTP/1.1\r\n\r\n",
        "GET / HTTP/2.0\r\n\r\n",
        "GET / HTTP/1.1\r\nHost : x\r\n\r\n",
        "GET / HTTP/1.1\r\nHost: a\r\nHost: b\r\n\r\n",
        "GET / HTTP/1.1\r\nA: b\r\n folded\r\n\r\n",
        "GET /\u0000 HTTP/1.1\r\n\r\n",
        "\r\n\r\n",
        "\u0016\u0003\u0001\u0002\r\n\r\n"
      })
  void whatIsNotHttpIsRefused(String request) throws IOException {
    try (Wire wire = visit.wire()) {
      assertEquals(400, wire.send(request).reply().status());
    }
  }

  @Test
  void aHeaderIsBounded() throws IOException {
    for (String request : List.of(
        "GET /" + "x".repeat(20_000),
        "GET / HTTP/1.1\r\nA: " + "x".repeat(20_000),
        "GET / HTTP/1.1\r\n" + "A: b\r\n".repeat(5_000))) {
      try (Wire wire = visit.wire()) {
        int status = wire.send(request).reply().status();
        assertTrue(status == 431 || status == 400, "status " + status);
      }
    }
  }

  @Test
  void aThousandStrangersShutOutNobody() throws Exception {
    try (Wire page = visit.wire()) {
      assertEquals(
          101,
          page.handshake(
                  "/language",
                  "Host",
                  visit.host(),
                  "Cookie",
                  visit.cookie,
                  "Origin",
                  visit.origin())
              .status());
      List<Wire> strangers = new ArrayList<>();
      try {
        for (int i = 0; i < 1000; i++) {
          strangers.add(visit.wire().send("GET / HTTP/1.1\r\nSlow: "));
        }
        assertTrue(visit.workbench.connections() <= 64, () -> "" + visit.workbench.connections());
        assertEquals(200, visit.get("/api/files").status());
        page.send(Wire.frame(0x89, "there?".getBytes(StandardCharsets.UTF_8)));
        assertEquals("pong there?", page.next());
      } finally {
        for (Wire stranger : strangers) {
          stranger.close();
        }
      }
    }
    waitUntilAlone();
  }

  @Test
  void whoIsSlowIsLeftAlone() throws Exception {
    long start = System.nanoTime();
    try (Wire wire = visit.wire()) {
      wire.send("GET / HTTP/1.1\r\n");
      while (System.nanoTime() - start < TimeUnit.SECONDS.toNanos(30)) {
        try {
          wire.send("A" + System.nanoTime() + ": b\r\n");
        } catch (IOException closed) {
          break;
        }
        Thread.sleep(500);
      }
    }
    long seconds = TimeUnit.NANOSECONDS.toSeconds(System.nanoTime() - start);
    assertTrue(seconds < 25, () -> "after " + seconds + " s it still listened");
    waitUntilAlone();
  }

  @Test
  void thePageCanEndIt() throws Exception {
    assertEquals(200, visit.ask("POST", "/api/end", "").status());
    visit.workbench.await();
    visit.close();
    assertThrows(IOException.class, () -> visit.wire().close());
  }

  @Test
  void aTakenPortIsSaid() {
    assertThrows(
        BindException.class,
        () -> Workbench.open(folder, visit.workbench.port(), "test", () -> Today.DAY));
  }

  /** What a browser keeps belongs to a port, so a folder has the same one each time. */
  @Test
  void aFolderKeepsItsPort() throws IOException {
    int port = visit.workbench.port();
    visit.close();
    try (Workbench again = Workbench.open(folder, 0, "test", () -> Today.DAY);
        Workbench beside = Workbench.open(folder, 0, "test", () -> Today.DAY)) {
      assertEquals(port, again.port());
      assertTrue(beside.port() != port);
    }
  }

  @Test
  void aMissingPageIsSaidAndAPageHasItsNonce() throws IOException {
    Wire.Reply reply = visit.get("/");
    if (!Workbench.hasPage()) {
      assertEquals(501, reply.status());
      assertTrue(reply.body().contains("npm"), reply::body);
      return;
    }
    assertEquals(200, reply.status());
    String policy = reply.header("content-security-policy");
    String nonce = policy.substring(policy.indexOf("'nonce-") + 7);
    nonce = nonce.substring(0, nonce.indexOf('\''));
    assertTrue(reply.body().contains("content=\"" + nonce + "\""), policy);
    assertFalse(visit.get("/").body().contains(nonce), "a nonce is good once");
    assertTrue(visit
        .get("/workbench.js")
        .header("content-type")
        .toLowerCase(Locale.ROOT)
        .startsWith("text/javascript"));
  }

  private void waitUntilAlone() throws InterruptedException {
    for (int i = 0; i < 300 && visit.workbench.connections() > 0; i++) {
      Thread.sleep(100);
    }
    assertEquals(0, visit.workbench.connections());
  }
}
