package dev.kettlemark.protocol.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.Gson;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import dev.kettlemark.Today;
import dev.kettlemark.protocol.KettlemarkServer;
import java.io.DataInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.channels.Channels;
import java.nio.channels.Pipe;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalLong;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.eclipse.lsp4j.services.LanguageClient;

/**
 * A client that speaks raw bytes to a server, over pipes of the operating system, so with their small buffers.
 *
 * <p>It has its own, naive reading of frames and JSON, to be no relative of the code under test.
 */
final class Conversation implements AutoCloseable {

  static final String URI = "file:///kitchen/Tern%20Quay/nougat.kettle";
  private static final long PATIENCE_SECONDS = 5;

  /** Held here, because the log forgets the level of a logger that nobody holds. */
  private static final List<Logger> SILENT = List.of(
      Logger.getLogger("dev.kettlemark.protocol.wire"), Logger.getLogger("org.eclipse.lsp4j"));

  private final OutputStream toServer;
  private final InputStream fromServer;
  private final CompletableFuture<Integer> exitCode;
  private final BlockingQueue<JsonObject> answers = new LinkedBlockingQueue<>();
  private final BlockingQueue<JsonObject> notifications = new LinkedBlockingQueue<>();
  private int lastId = 1000;

  private Conversation(
      OutputStream toServer, InputStream fromServer, CompletableFuture<Integer> exitCode) {
    this.toServer = toServer;
    this.fromServer = fromServer;
    this.exitCode = exitCode;
  }

  /** Keeps the many provoked failures out of the build's output. */
  static void silenceTheLog() {
    SILENT.forEach(logger -> logger.setLevel(Level.OFF));
  }

  /** A server that has just been started; nothing is read from it before {@link #listen}. */
  static Conversation deaf(OptionalLong parent) throws IOException {
    FakeLanguageServer server = new FakeLanguageServer();
    return deaf((in, out) ->
        ServerProcess.run(server, LanguageClient.class, server::connect, in, out, parent));
  }

  /** The whole server, as the program starts it; nothing is read from it before {@link #listen}. */
  static Conversation deafWhole() throws IOException {
    return deaf((in, out) ->
        KettlemarkServer.serve("test", in, out, OptionalLong.empty(), () -> Today.DAY));
  }

  /** What serves until its client is gone. */
  private interface Serving {
    int until(InputStream in, OutputStream out);
  }

  private static Conversation deaf(Serving serving) throws IOException {
    silenceTheLog();
    Pipe in = Pipe.open();
    Pipe out = Pipe.open();
    CompletableFuture<Integer> exitCode = new CompletableFuture<>();
    Thread process = new Thread(() -> exitCode.completeAsync(
        () -> serving.until(
            Channels.newInputStream(in.source()), Channels.newOutputStream(out.sink())),
        Runnable::run));
    process.setDaemon(true);
    process.start();
    return new Conversation(
        Channels.newOutputStream(in.sink()), Channels.newInputStream(out.source()), exitCode);
  }

  /** A server that has just been started. */
  static Conversation fresh() throws IOException {
    Conversation talk = deaf(OptionalLong.empty());
    talk.listen();
    return talk;
  }

  /** A server that has been initialized and has one document open. */
  static Conversation begun() throws IOException {
    Conversation talk = fresh();
    talk.initialize();
    talk.open(URI, "first line\nsecond line\n");
    return talk;
  }

  /** A server in a process of its own. */
  static Conversation with(Process process) {
    Conversation talk = new Conversation(
        process.getOutputStream(),
        process.getInputStream(),
        process.onExit().thenApply(Process::exitValue));
    talk.listen();
    return talk;
  }

  void listen() {
    Thread listener = new Thread(this::readAll);
    listener.setDaemon(true);
    listener.start();
  }

  void initialize() {
    assertEquals(0, code("initialize", "{'processId': null, 'rootUri': null, 'capabilities': {}}"));
    tell("initialized", "{}");
  }

  void open(String uri, String text) {
    JsonObject document = new JsonObject();
    document.addProperty("uri", uri);
    document.addProperty("languageId", "kettlemark");
    document.addProperty("version", 1);
    document.addProperty("text", text);
    JsonObject params = new JsonObject();
    params.add("textDocument", document);
    tell("textDocument/didOpen", params.toString());
  }

  /** Replaces a range, given as four numbers: line, character, line, character. */
  void edit(String uri, int version, String range, String text) {
    String[] n = range.split(" ");
    tell(
        "textDocument/didChange",
        "{'textDocument': {'uri': '%s', 'version': %d}, 'contentChanges': [{'range': %s, 'text': '%s'}]}"
            .formatted(uri, version, range(n), text));
  }

  private static String range(String[] n) {
    return "{'start': {'line': %s, 'character': %s}, 'end': {'line': %s, 'character': %s}}"
        .formatted((Object[]) n);
  }

  /** Asks for a hover and returns the answer. */
  JsonObject hover(String uri, int line, int character) {
    return ask(
        "textDocument/hover",
        "{'textDocument': {'uri': '%s'}, 'position': {'line': %d, 'character': %d}}"
            .formatted(uri, line, character));
  }

  /** Sends a request, single quotes standing for double ones, and waits for its answer. */
  JsonObject ask(String method, String params) {
    String id = Integer.toString(++lastId);
    say("{'jsonrpc': '2.0', 'id': %s, 'method': '%s', 'params': %s}".formatted(id, method, params));
    return answer(id);
  }

  /** The error code of the answer to a request, 0 for a result. */
  int code(String method, String params) {
    return code(ask(method, params));
  }

  void tell(String method, String params) {
    say("{'jsonrpc': '2.0', 'method': '%s', 'params': %s}".formatted(method, params));
  }

  /** Frames and sends a text in which single quotes stand for double ones. */
  void say(String json) {
    sayExactly(json.replace('\'', '"'));
  }

  void sayExactly(String body) {
    byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
    raw("Content-Length: " + bytes.length + "\r\n\r\n");
    raw(bytes);
  }

  void raw(String text) {
    raw(text.getBytes(StandardCharsets.UTF_8));
  }

  void raw(byte[] bytes) {
    try {
      toServer.write(bytes);
      toServer.flush();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The next answer, which must be to this id, written as JSON; answers to others are a failure. */
  JsonObject answer(String id) {
    JsonObject answer = poll(answers);
    assertEquals(
        JsonParser.parseString(id),
        answer.has("id") ? answer.get("id") : JsonNull.INSTANCE,
        answer::toString);
    assertTrue(answer.has("result") ^ answer.has("error"), answer::toString);
    return answer;
  }

  /** The id of the next answer, which must be a result. */
  int idOfResult() {
    JsonObject answer = poll(answers);
    assertEquals(0, code(answer), answer::toString);
    return answer.get("id").getAsInt();
  }

  /** The code of the next answer, which must be to this id. */
  int codeOf(String id) {
    return code(answer(id));
  }

  static int code(JsonObject answer) {
    return answer.has("error") ? answer.getAsJsonObject("error").get("code").getAsInt() : 0;
  }

  JsonObject nextNotification() {
    return poll(notifications);
  }

  /** Shows that the server still answers, and that nothing unexpected was answered before. */
  void lives() {
    JsonObject answer = ask("probe/echo", "{'text': 'still here'}");
    assertEquals("still here", answer.get("result").getAsString(), answer::toString);
    assertEquals(0, answers.size());
  }

  /** Closes the server's input and, when it has ended, returns its exit code. */
  int hangUp() throws Exception {
    toServer.close();
    return exitCode();
  }

  int exitCode() throws Exception {
    return exitCode.get(PATIENCE_SECONDS, TimeUnit.SECONDS);
  }

  void stopListening() throws IOException {
    fromServer.close();
  }

  @Override
  public void close() throws IOException {
    toServer.close();
    fromServer.close();
  }

  private static JsonObject poll(BlockingQueue<JsonObject> queue) {
    try {
      JsonObject message = queue.poll(PATIENCE_SECONDS, TimeUnit.SECONDS);
      assertNotNull(message, "the server does not answer");
      return message;
    } catch (InterruptedException e) {
      throw new AssertionError("too slow", e);
    }
  }

  private void readAll() {
    try (DataInputStream in = new DataInputStream(fromServer)) {
      while (true) {
        receive(readFrame(in));
      }
    } catch (IOException ended) {
      // The server or the test has closed the pipe; whoever waits for more fails by time.
    }
  }

  @SuppressWarnings("deprecation") // Headers are ASCII, which is all that readLine can read.
  private static JsonObject readFrame(DataInputStream in) throws IOException {
    String header = in.readLine();
    if (header == null) {
      throw new IOException("end of input");
    }
    assertTrue(header.startsWith("Content-Length: "), header);
    assertEquals("", in.readLine());
    byte[] body = in.readNBytes(Integer.parseInt(header.substring("Content-Length: ".length())));
    return new Gson().fromJson(new String(body, StandardCharsets.UTF_8), JsonObject.class);
  }

  private void receive(JsonObject message) {
    if (!message.has("method")) {
      answers.add(message);
    } else if (message.has("id")) {
      JsonArray values = new JsonArray();
      values.add("amber");
      reply(message.get("id"), values);
    } else {
      notifications.add(message);
    }
  }

  /** Answers a request of the server. */
  private void reply(JsonElement id, JsonElement result) {
    JsonObject reply = new JsonObject();
    reply.addProperty("jsonrpc", "2.0");
    reply.add("id", id);
    reply.add("result", result);
    sayExactly(reply.toString());
  }
}
