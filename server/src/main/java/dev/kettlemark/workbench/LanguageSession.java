package dev.kettlemark.workbench;

import dev.kettlemark.protocol.KettlemarkServer;
import dev.kettlemark.workbench.http.WebSocket;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.OptionalLong;
import java.util.function.Supplier;

/**
 * A language server for one page: what comes as a text of a WebSocket, it reads as a message of the base protocol, and
 * the other way round.
 */
final class LanguageSession {

  private LanguageSession() {}

  /** Serves until either side ends. */
  static void run(WebSocket socket, String version, Supplier<LocalDate> today) {
    try {
      KettlemarkServer.serve(
          version, new Incoming(socket), new Outgoing(socket), OptionalLong.empty(), today);
    } finally {
      socket.close();
    }
  }

  private static byte[] header(int length) {
    return ("Content-Length: " + length + "\r\n\r\n").getBytes(StandardCharsets.US_ASCII);
  }

  /** Pulls the next text when the last has been read, so a busy server lets the client wait. */
  private static final class Incoming extends InputStream {

    private final WebSocket socket;
    private byte[] frame = {};
    private int at;

    Incoming(WebSocket socket) {
      this.socket = socket;
    }

    @Override
    public int read() {
      return fill() ? frame[at++] & 0xFF : -1;
    }

    @Override
    public int read(byte[] into, int offset, int length) {
      if (length == 0) {
        return 0;
      }
      if (!fill()) {
        return -1;
      }
      int some = Math.min(length, frame.length - at);
      System.arraycopy(frame, at, into, offset, some);
      at += some;
      return some;
    }

    private boolean fill() {
      if (at < frame.length) {
        return true;
      }
      byte[] text = socket.next().orElse(null);
      if (text == null) {
        return false;
      }
      byte[] header = header(text.length);
      frame = Arrays.copyOf(header, header.length + text.length);
      System.arraycopy(text, 0, frame, header.length, text.length);
      at = 0;
      return true;
    }
  }

  /** Cuts the server's bytes into texts again. */
  private static final class Outgoing extends OutputStream {

    private static final String LENGTH = "Content-Length: ";

    private final WebSocket socket;
    private final ByteArrayOutputStream waiting = new ByteArrayOutputStream();

    Outgoing(WebSocket socket) {
      this.socket = socket;
    }

    @Override
    public void write(int octet) throws IOException {
      write(new byte[] {(byte) octet}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int offset, int length) throws IOException {
      waiting.write(bytes, offset, length);
      byte[] all = waiting.toByteArray();
      int from = 0;
      for (int body = body(all, from); body >= 0; body = body(all, from)) {
        int end = body + length(all, from, body);
        if (end > all.length) {
          break;
        }
        socket.send(Arrays.copyOfRange(all, body, end));
        from = end;
      }
      if (from > 0) {
        waiting.reset();
        waiting.write(all, from, all.length - from);
      }
    }

    /** Where the body begins, or -1 while the header is not complete. */
    private static int body(byte[] all, int from) {
      for (int i = from; i + 3 < all.length; i++) {
        if (all[i] == '\r' && all[i + 1] == '\n' && all[i + 2] == '\r' && all[i + 3] == '\n') {
          return i + 4;
        }
      }
      return -1;
    }

    private static int length(byte[] all, int from, int body) {
      String header = new String(all, from, body - from - 4, StandardCharsets.US_ASCII);
      return Integer.parseInt(header.substring(LENGTH.length()));
    }
  }
}
