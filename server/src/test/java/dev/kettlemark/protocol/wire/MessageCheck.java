package dev.kettlemark.protocol.wire;

import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.ByteArrayOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Listens to both sides of a connection and holds every message against the {@link MetaModel}.
 *
 * <p>Requests are remembered by their id, since an answer does not say what it answers, and tokens of
 * partial results by the request that brought them.
 */
public final class MessageCheck {

  private static final MetaModel LSP = MetaModel.lsp();
  private static final List<String> WORK_DONE =
      List.of("WorkDoneProgressBegin", "WorkDoneProgressReport", "WorkDoneProgressEnd");

  private final Side client = new Side("the client");
  private final Side server = new Side("the server");
  private final Map<JsonElement, String> partial = new ConcurrentHashMap<>();
  private final List<String> faults = new CopyOnWriteArrayList<>();
  private final BlockingQueue<JsonElement> results = new LinkedBlockingQueue<>();
  private final BlockingQueue<JsonObject> errors = new LinkedBlockingQueue<>();
  private final AtomicInteger checked = new AtomicInteger();

  /** One end, with what it has asked and not yet been answered. */
  private record Side(String name, Map<JsonElement, String> asked) {
    Side(String name) {
      this(name, new ConcurrentHashMap<>());
    }
  }

  /** A stream that passes everything on and reads along what the client says. */
  public OutputStream ofClient(OutputStream out) {
    return new Tap(out, client, server);
  }

  /** A stream that passes everything on and reads along what the server says. */
  public OutputStream ofServer(OutputStream out) {
    return new Tap(out, server, client);
  }

  /** What was wrong so far, in words. */
  public List<String> faults() {
    return List.copyOf(faults);
  }

  /** The results of the server as they were sent, for what the client's library cannot read. */
  public BlockingQueue<JsonElement> results() {
    return results;
  }

  /** What the server answered instead of results. */
  public BlockingQueue<JsonObject> errors() {
    return errors;
  }

  /** How many messages were held against the model. */
  public int checked() {
    return checked.get();
  }

  void saidByClient(JsonObject message) {
    said(client, server, message);
  }

  void saidByServer(JsonObject message) {
    said(server, client, message);
  }

  private void said(Side speaker, Side other, JsonObject message) {
    String method = message.has("method") ? message.get("method").getAsString() : "";
    Optional<String> wrong;
    if (!method.isEmpty()) {
      if (message.has("id")) {
        speaker.asked().put(message.get("id"), method);
      }
      wrong = call(method, message);
    } else {
      wrong = answer(other, message);
    }
    checked.incrementAndGet();
    wrong.ifPresent(what -> faults.add(
        speaker.name() + " said what LSP 3.18 does not know: " + what + "\n  in " + message));
  }

  private Optional<String> call(String method, JsonObject message) {
    if (!LSP.hasRequest(method) && !LSP.hasNotification(method)) {
      return Optional.of("the method " + method);
    }
    if (LSP.hasRequest(method) != message.has("id")) {
      return Optional.of(method + " as a " + (message.has("id") ? "request" : "notification"));
    }
    JsonElement params = message.get("params");
    if (params == null) {
      return Optional.empty();
    }
    if (params.isJsonObject() && params.getAsJsonObject().has("partialResultToken")) {
      partial.put(params.getAsJsonObject().get("partialResultToken"), method);
    }
    Optional<MetaModel.Fault> wrong = LSP.params(method, params);
    if (wrong.isEmpty() && method.equals("$/progress")) {
      wrong = progress(params.getAsJsonObject());
    }
    return wrong.map(fault -> method + ": " + fault);
  }

  private Optional<MetaModel.Fault> progress(JsonObject params) {
    JsonElement value = params.get("value");
    String method = partial.get(params.get("token"));
    if (method != null) {
      return LSP.partialResult(method, value);
    }
    Optional<MetaModel.Fault> wrong = Optional.empty();
    for (String type : WORK_DONE) {
      wrong = LSP.value(type, value);
      if (wrong.isEmpty()) {
        return wrong;
      }
    }
    return wrong;
  }

  private Optional<String> answer(Side asker, JsonObject message) {
    JsonElement id = message.get("id");
    String method = id == null ? null : asker.asked().remove(id);
    if (method == null) {
      return Optional.of("an answer to nothing");
    }
    if (message.has("error")) {
      JsonObject error = message.getAsJsonObject("error");
      if (asker.equals(client)) {
        errors.add(error);
      }
      boolean right = error.has("code") && error.has("message") && !message.has("result");
      return right ? Optional.empty() : Optional.of("an error without a code or message");
    }
    JsonElement result = message.has("result") ? message.get("result") : JsonNull.INSTANCE;
    if (asker.equals(client)) {
      results.add(result);
    }
    return LSP.result(method, result).map(fault -> "the answer to " + method + ": " + fault);
  }

  /** Passes bytes on and cuts a copy of them into messages. */
  private final class Tap extends FilterOutputStream {

    private final Side speaker;
    private final Side other;
    private final ByteArrayOutputStream kept = new ByteArrayOutputStream();

    Tap(OutputStream out, Side speaker, Side other) {
      super(out);
      this.speaker = speaker;
      this.other = other;
    }

    @Override
    public void write(int octet) throws IOException {
      write(new byte[] {(byte) octet}, 0, 1);
    }

    @Override
    public synchronized void write(byte[] bytes, int offset, int length) throws IOException {
      kept.write(bytes, offset, length);
      cut();
      out.write(bytes, offset, length);
    }

    private void cut() {
      while (true) {
        byte[] bytes = kept.toByteArray();
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        int header = text.indexOf("\r\n\r\n");
        if (header < 0) {
          return;
        }
        int length = Integer.parseInt(
            text.substring(0, header).replaceAll("(?is).*content-length: *(\\d+).*", "$1"));
        int end = header + 4 + length;
        if (bytes.length < end) {
          return;
        }
        String body = new String(bytes, header + 4, length, StandardCharsets.UTF_8);
        kept.reset();
        kept.write(bytes, end, bytes.length - end);
        said(speaker, other, JsonParser.parseString(body).getAsJsonObject());
      }
    }
  }
}
