package dev.kettlemark.protocol.wire;

import java.io.BufferedInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;
import org.jspecify.annotations.Nullable;

/**
 * Cuts a byte stream into the texts of its messages, as the base protocol of LSP 3.17 frames them.
 *
 * <p>Field names are read without regard to case, lines may end in LF alone, and whatever stands where a header should
 * is skipped until the next {@code Content-Length}. Memory is bounded at every step.
 */
final class FrameReader {

  /** Longest message in bytes: ten times the largest document that is worth analysing. */
  static final int LONGEST_MESSAGE = 64 << 20;

  /** Longest message in bytes that is skipped as declared; a larger figure is no length but an accident. */
  static final long LONGEST_SKIP = 1L << 30;

  /** Bytes without a header after which the other side is taken to speak something else. */
  static final int LONGEST_JUNK = 1 << 20;

  /** A header ends its line, so of a longer line only the end is kept. */
  private static final int LINE_KEPT = 512;

  private static final Pattern LENGTH =
      Pattern.compile("content-length[ \\t]*:[ \\t]*(\\d{1,18})[ \\t]*$", Pattern.CASE_INSENSITIVE);

  private static final Pattern CHARSET = Pattern.compile(
      "^content-type[ \\t]*:.*charset[ \\t]*=[ \\t]*\"?([^\\s\";]+)", Pattern.CASE_INSENSITIVE);

  private final InputStream in;
  private int junk;

  FrameReader(InputStream in) {
    this.in = new BufferedInputStream(in, 1 << 16);
  }

  /**
   * Waits for the next message.
   *
   * @return its text, or nothing at the end of input, also when that falls inside a message
   * @throws Refusal if this message cannot be taken; the next call goes on behind it
   * @throws IOException if the stream fails or is not made of messages at all
   */
  Optional<String> next() throws IOException, Refusal {
    OptionalLong length = OptionalLong.empty();
    String charset = "utf-8";
    for (String line = readLine(); line != null; line = readLine()) {
      Matcher lengthField = LENGTH.matcher(line);
      Matcher charsetField = CHARSET.matcher(line);
      if (lengthField.find()) {
        length = OptionalLong.of(Long.parseLong(lengthField.group(1)));
      } else if (charsetField.find()) {
        charset = charsetField.group(1);
      } else if (line.isEmpty() && length.isPresent()) {
        junk = 0;
        return readBody(length.getAsLong(), charset);
      }
    }
    return Optional.empty();
  }

  private @Nullable String readLine() throws IOException {
    StringBuilder line = new StringBuilder();
    for (int octet = in.read(); octet >= 0; octet = in.read()) {
      if (++junk > LONGEST_JUNK) {
        throw new IOException("no message header within " + LONGEST_JUNK + " bytes");
      }
      if (octet == '\n') {
        int end = line.length() - 1;
        return end >= 0 && line.charAt(end) == '\r' ? line.substring(0, end) : line.toString();
      }
      if (line.length() == LINE_KEPT) {
        line.delete(0, LINE_KEPT / 2);
      }
      line.append((char) octet);
    }
    return null;
  }

  private Optional<String> readBody(long length, String charset) throws IOException, Refusal {
    if (length > LONGEST_MESSAGE) {
      if (length <= LONGEST_SKIP) {
        skip(length);
      }
      throw Refusal.of(
          ResponseErrorCode.InvalidRequest,
          "a message of " + length + " bytes is over the limit of " + LONGEST_MESSAGE);
    }
    byte[] body = allocate((int) length);
    if (in.readNBytes(body, 0, body.length) < body.length) {
      return Optional.empty();
    }
    if (!charset.equalsIgnoreCase("utf-8") && !charset.equalsIgnoreCase("utf8")) {
      throw Refusal.of(
          ResponseErrorCode.InvalidRequest,
          "messages are read as utf-8, not as " + Refusal.quote(charset));
    }
    return Optional.of(new String(body, StandardCharsets.UTF_8));
  }

  /** A small heap may not hold a message that the limit allows; it is then skipped like one that is too long. */
  private byte[] allocate(int length) throws IOException, Refusal {
    try {
      return new byte[length];
    } catch (OutOfMemoryError tooSmall) {
      skip(length);
      throw Refusal.of(
          ResponseErrorCode.InternalError, "no memory for a message of " + length + " bytes");
    }
  }

  /** Reads and forgets; {@link InputStream#skip} of a standard input that is a pipe fails with "Illegal seek". */
  private void skip(long length) throws IOException {
    byte[] scratch = new byte[1 << 13];
    for (long left = length; left > 0; ) {
      int read = in.read(scratch, 0, (int) Math.min(left, scratch.length));
      if (read < 0) {
        throw new EOFException("the input ends inside a message");
      }
      left -= read;
    }
  }
}
