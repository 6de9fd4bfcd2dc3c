package dev.kettlemark.protocol.wire;

import com.google.gson.Gson;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Predicate;

/** A client of a server in the same process, for one thread. */
public final class Loopback implements Closeable {

  private static final int PIPE = 1 << 16;

  private final OutputStream toServer;
  private final FrameReader fromServer;
  private int asked;

  private Loopback(OutputStream toServer, InputStream fromServer) {
    this.toServer = toServer;
    this.fromServer = new FrameReader(fromServer);
  }

  /**
   * Starts a server on a thread of its own.
   *
   * @param server serves the streams that it is given until the first one ends
   */
  public static Loopback of(BiConsumer<InputStream, OutputStream> server) throws IOException {
    PipedOutputStream toServer = new PipedOutputStream();
    PipedInputStream fromServer = new PipedInputStream(PIPE);
    InputStream in = new PipedInputStream(toServer, PIPE);
    OutputStream out = new PipedOutputStream(fromServer);
    Thread serving = new Thread(() -> server.accept(in, out), "kettlemark-loopback");
    serving.setDaemon(true);
    serving.start();
    return new Loopback(toServer, fromServer);
  }

  /** A text as JSON writes it. */
  public static String quoted(String text) {
    return new Gson().toJson(text);
  }

  /** Sends a notification. */
  public void tell(String method, String params) throws IOException {
    send("{\"jsonrpc\":\"2.0\",\"method\":\"" + method + "\",\"params\":" + params + "}");
  }

  /**
   * Sends a request and waits for its answer; what else comes meanwhile is dropped.
   *
   * @throws IOException if the server refuses it or has ended
   */
  public String ask(String method, String params) throws IOException {
    String id = "\"id\":" + ++asked + ",";
    send("{\"jsonrpc\":\"2.0\"," + id + "\"method\":\"" + method + "\",\"params\":" + params + "}");
    String answer = await(text -> text.contains(id) && !text.contains("\"method\":"));
    if (answer.contains("\"error\":{")) {
      throw new IOException(method + " was refused: " + answer);
    }
    return answer;
  }

  /** Waits for a notification. */
  public String await(String method) throws IOException {
    return await(text -> text.contains("\"method\":\"" + method + "\""));
  }

  private String await(Predicate<String> wanted) throws IOException {
    try {
      for (Optional<String> text = fromServer.next(); text.isPresent(); text = fromServer.next()) {
        if (wanted.test(text.get())) {
          return text.get();
        }
      }
    } catch (Refusal refusal) {
      throw new IOException(refusal);
    }
    throw new IOException("the server has ended");
  }

  private void send(String text) throws IOException {
    byte[] body = text.getBytes(StandardCharsets.UTF_8);
    toServer.write(
        ("Content-Length: " + body.length + "\r\n\r\n").getBytes(StandardCharsets.US_ASCII));
    toServer.write(body);
    toServer.flush();
  }

  @Override
  public void close() throws IOException {
    toServer.close();
  }
}
