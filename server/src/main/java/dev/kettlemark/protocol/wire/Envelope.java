package dev.kettlemark.protocol.wire;

import com.google.gson.Gson;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import com.google.gson.JsonPrimitive;
import com.google.gson.Strictness;
import com.google.gson.TypeAdapter;
import com.google.gson.stream.JsonReader;
import com.google.gson.stream.JsonToken;
import java.io.IOException;
import java.io.StringReader;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;
import org.jspecify.annotations.Nullable;

/**
 * A JSON text that has the shape of a JSON-RPC 2.0 message, its parameters or result still unread.
 *
 * @param kind what the message is
 * @param id as the client wrote it; null in notifications, and in an answer to something the client could not read
 * @param method empty in responses
 * @param json the whole message
 */
record Envelope(Kind kind, @Nullable Either<String, Number> id, String method, JsonObject json) {

  private static final TypeAdapter<JsonElement> TREE = new Gson().getAdapter(JsonElement.class);

  enum Kind {
    REQUEST,
    NOTIFICATION,
    RESPONSE
  }

  /** Reads a text as a message, or refuses it with the code that JSON-RPC 2.0, section 5.1, names. */
  static Envelope of(String text) throws Refusal {
    JsonElement tree = parse(text);
    if (!tree.isJsonObject()) {
      throw invalid(
          tree.isJsonArray() ? "LSP has no batches of messages" : "a message is a JSON object");
    }
    JsonObject json = tree.getAsJsonObject();
    if (!new JsonPrimitive("2.0").equals(json.get("jsonrpc"))) {
      throw invalid("a message says \"jsonrpc\": \"2.0\"");
    }
    Either<String, Number> id = id(json.get("id"));
    JsonElement method = json.get("method");
    if (method == null) {
      if (!json.has("result") && !json.has("error")) {
        throw invalid("a message has a method, a result or an error");
      }
      return new Envelope(Kind.RESPONSE, id, "", json);
    }
    if (!isString(method)) {
      throw Refusal.of(id, ResponseErrorCode.InvalidRequest, "a method is a string");
    }
    if (json.has("id") && id == null) {
      throw invalid("the id of a request is not null");
    }
    return new Envelope(
        id == null ? Kind.NOTIFICATION : Kind.REQUEST, id, method.getAsString(), json);
  }

  boolean isRequest() {
    return kind == Kind.REQUEST;
  }

  boolean isNotification() {
    return kind == Kind.NOTIFICATION;
  }

  /** Refuses this message: a request is answered, anything else is only logged. */
  Refusal refuse(ResponseErrorCode code, String reason) {
    return isRequest() ? Refusal.of(id, code, reason) : Refusal.silently(reason);
  }

  /**
   * Reads the text by the letter of RFC 8259, with one exception: Gson's strict mode also refuses half a surrogate
   * pair written as an escape, which section 8.2 allows and which an edit inside a pair produces.
   */
  private static JsonElement parse(String text) throws Refusal {
    JsonDepth.check(text);
    try {
      return parse(text, Strictness.STRICT);
    } catch (JsonParseException
        | IOException
        | IllegalStateException
        | NumberFormatException malformed) {
      if (!text.contains("\\u")) {
        throw notJson();
      }
    }
    try {
      return parse(text, Strictness.LEGACY_STRICT);
    } catch (JsonParseException
        | IOException
        | IllegalStateException
        | NumberFormatException malformed) {
      throw notJson();
    }
  }

  private static JsonElement parse(String text, Strictness strictness) throws IOException {
    JsonReader reader = new JsonReader(new StringReader(text));
    reader.setStrictness(strictness);
    JsonElement tree = TREE.read(reader);
    if (reader.peek() != JsonToken.END_DOCUMENT) {
      throw new IOException("text behind the value");
    }
    return tree;
  }

  private static Refusal notJson() {
    return Refusal.of(ResponseErrorCode.ParseError, "the message is not JSON (RFC 8259)");
  }

  private static @Nullable Either<String, Number> id(@Nullable JsonElement id) throws Refusal {
    if (id == null || id.isJsonNull()) {
      return null;
    }
    if (isString(id)) {
      return Either.forLeft(id.getAsString());
    }
    if (id.isJsonPrimitive() && id.getAsJsonPrimitive().isNumber()) {
      return Either.forRight(id.getAsNumber());
    }
    throw invalid("an id is a string or a number");
  }

  private static boolean isString(JsonElement value) {
    return value.isJsonPrimitive() && value.getAsJsonPrimitive().isString();
  }

  private static Refusal invalid(String reason) {
    return Refusal.of(ResponseErrorCode.InvalidRequest, reason);
  }
}
