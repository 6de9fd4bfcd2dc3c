package dev.kettlemark.workbench.http;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * One connection with one request, or with a WebSocket.
 *
 * <p>A clock runs from the moment it is accepted, whoever is slow: when it is over, the socket is closed under whatever
 * reads or writes it. Only a WebSocket stops the clock; it has its own.
 */
public final class Connection {

  /** Longest first line or header field, and all of them together; in bytes. */
  static final int LONGEST_HEAD = 16 << 10;

  /** Long enough for the largest file on a busy machine; over loopback it takes milliseconds. */
  static final Duration PATIENCE = Duration.ofSeconds(10);

  /** Bytes of a refused body that are read and forgotten, so that the refusal is heard. */
  private static final long MOST_UNREAD = 16 << 20;

  private static final Logger LOG = Logger.getLogger(Connection.class.getName());

  private final Socket socket;
  private final InputStream in;
  private final OutputStream out;
  private final ScheduledFuture<?> clock;
  private volatile boolean trusted;
  private Runnable afterwards = () -> {};

  Connection(Socket socket, ScheduledExecutorService clocks) throws IOException {
    this.socket = socket;
    socket.setTcpNoDelay(true);
    this.in = new BufferedInputStream(socket.getInputStream(), 1 << 14);
    this.out = new BufferedOutputStream(socket.getOutputStream(), 1 << 14);
    this.clock = clocks.schedule(this::close, PATIENCE.toMillis(), TimeUnit.MILLISECONDS);
  }

  /** Serves the one request. */
  void serve(HttpHandler handler) {
    try {
      boolean withBody = true;
      try {
        RequestHead head = head();
        withBody = !head.method().equals("HEAD");
        Optional<Answer> answer = handler.answer(head, this);
        if (answer.isPresent()) {
          answer.get().write(out, withBody);
        }
      } catch (Refused refused) {
        refused.answer().write(out, withBody);
      } catch (RuntimeException bug) {
        LOG.log(Level.SEVERE, "bug: a request failed", bug);
        Answer.text(500, "the workbench failed at this request\n").write(out, withBody);
      }
      linger();
    } catch (IOException gone) {
      LOG.fine(() -> "a connection ended: " + gone.getMessage());
    } finally {
      clock.cancel(false);
      close();
      afterwards.run();
    }
  }

  /** What is to be done when the answer has been sent. */
  public void afterwards(Runnable work) {
    afterwards = work;
  }

  /** Says that who is behind it has shown the right cookie, so that it is not closed in favour of others. */
  public void trust() {
    trusted = true;
  }

  boolean isTrusted() {
    return trusted;
  }

  /**
   * Reads the body of the request.
   *
   * @param most the longest that is taken, in bytes
   */
  public byte[] body(RequestHead head, int most) throws Refused, IOException {
    long length = head.contentLength();
    if (length > most) {
      throw new Refused(413, "more than " + most + " bytes");
    }
    byte[] body = in.readNBytes((int) length);
    if (body.length < length) {
      throw new IOException("the body ends too early");
    }
    return body;
  }

  /** Takes the connection over as a WebSocket whose handshake was found right. */
  public WebSocket upgrade(RequestHead head) throws Refused, IOException {
    String accept = Handshake.accept(head);
    clock.cancel(false);
    out.write(("HTTP/1.1 101 Switching Protocols\r\nUpgrade: websocket\r\nConnection: Upgrade\r\n"
            + "Sec-WebSocket-Accept: " + accept + "\r\n\r\n")
        .getBytes(StandardCharsets.US_ASCII));
    out.flush();
    return new WebSocket(socket, in, out);
  }

  void close() {
    try {
      socket.close();
    } catch (IOException closed) {
      LOG.fine("a socket was closed already");
    }
  }

  private RequestHead head() throws IOException, Refused {
    List<String> lines = new ArrayList<>();
    int left = LONGEST_HEAD;
    for (String line = line(left); !line.isEmpty(); line = line(left)) {
      left -= line.length() + 2;
      lines.add(line);
    }
    return RequestHead.of(lines);
  }

  private String line(int most) throws IOException, Refused {
    StringBuilder line = new StringBuilder();
    for (int octet = in.read(); octet >= 0; octet = in.read()) {
      if (octet == '\r' && in.read() == '\n') {
        return line.toString();
      }
      if (octet == '\r' || octet == '\n') {
        throw new Refused(400, "a line ends in CR LF");
      }
      if (line.length() >= most) {
        throw new Refused(431, "the header is longer than " + LONGEST_HEAD + " bytes");
      }
      line.append((char) octet);
    }
    throw new IOException("the request ends too early");
  }

  /** Reads a little of what still comes: closing on unread bytes would take the answer from the client. */
  private void linger() throws IOException {
    if (socket.isClosed()) {
      return;
    }
    socket.shutdownOutput();
    socket.setSoTimeout(200);
    byte[] scratch = new byte[1 << 16];
    try {
      for (long left = MOST_UNREAD; left > 0; ) {
        int read = in.read(scratch);
        left = read < 0 ? 0 : left - read;
      }
    } catch (SocketTimeoutException enough) {
      LOG.finest("the client keeps its end open");
    }
  }
}
