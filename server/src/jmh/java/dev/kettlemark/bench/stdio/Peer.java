package dev.kettlemark.bench.stdio;

import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.BufferedInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;

/** A server in a process of its own, and the client's end of its pipes. */
final class Peer implements AutoCloseable {

  private final long started = System.nanoTime();
  private final Process process;
  private final OutputStream out;
  private final InputStream in;
  private final String uri;

  /** The documents whose findings came since {@link #forgetTold}. */
  private final Set<String> told = new HashSet<>();

  private int id;

  /** When the last byte of the last message came. */
  private long arrived;

  private int version;

  private Peer(Process process, String uri) {
    this.process = process;
    this.uri = uri;
    this.out = process.getOutputStream();
    this.in = new BufferedInputStream(process.getInputStream(), 1 << 16);
  }

  /** Starts a server and greets it as most editors would; the editor is going to open one file. */
  static Peer start(List<String> command, Path file) throws IOException {
    return start(command, "null", file.toUri().toString());
  }

  /** Starts a server with a folder, of which the editor is going to open one file. */
  static Peer inFolder(List<String> command, Path folder, String file) throws IOException {
    return start(
        command,
        "[{\"uri\": \"%s\", \"name\": \"bench\"}]".formatted(folder.toUri()),
        folder.resolve(file).toUri().toString());
  }

  private static Peer start(List<String> command, String folders, String uri) throws IOException {
    Peer peer = new Peer(
        new ProcessBuilder(command)
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start(),
        uri);
    peer.ask("initialize", JsonParser.parseString("""
        {"processId": null, "rootUri": null, "workspaceFolders": %s, "capabilities": {"textDocument": {
          "publishDiagnostics": {"versionSupport": true, "relatedInformation": true},
          "completion": {
            "completionItem": {
              "snippetSupport": true, "labelDetailsSupport": true, "documentationFormat": ["markdown"],
              "resolveSupport": {"properties": ["documentation", "additionalTextEdits"]}},
            "completionList": {"itemDefaults": ["editRange", "insertTextFormat", "data"]}}}}}
        """.formatted(folders)));
    peer.tell("initialized", new JsonObject());
    return peer;
  }

  /** Opens the text and waits for what is found in it; milliseconds since the process was started. */
  double open(String text) throws IOException {
    JsonObject document = new JsonObject();
    document.addProperty("uri", uri);
    document.addProperty("languageId", "kettlemark");
    document.addProperty("version", ++version);
    document.addProperty("text", text);
    JsonObject params = new JsonObject();
    params.add("textDocument", document);
    tell("textDocument/didOpen", params);
    awaitFindings();
    return millisSince(started);
  }

  /** Writes something for one character and waits for what is found then; milliseconds. */
  double key(int line, int character, String typed) throws IOException {
    long before = System.nanoTime();
    change(line, character, typed);
    awaitFindings();
    return millisSince(before);
  }

  /** Writes many keys at once and waits for what is found after the last; milliseconds. */
  double burst(int line, int character, List<String> typed) throws IOException {
    long before = System.nanoTime();
    for (String key : typed) {
      change(line, character, key);
    }
    awaitFindings();
    return millisSince(before);
  }

  /** Counts anew whose findings come. */
  void forgetTold() {
    told.clear();
  }

  /** Waits until findings of so many documents have come. */
  void awaitTold(int documents) throws IOException {
    while (told.size() < documents) {
      await(message -> true);
    }
  }

  private void change(int line, int character, String typed) throws IOException {
    tell("textDocument/didChange", JsonParser.parseString("""
        {"textDocument": {"uri": "%s", "version": %d}, "contentChanges": [{"range": {
          "start": {"line": %d, "character": %d}, "end": {"line": %d, "character": %d}},
          "text": "%s"}]}
        """.formatted(
            uri, ++version, line, character, line, character + 1, typed)));
  }

  /** Asks something about the open text; milliseconds until the answer. */
  double request(String method, String more) throws IOException {
    long before = System.nanoTime();
    ask(
        method,
        JsonParser.parseString("{\"textDocument\": {\"uri\": \"" + uri + "\"}" + more + "}"));
    return millisSince(before);
  }

  /** The megabytes of memory that the process holds, or held at most. */
  long megabytes(boolean atMost) throws IOException {
    String name = atMost ? "VmHWM:" : "VmRSS:";
    return Files.readAllLines(Path.of("/proc", Long.toString(process.pid()), "status")).stream()
            .filter(line -> line.startsWith(name))
            .map(line -> line.replaceAll("\\D", ""))
            .mapToLong(Long::parseLong)
            .findFirst()
            .orElse(0)
        / 1024;
  }

  @Override
  public void close() throws IOException {
    ask("shutdown", null);
    tell("exit", null);
    try {
      process.waitFor();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }

  private void awaitFindings() throws IOException {
    int awaited = version;
    await(message -> message.has("method")
        && message.get("method").getAsString().equals("textDocument/publishDiagnostics")
        && message.getAsJsonObject("params").has("version")
        && message.getAsJsonObject("params").get("version").getAsInt() >= awaited);
  }

  private void ask(String method, JsonElement params) throws IOException {
    int asked = ++id;
    JsonObject message = message(method, params);
    message.addProperty("id", asked);
    send(message);
    await(answer ->
        !answer.has("method") && answer.has("id") && answer.get("id").getAsInt() == asked);
  }

  private void tell(String method, JsonElement params) throws IOException {
    send(message(method, params));
  }

  private static JsonObject message(String method, JsonElement params) {
    JsonObject message = new JsonObject();
    message.addProperty("jsonrpc", "2.0");
    message.addProperty("method", method);
    if (params != null) {
      message.add("params", params);
    }
    return message;
  }

  private void send(JsonObject message) throws IOException {
    byte[] body = message.toString().getBytes(StandardCharsets.UTF_8);
    out.write(("Content-Length: " + body.length + "\r\n\r\n").getBytes(StandardCharsets.US_ASCII));
    out.write(body);
    out.flush();
  }

  /** Reads until a message is the one; what the server asks meanwhile gets an empty answer. */
  private void await(Predicate<JsonObject> isTheOne) throws IOException {
    while (true) {
      JsonObject message = read();
      if (isTheOne.test(message)) {
        return;
      }
      if (message.has("method") && message.has("id")) {
        JsonObject answer = new JsonObject();
        answer.addProperty("jsonrpc", "2.0");
        answer.add("id", message.get("id"));
        answer.add("result", JsonNull.INSTANCE);
        send(answer);
      }
    }
  }

  private JsonObject read() throws IOException {
    int length = 0;
    String header = header();
    while (!header.isEmpty()) {
      if (header.toLowerCase(Locale.ROOT).startsWith("content-length:")) {
        length = Integer.parseInt(header.substring(header.indexOf(':') + 1).strip());
      }
      header = header();
    }
    byte[] body = in.readNBytes(length);
    arrived = System.nanoTime();
    JsonObject message =
        JsonParser.parseString(new String(body, StandardCharsets.UTF_8)).getAsJsonObject();
    if (message.has("method")
        && message.get("method").getAsString().equals("textDocument/publishDiagnostics")) {
      told.add(message.getAsJsonObject("params").get("uri").getAsString());
    }
    return message;
  }

  private String header() throws IOException {
    StringBuilder line = new StringBuilder();
    for (int read = in.read(); read != '\n'; read = in.read()) {
      if (read < 0) {
        throw new EOFException("the server has gone");
      }
      line.append((char) read);
    }
    return line.toString().strip();
  }

  /** Until the last byte of a message came: what the client makes of it is not the server's time. */
  private double millisSince(long nanos) {
    return (arrived - nanos) / 1e6;
  }
}
