package dev.kettlemark.workbench;

import dev.kettlemark.workbench.http.Answer;
import dev.kettlemark.workbench.http.Connection;
import dev.kettlemark.workbench.http.LoopbackServer;
import dev.kettlemark.workbench.http.Refused;
import dev.kettlemark.workbench.http.RequestHead;
import dev.kettlemark.workbench.http.WebSocket;
import java.io.IOException;
import java.net.BindException;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Semaphore;
import java.util.function.Supplier;
import java.util.zip.CRC32;

/**
 * A page on this machine that edits the formulas of one folder, with the language server behind it.
 *
 * <p>It ends when it is closed, or when the page asks for it.
 */
public final class Workbench implements AutoCloseable {

  /** Each has a library of its own in memory. */
  private static final int MOST_SESSIONS = 12;

  /** Free for anybody by RFC 6335, and rarely given out by an operating system as a port of its own choice. */
  private static final int FIRST_PORT = 20_000;

  private static final int PORTS = 10_000;

  private final String version;
  private final Supplier<LocalDate> today;
  private final Gate gate;
  private final FilesApi files;
  private final PageFiles page = new PageFiles();
  private final Semaphore sessions = new Semaphore(MOST_SESSIONS);
  private final CountDownLatch end = new CountDownLatch(1);
  private final LoopbackServer server;
  private final int port;

  private Workbench(
      ServerSocket listening, KettleStore store, String version, Supplier<LocalDate> today) {
    this.version = version;
    this.today = today;
    this.port = listening.getLocalPort();
    this.gate = new Gate(port);
    this.files = new FilesApi(store);
    this.server = LoopbackServer.start(listening, this::answer);
  }

  /**
   * Opens a folder.
   *
   * @param wantedPort 0 for one that stays the same for the folder, or any if that is taken; drafts that a browser
   *     keeps belong to the port
   * @param version of the program
   * @param today tells the day
   * @throws BindException if the wanted port is taken
   */
  public static Workbench open(
      Path folder, int wantedPort, String version, Supplier<LocalDate> today) throws IOException {
    KettleStore store = new KettleStore(folder);
    return new Workbench(listen(store.folder(), wantedPort), store, version, today);
  }

  /** Whether this program holds the page. */
  public static boolean hasPage() {
    return PageFiles.arePacked();
  }

  /** A fresh address, good for one browser. */
  public String address() {
    return gate.address();
  }

  public int port() {
    return port;
  }

  /** How many connections are open. */
  public int connections() {
    return server.open();
  }

  /** Waits until the page asks for the end, or somebody closes this. */
  public void await() throws InterruptedException {
    end.await();
  }

  @Override
  public void close() {
    end.countDown();
    server.close();
  }

  private static ServerSocket listen(Path folder, int wantedPort) throws IOException {
    if (wantedPort != 0) {
      return LoopbackServer.listen(wantedPort);
    }
    CRC32 hash = new CRC32();
    hash.update(folder.toString().getBytes(StandardCharsets.UTF_8));
    try {
      return LoopbackServer.listen(FIRST_PORT + (int) (hash.getValue() % PORTS));
    } catch (BindException taken) {
      return LoopbackServer.listen(0);
    }
  }

  private Optional<Answer> answer(RequestHead head, Connection connection)
      throws Refused, IOException {
    Optional<Answer> greeting = gate.greet(head);
    if (greeting.isPresent()) {
      return greeting;
    }
    gate.check(head, !isReading(head) || head.path().equals("/language"));
    connection.trust();
    return switch (head.path()) {
      case "/language" -> speak(head, connection);
      case "/api/files" -> {
        only(head, "GET");
        yield Optional.of(files.list());
      }
      case "/api/file" -> {
        only(head, "GET", "PUT");
        yield Optional.of(files.one(head, connection));
      }
      case "/api/end" -> {
        only(head, "POST");
        connection.afterwards(end::countDown);
        yield Optional.of(Answer.text(200, "The workbench has ended.\n"));
      }
      default -> Optional.of(page(head));
    };
  }

  private Answer page(RequestHead head) throws Refused {
    Optional<Answer> found = page.find(head.path());
    if (found.isEmpty()) {
      throw new Refused(404, "there is no such page");
    }
    only(head, "GET", "HEAD");
    return found.get();
  }

  private Optional<Answer> speak(RequestHead head, Connection connection)
      throws Refused, IOException {
    if (!sessions.tryAcquire()) {
      throw new Refused(503, "there are " + MOST_SESSIONS + " pages open already");
    }
    try {
      WebSocket socket = connection.upgrade(head);
      LanguageSession.run(socket, version, today);
      return Optional.empty();
    } finally {
      sessions.release();
    }
  }

  private static boolean isReading(RequestHead head) {
    return head.method().equals("GET") || head.method().equals("HEAD");
  }

  private static void only(RequestHead head, String... methods) throws Refused {
    if (!List.of(methods).contains(head.method())) {
      throw new Refused(405, "here one can " + String.join(", ", methods));
    }
  }
}
