package dev.kettlemark.workbench.http;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/** What a request is answered with; the connection ends behind it. */
public final class Answer {

  /** On every answer, so that no path to the page forgets one. */
  private static final Map<String, String> ALWAYS = Map.of(
      "Cache-Control", "no-store",
      "Connection", "close",
      "Cross-Origin-Opener-Policy", "same-origin",
      "Cross-Origin-Resource-Policy", "same-origin",
      "Referrer-Policy", "no-referrer",
      "X-Content-Type-Options", "nosniff",
      "X-Frame-Options", "DENY");

  private static final String NOTHING_ALLOWED =
      "default-src 'none'; frame-ancestors 'none'; base-uri 'none'; form-action 'none'";

  private final int status;
  private final Map<String, String> headers;
  private final byte[] body;

  /**
   * An answer.
   *
   * @param status of RFC 9110, section 15
   * @param headers beside those that every answer has
   * @param body may be empty
   */
  public Answer(int status, Map<String, String> headers, byte[] body) {
    this.status = status;
    this.headers = Map.copyOf(headers);
    this.body = body.clone();
  }

  public static Answer text(int status, String text) {
    return of(status, "text/plain; charset=utf-8", text);
  }

  public static Answer json(int status, String json) {
    return of(status, "application/json; charset=utf-8", json);
  }

  public static Answer of(int status, String type, String text) {
    return new Answer(status, Map.of("Content-Type", type), text.getBytes(StandardCharsets.UTF_8));
  }

  /** The same with one more header. */
  public Answer with(String name, String value) {
    Map<String, String> more = new LinkedHashMap<>(headers);
    more.put(name, value);
    return new Answer(status, more, body);
  }

  void write(OutputStream out, boolean withBody) throws IOException {
    Map<String, String> all = new LinkedHashMap<>(ALWAYS);
    all.put("Content-Security-Policy", NOTHING_ALLOWED);
    all.put("Content-Length", Integer.toString(body.length));
    all.putAll(headers);
    StringBuilder head = new StringBuilder("HTTP/1.1 " + status + " " + reason(status) + "\r\n");
    all.forEach((name, value) -> head.append(name + ": " + value + "\r\n"));
    out.write(head.append("\r\n").toString().getBytes(StandardCharsets.ISO_8859_1));
    if (withBody) {
      out.write(body);
    }
    out.flush();
  }

  private static String reason(int status) {
    return switch (status) {
      case 200 -> "OK";
      case 201 -> "Created";
      case 204 -> "No Content";
      case 400 -> "Bad Request";
      case 403 -> "Forbidden";
      case 404 -> "Not Found";
      case 405 -> "Method Not Allowed";
      case 408 -> "Request Timeout";
      case 409 -> "Conflict";
      case 411 -> "Length Required";
      case 413 -> "Content Too Large";
      case 415 -> "Unsupported Media Type";
      case 421 -> "Misdirected Request";
      case 426 -> "Upgrade Required";
      case 428 -> "Precondition Required";
      case 431 -> "Request Header Fields Too Large";
      case 500 -> "Internal Server Error";
      case 501 -> "Not Implemented";
      case 503 -> "Service Unavailable";
      case 505 -> "HTTP Version Not Supported";
      default -> "Status " + status;
    };
  }
}
