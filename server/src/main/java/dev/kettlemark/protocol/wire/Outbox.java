package dev.kettlemark.protocol.wire;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.eclipse.lsp4j.jsonrpc.MessageConsumer;
import org.eclipse.lsp4j.jsonrpc.json.MessageJsonHandler;
import org.eclipse.lsp4j.jsonrpc.messages.Message;

/**
 * Sends messages to the client from a thread of its own.
 *
 * <p>A client that does not read fills the pipe and then this box. When the box is full, those who answer wait, and
 * after {@link #PATIENCE} the connection is given up: dropping messages would leave the client with a wrong picture.
 */
final class Outbox implements MessageConsumer {

  /** Bytes that may wait for the client; many times an ordinary answer. */
  static final int CAPACITY = 16 << 20;

  /** How long a full box waits for the client to read. */
  static final Duration PATIENCE = Duration.ofSeconds(30);

  private static final byte[] LAST = {};

  private final OutputStream out;
  private final MessageJsonHandler json;
  private final Consumer<String> onBroken;
  private final BlockingQueue<byte[]> frames = new LinkedBlockingQueue<>();
  private final Semaphore room = new Semaphore(CAPACITY, true);
  private final Thread writer = new Thread(this::writeAll, "kettlemark-writer");
  private volatile boolean broken;

  /**
   * Creates a box that {@link #start} opens.
   *
   * @param onBroken is told, once, why no more can be sent
   */
  Outbox(OutputStream out, MessageJsonHandler json, Consumer<String> onBroken) {
    this.out = out;
    this.json = json;
    this.onBroken = onBroken;
    writer.setDaemon(true);
  }

  void start() {
    writer.start();
  }

  @Override
  public void consume(Message message) {
    byte[] frame = frame(json.serialize(message));
    try {
      if (broken) {
        return;
      }
      if (room.tryAcquire(weight(frame), PATIENCE.toMillis(), TimeUnit.MILLISECONDS)) {
        frames.add(frame);
      } else {
        giveUp("the client has not read for " + PATIENCE.toSeconds() + " s");
      }
    } catch (InterruptedException cancelled) {
      Thread.currentThread().interrupt();
    }
  }

  /** Waits a little for the last messages to leave. */
  void close(Duration patience) throws InterruptedException {
    frames.add(LAST);
    writer.join(patience.toMillis());
  }

  private void writeAll() {
    try {
      for (byte[] frame = frames.take(); frame != LAST; frame = frames.take()) {
        out.write(frame);
        if (frames.isEmpty()) {
          out.flush();
        }
        room.release(weight(frame));
      }
      out.flush();
    } catch (IOException closed) {
      giveUp("the client has closed its end");
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }

  private void giveUp(String reason) {
    if (!broken) {
      broken = true;
      onBroken.accept(reason);
    }
  }

  /** One message larger than the box may pass when the box is empty. */
  private static int weight(byte[] frame) {
    return Math.min(frame.length, CAPACITY);
  }

  private static byte[] frame(String json) {
    ByteBuffer body = utf8(json);
    byte[] header =
        ("Content-Length: " + body.remaining() + "\r\n\r\n").getBytes(StandardCharsets.US_ASCII);
    byte[] frame = Arrays.copyOf(header, header.length + body.remaining());
    body.get(frame, header.length, body.remaining());
    return frame;
  }

  private static ByteBuffer utf8(String json) {
    try {
      // A fresh encoder refuses half a pair, where that of the text would put a question mark.
      return StandardCharsets.UTF_8.newEncoder().encode(CharBuffer.wrap(json.toCharArray()));
    } catch (CharacterCodingException loneSurrogate) {
      return StandardCharsets.UTF_8.encode(escapeLoneSurrogates(json));
    }
  }

  /** UTF-8 has no form for half a pair, JSON has: RFC 8259, section 8.2. Halves occur only inside strings. */
  static String escapeLoneSurrogates(String json) {
    StringBuilder escaped = new StringBuilder(json.length() + 16);
    json.codePoints().forEach(c -> {
      if (isSurrogate(c)) {
        escaped.append(String.format("\\u%04x", c));
      } else {
        escaped.appendCodePoint(c);
      }
    });
    return escaped.toString();
  }

  private static boolean isSurrogate(int codePoint) {
    return codePoint >= Character.MIN_SURROGATE && codePoint <= Character.MAX_SURROGATE;
  }
}
