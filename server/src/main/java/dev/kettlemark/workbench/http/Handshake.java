package dev.kettlemark.workbench.http;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;
import java.util.Locale;

/** The opening handshake of RFC 6455, section 4.2, without sub-protocols and extensions. */
final class Handshake {

  private static final String GUID = "258EAFA5-E914-47DA-95CA-C5AB0DC85B11";

  private Handshake() {}

  /** What the server shows to have understood; refuses whatever is no handshake. */
  static String accept(RequestHead head) throws Refused {
    boolean upgrades = head.method().equals("GET")
        && head.field("upgrade").orElse("").equalsIgnoreCase("websocket")
        && List.of(head.field("connection").orElse("").toLowerCase(Locale.ROOT).split(" *, *", -1))
            .contains("upgrade");
    if (!upgrades) {
      throw new Refused(426, "here a WebSocket is spoken");
    }
    if (!head.field("sec-websocket-version").orElse("").equals("13")) {
      throw new Refused(426, "the WebSocket's version is 13");
    }
    String key = head.field("sec-websocket-key").orElse("");
    if (!key.matches("[A-Za-z0-9+/]{22}==")) {
      throw new Refused(400, "the WebSocket's key is malformed");
    }
    try {
      byte[] hash = MessageDigest.getInstance("SHA-1")
          .digest((key + GUID).getBytes(StandardCharsets.US_ASCII));
      return Base64.getEncoder().encodeToString(hash);
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException("every Java has SHA-1", impossible);
    }
  }
}
