package dev.kettlemark.workbench.http;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The first line of a request and its header fields, read by the letter of RFC 9112.
 *
 * <p>What the RFC lets a lenient server repair is refused: a client of ours never sends it, and two readers that repair
 * differently are how requests are smuggled.
 *
 * @param method as sent; methods are spelled in capitals
 * @param path as sent, never decoded: the server has no path that would need it
 * @param query decoded once
 * @param fields by name in lower case
 */
public record RequestHead(
    String method, String path, Map<String, String> query, Map<String, String> fields) {

  private static final Pattern FIRST_LINE =
      Pattern.compile("([A-Z]{1,16}) (/[\\x21-\\x7E]{0,4096}) HTTP/1\\.([01])");

  private static final Pattern FIELD =
      Pattern.compile("([!#$%&'*+.^_`|~0-9A-Za-z-]{1,100}):[ \\t]*([\\x20-\\x7E\\t]*?)[ \\t]*");

  public RequestHead {
    query = Map.copyOf(query);
    fields = Map.copyOf(fields);
  }

  static RequestHead of(List<String> lines) throws Refused {
    Matcher first = FIRST_LINE.matcher(lines.isEmpty() ? "" : lines.get(0));
    if (!first.matches()) {
      throw new Refused(400, "the request line is not of HTTP/1.1");
    }
    Map<String, String> fields = new HashMap<>();
    for (String line : lines.subList(1, lines.size())) {
      Matcher field = FIELD.matcher(line);
      if (!field.matches()) {
        throw new Refused(400, "a header field is malformed");
      }
      String name = asciiLower(field.group(1));
      if (fields.put(name, field.group(2)) != null) {
        throw new Refused(400, "the header field `" + name + "` stands twice");
      }
    }
    String target = first.group(2);
    int mark = target.indexOf('?');
    String path = mark < 0 ? target : target.substring(0, mark);
    return new RequestHead(
        first.group(1), path, mark < 0 ? Map.of() : query(target.substring(mark + 1)), fields);
  }

  public Optional<String> field(String name) {
    return Optional.ofNullable(fields.get(name));
  }

  /** A cookie by name; a name that stands twice is none. */
  public Optional<String> cookie(String name) {
    List<String> values = List.of(field("cookie").orElse("").split(";", -1)).stream()
        .map(String::strip)
        .filter(pair -> pair.startsWith(name + "="))
        .map(pair -> pair.substring(name.length() + 1))
        .toList();
    return values.size() == 1 ? Optional.of(values.get(0)) : Optional.empty();
  }

  /** How long the body is said to be. */
  long contentLength() throws Refused {
    if (fields.containsKey("transfer-encoding")) {
      throw new Refused(501, "a body is sent with its length");
    }
    String length = fields.getOrDefault("content-length", "0");
    if (!length.matches("[0-9]{1,12}")) {
      throw new Refused(400, "the length of the body is no number");
    }
    return Long.parseLong(length);
  }

  private static Map<String, String> query(String text) throws Refused {
    Map<String, String> query = new HashMap<>();
    for (String pair : text.split("&", -1)) {
      int equals = pair.indexOf('=');
      if (equals <= 0) {
        throw new Refused(400, "the query is malformed");
      }
      if (query.put(decoded(pair.substring(0, equals)), decoded(pair.substring(equals + 1)))
          != null) {
        throw new Refused(400, "the query names something twice");
      }
    }
    return query;
  }

  /** RFC 3986, section 2.1, on UTF-8; a plus is a plus. */
  private static String decoded(String text) throws Refused {
    ByteBuffer bytes = ByteBuffer.allocate(text.length());
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) != '%') {
        bytes.put((byte) text.charAt(i));
      } else if (text.length() > i + 2 && text.substring(i + 1, i + 3).matches("[0-9A-Fa-f]{2}")) {
        bytes.put((byte) Integer.parseInt(text.substring(i + 1, i + 3), 16));
        i += 2;
      } else {
        throw new Refused(400, "the query is malformed");
      }
    }
    try {
      return StandardCharsets.UTF_8
          .newDecoder()
          .onMalformedInput(CodingErrorAction.REPORT)
          .decode(bytes.flip())
          .toString();
    } catch (CharacterCodingException malformed) {
      throw new Refused(400, "the query is not UTF-8");
    }
  }

  private static String asciiLower(String name) {
    StringBuilder lower = new StringBuilder(name.length());
    name.chars().forEach(c -> lower.append((char) (c >= 'A' && c <= 'Z' ? c + 32 : c)));
    return lower.toString();
  }
}
