package dev.kettlemark.workbench;

import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/**
 * A client that writes exactly what it is told to, unlike any library; requests by RFC 9112, frames by RFC 6455.
 */
final class Wire implements AutoCloseable {

  private final Socket socket;

  Wire(int port) throws IOException {
    socket = new Socket(InetAddress.getLoopbackAddress(), port);
    socket.setSoTimeout(20_000);
  }

  /** What came back. */
  record Reply(int status, Map<String, String> headers, String body) {

    String header(String name) {
      return headers.getOrDefault(name, "");
    }
  }

  Wire send(String text) throws IOException {
    socket.getOutputStream().write(text.getBytes(StandardCharsets.UTF_8));
    socket.getOutputStream().flush();
    return this;
  }

  Wire send(byte[] bytes) throws IOException {
    socket.getOutputStream().write(bytes);
    socket.getOutputStream().flush();
    return this;
  }

  /** Everything until the server closes; empty where it closed without a word. */
  String rest() throws IOException {
    return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
  }

  Reply reply() throws IOException {
    String head = head();
    Map<String, String> headers = headers(head);
    int length = Integer.parseInt(headers.getOrDefault("content-length", "0"));
    String body = new String(socket.getInputStream().readNBytes(length), StandardCharsets.UTF_8);
    return new Reply(Integer.parseInt(head.substring(9, 12)), headers, body);
  }

  /** The answer to a handshake, which has no body. */
  Reply handshake(String path, String... fields) throws IOException {
    StringBuilder request = new StringBuilder("GET " + path + " HTTP/1.1\r\n");
    Map<String, String> all = new LinkedHashMap<>(Map.of(
        "Upgrade", "websocket",
        "Connection", "Upgrade",
        "Sec-WebSocket-Version", "13",
        "Sec-WebSocket-Key",
            Base64.getEncoder()
                .encodeToString("0123456789abcdef".getBytes(StandardCharsets.US_ASCII))));
    for (int i = 0; i < fields.length; i += 2) {
      all.put(fields[i], fields[i + 1]);
    }
    all.forEach((name, value) -> request.append(name + ": " + value + "\r\n"));
    send(request + "\r\n");
    return reply();
  }

  /** A frame as a browser sends it: masked. */
  static byte[] frame(int first, byte[] payload) {
    ByteArrayOutputStream frame = new ByteArrayOutputStream();
    frame.write(first);
    if (payload.length < 126) {
      frame.write(0x80 | payload.length);
    } else if (payload.length < 1 << 16) {
      frame.write(0x80 | 126);
      frame.writeBytes(ByteBuffer.allocate(2).putShort((short) payload.length).array());
    } else {
      frame.write(0x80 | 127);
      frame.writeBytes(ByteBuffer.allocate(8).putLong(payload.length).array());
    }
    byte[] mask = {7, 42, -3, 100};
    frame.writeBytes(mask);
    for (int i = 0; i < payload.length; i++) {
      frame.write(payload[i] ^ mask[i & 3]);
    }
    return frame.toByteArray();
  }

  static byte[] text(String text) {
    return frame(0x81, text.getBytes(StandardCharsets.UTF_8));
  }

  /** The next text of the server; the close code in brackets when it takes leave. */
  String next() throws IOException {
    DataInputStream in = new DataInputStream(socket.getInputStream());
    while (true) {
      int code = in.readUnsignedByte() & 0x0F;
      int length = in.readUnsignedByte();
      long size = length == 126 ? in.readUnsignedShort() : length == 127 ? in.readLong() : length;
      byte[] payload = in.readNBytes((int) size);
      if (code == 8) {
        return "[" + (((payload[0] & 0xFF) << 8) | (payload[1] & 0xFF)) + "]";
      }
      if (code == 10) {
        return "pong " + new String(payload, StandardCharsets.UTF_8);
      }
      if (code == 1) {
        return new String(payload, StandardCharsets.UTF_8);
      }
    }
  }

  @Override
  public void close() throws IOException {
    socket.close();
  }

  private String head() throws IOException {
    InputStream in = socket.getInputStream();
    StringBuilder head = new StringBuilder();
    while (head.indexOf("\r\n\r\n") < 0) {
      int octet = in.read();
      if (octet < 0) {
        throw new EOFException("the server closed after: " + head);
      }
      head.append((char) octet);
    }
    return head.toString();
  }

  private static Map<String, String> headers(String head) {
    Map<String, String> headers = new LinkedHashMap<>();
    head.lines().skip(1).filter(line -> line.contains(": ")).forEach(line -> {
      String[] parts = line.split(": ", 2);
      headers.put(parts[0].toLowerCase(Locale.ROOT), parts[1]);
    });
    return headers;
  }
}
