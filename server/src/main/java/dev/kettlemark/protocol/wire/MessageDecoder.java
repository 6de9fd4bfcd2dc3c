package dev.kettlemark.protocol.wire;

import com.google.gson.Gson;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.reflect.TypeToken;
import java.lang.reflect.Type;
import java.util.Collection;
import org.eclipse.lsp4j.jsonrpc.MessageIssueException;
import org.eclipse.lsp4j.jsonrpc.json.JsonRpcMethod;
import org.eclipse.lsp4j.jsonrpc.json.MessageJsonHandler;
import org.eclipse.lsp4j.jsonrpc.messages.Message;
import org.eclipse.lsp4j.jsonrpc.messages.NotificationMessage;
import org.eclipse.lsp4j.jsonrpc.messages.RequestMessage;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseError;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseMessage;
import org.eclipse.lsp4j.jsonrpc.validation.ReflectiveMessageValidator;
import org.jspecify.annotations.Nullable;

/** Turns an envelope into a message whose parameters have the type, and the required fields, of its method. */
final class MessageDecoder {

  private final MessageJsonHandler methods;
  private final Gson gson;
  private final ReflectiveMessageValidator validator =
      new ReflectiveMessageValidator(accepted -> {});

  MessageDecoder(MessageJsonHandler methods) {
    this.methods = methods;
    this.gson = methods.getGson();
  }

  /** Refuses an unknown method, a request sent as a notification or the reverse, and parameters that do not fit. */
  Message decode(Envelope envelope) throws Refusal {
    if (envelope.kind() == Envelope.Kind.RESPONSE) {
      return response(envelope);
    }
    JsonRpcMethod method = methods.getJsonRpcMethod(envelope.method());
    String name = Refusal.quote(envelope.method());
    if (method == null) {
      throw envelope.refuse(ResponseErrorCode.MethodNotFound, "no method " + name);
    }
    if (method.isNotification() != envelope.isNotification()) {
      throw envelope.refuse(
          ResponseErrorCode.InvalidRequest,
          name
              + (method.isNotification()
                  ? " is a notification and has no id"
                  : " is a request and has an id"));
    }
    try {
      Message message = call(envelope, params(method, envelope.json().get("params")));
      validator.consume(message);
      return message;
    } catch (MessageIssueException missing) {
      throw envelope.refuse(
          ResponseErrorCode.InvalidParams,
          "the parameters of " + name + " lack a required field: "
              + missing.getIssues().get(0).getText());
    } catch (RuntimeException unreadable) {
      // Type adapters meet values of any kind with exceptions of any kind.
      throw envelope.refuse(
          ResponseErrorCode.InvalidParams, "the parameters of " + name + " have a wrong type");
    } catch (StackOverflowError | OutOfMemoryError exhausted) {
      throw envelope.refuse(
          ResponseErrorCode.InternalError, "the parameters of " + name + " are too large");
    }
  }

  private static Message call(Envelope envelope, @Nullable Object params) {
    if (envelope.isNotification()) {
      NotificationMessage notification = new NotificationMessage();
      notification.setMethod(envelope.method());
      notification.setParams(params);
      return notification;
    }
    RequestMessage request = new RequestMessage();
    request.setRawId(envelope.id());
    request.setMethod(envelope.method());
    request.setParams(params);
    return request;
  }

  /** Left-out parameters are read as an empty object, so that a method without required fields may leave them out. */
  private @Nullable Object params(JsonRpcMethod method, @Nullable JsonElement params) {
    Type[] types = method.getParameterTypes();
    if (types.length == 0) {
      return null;
    }
    if (params == null || params.isJsonNull()) {
      return gson.fromJson(new JsonObject(), types[0]);
    }
    return gson.fromJson(
        isPositional(params, types[0]) ? params.getAsJsonArray().get(0) : params, types[0]);
  }

  /** JSON-RPC 2.0, section 4.2: parameters by position come in an array; LSP methods have one parameter at most. */
  private static boolean isPositional(JsonElement params, Type type) {
    return params.isJsonArray()
        && params.getAsJsonArray().size() == 1
        && !Collection.class.isAssignableFrom(TypeToken.get(type).getRawType());
  }

  /** A response that cannot be read becomes a failed one, so that nobody waits for it any longer. */
  private Message response(Envelope envelope) throws Refusal {
    if (envelope.id() == null) {
      throw envelope.refuse(
          ResponseErrorCode.InvalidRequest, "the client could not read a message");
    }
    try {
      return gson.fromJson(envelope.json(), Message.class);
    } catch (RuntimeException unreadable) {
      ResponseMessage failed = new ResponseMessage();
      failed.setRawId(envelope.id());
      failed.setError(new ResponseError(
          ResponseErrorCode.ParseError, "the client's result has a wrong type", null));
      return failed;
    }
  }
}
