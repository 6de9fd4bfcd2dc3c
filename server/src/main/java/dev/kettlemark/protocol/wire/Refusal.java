package dev.kettlemark.protocol.wire;

import java.util.Optional;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseError;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseMessage;
import org.jspecify.annotations.Nullable;

/**
 * A message that is not handed to the language server, and what the client is told about it.
 *
 * <p>It is an exception because every step from bytes to a call may refuse, and no later step can go on with what an
 * earlier one refused.
 */
final class Refusal extends Exception {

  private static final int LONGEST_QUOTE = 80;

  private final transient @Nullable ResponseMessage answer;

  private Refusal(String reason, @Nullable ResponseMessage answer) {
    super(reason, null, false, false);
    this.answer = answer;
  }

  /** Refuses a message that carries no id that could be trusted; JSON-RPC 2.0 then asks for a null id. */
  static Refusal of(ResponseErrorCode code, String reason) {
    return of(null, code, reason);
  }

  /** Refuses the request with this id. */
  static Refusal of(@Nullable Either<String, Number> id, ResponseErrorCode code, String reason) {
    ResponseMessage answer = new ResponseMessage();
    answer.setRawId(id);
    answer.setError(new ResponseError(code, reason, null));
    return new Refusal(reason, answer);
  }

  /** Drops a notification or a response, which JSON-RPC 2.0 forbids to answer. */
  static Refusal silently(String reason) {
    return new Refusal(reason, null);
  }

  Optional<ResponseMessage> answer() {
    return Optional.ofNullable(answer);
  }

  /** The client's own words, short and without control characters, fit for a log line. */
  static String quote(String words) {
    String start =
        words.length() <= LONGEST_QUOTE ? words : words.substring(0, LONGEST_QUOTE) + "…";
    return '"' + start.replaceAll("\\p{Cntrl}", "?") + '"';
  }
}
