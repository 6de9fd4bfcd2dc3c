package dev.kettlemark.workbench.http;

import java.io.ByteArrayOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;

/**
 * The server's end of a WebSocket, for texts only; RFC 6455, sections 5 to 7.
 *
 * <p>One thread reads, any thread sends. A client that breaks the protocol is told so by a close code and left; one
 * that says nothing is pinged, and left when it does not answer or does not read.
 */
public final class WebSocket {

  /** A file of the largest size in which every character is escaped. */
  public static final int LONGEST_MESSAGE = 16 << 20;

  /** Silence after which the client is pinged, and then given up. */
  static final Duration PATIENCE = Duration.ofSeconds(30);

  static final int GOING_AWAY = 1001;
  private static final int PROTOCOL_ERROR = 1002;
  private static final int NO_TEXT = 1003;
  private static final int NOT_UTF_8 = 1007;
  private static final int TOO_BIG = 1009;

  private static final int CONTINUATION = 0;
  private static final int TEXT = 1;
  private static final int CLOSE = 8;
  private static final int PING = 9;
  private static final int PONG = 10;

  private final Socket socket;
  private final InputStream in;
  private final OutputStream out;
  private final ReentrantLock writing = new ReentrantLock();
  private volatile boolean closed;

  WebSocket(Socket socket, InputStream in, OutputStream out) throws IOException {
    this.socket = socket;
    this.in = in;
    this.out = out;
    socket.setSoTimeout((int) PATIENCE.toMillis());
  }

  /** Waits for the next text; nothing at the end, whoever brought it about. */
  public Optional<byte[]> next() {
    try {
      return read();
    } catch (Broken broken) {
      close(broken.code);
    } catch (IOException gone) {
      close(GOING_AWAY);
    }
    return Optional.empty();
  }

  /** Sends a text in UTF-8; waits while the client does not read. */
  public void send(byte[] text) throws IOException {
    write(TEXT, text);
  }

  /** Takes leave and closes the connection. */
  public void close() {
    close(GOING_AWAY);
  }

  private Optional<byte[]> read() throws IOException, Broken {
    ByteArrayOutputStream text = new ByteArrayOutputStream();
    boolean inside = false;
    while (true) {
      int first = octetOrPing();
      int code = first & 0x0F;
      boolean last = (first & 0x80) != 0;
      if ((first & 0x70) != 0) {
        throw new Broken(PROTOCOL_ERROR);
      }
      byte[] payload = payload(code, last, text.size());
      if (code == CLOSE) {
        close(1000);
        return Optional.empty();
      } else if (code == PING) {
        write(PONG, payload);
      } else if (code != PONG) {
        if (inside == (code != CONTINUATION)) {
          throw new Broken(PROTOCOL_ERROR);
        }
        text.write(payload);
        inside = !last;
        if (last) {
          return Optional.of(checked(text.toByteArray()));
        }
      }
    }
  }

  /** Reads the length, the mask and the unmasked payload of a frame. */
  private byte[] payload(int code, boolean last, int before) throws IOException, Broken {
    boolean control = code >= CLOSE;
    if (code > TEXT && !control) {
      throw new Broken(code == 2 ? NO_TEXT : PROTOCOL_ERROR);
    }
    int second = octet();
    int shortLength = second & 0x7F;
    boolean masked = (second & 0x80) != 0;
    if (!masked || code > PONG || (control && (!last || shortLength > 125))) {
      throw new Broken(PROTOCOL_ERROR);
    }
    long length = shortLength < 126 ? shortLength : number(shortLength == 126 ? 2 : 8);
    if (length < 0 || length > LONGEST_MESSAGE - before) {
      throw new Broken(TOO_BIG);
    }
    byte[] mask = in.readNBytes(4);
    byte[] payload = in.readNBytes((int) length);
    if (mask.length < 4 || payload.length < length) {
      throw new EOFException("the client left inside a frame");
    }
    for (int i = 0; i < payload.length; i++) {
      payload[i] ^= mask[i & 3];
    }
    return payload;
  }

  private long number(int octets) throws IOException {
    long number = 0;
    for (int i = 0; i < octets; i++) {
      number = number << 8 | octet();
    }
    return number;
  }

  private int octet() throws IOException {
    int octet = in.read();
    if (octet < 0) {
      throw new EOFException("the client is gone");
    }
    return octet;
  }

  /** Between two frames silence is allowed, as long as the client answers a ping. */
  private int octetOrPing() throws IOException {
    try {
      return octet();
    } catch (SocketTimeoutException silence) {
      write(PING, new byte[0]);
      return octet();
    }
  }

  private void write(int code, byte[] payload) throws IOException {
    if (!lock()) {
      close(GOING_AWAY);
      throw new IOException("the client does not read");
    }
    try {
      if (closed) {
        throw new IOException("the WebSocket is closed");
      }
      frame(code, payload);
    } finally {
      writing.unlock();
    }
  }

  private void frame(int code, byte[] payload) throws IOException {
    out.write(0x80 | code);
    if (payload.length < 126) {
      out.write(payload.length);
    } else if (payload.length < 1 << 16) {
      out.write(126);
      out.write(payload.length >> 8);
      out.write(payload.length);
    } else {
      out.write(127);
      out.write(ByteBuffer.allocate(8).putLong(payload.length).array());
    }
    out.write(payload);
    out.flush();
  }

  private boolean lock() {
    try {
      return writing.tryLock(PATIENCE.toMillis(), TimeUnit.MILLISECONDS);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  private void close(int code) {
    boolean mine = writing.tryLock();
    try {
      if (mine && !closed) {
        closed = true;
        frame(CLOSE, ByteBuffer.allocate(2).putShort((short) code).array());
      }
    } catch (IOException gone) {
      closed = true;
    } finally {
      closed = true;
      if (mine) {
        writing.unlock();
      }
      closeSocket();
    }
  }

  private void closeSocket() {
    try {
      socket.close();
    } catch (IOException closedAlready) {
      closed = true;
    }
  }

  private static byte[] checked(byte[] text) throws Broken {
    try {
      var unused = StandardCharsets.UTF_8
          .newDecoder()
          .onMalformedInput(CodingErrorAction.REPORT)
          .decode(ByteBuffer.wrap(text));
      return text;
    } catch (CharacterCodingException malformed) {
      throw new Broken(NOT_UTF_8);
    }
  }

  /** The client broke the protocol; the code says how. */
  private static final class Broken extends Exception {

    private final int code;

    Broken(int code) {
      super("close code " + code, null, false, false);
      this.code = code;
    }
  }
}
