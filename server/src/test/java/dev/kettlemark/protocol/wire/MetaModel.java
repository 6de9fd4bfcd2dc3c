package dev.kettlemark.protocol.wire;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * The types of the Language Server Protocol 3.18 as its makers describe them for machines, to hold
 * against what is really sent.
 *
 * <p>{@code metaModel.json} is {@code protocol/metaModel.json} of
 * https://github.com/microsoft/vscode-languageserver-node, version 3.18.0, unchanged, under the MIT
 * licence that lies beside it.
 *
 * <p>Unlike the protocol itself, which lets anybody add properties, an unknown property is a fault here:
 * it is a misspelled one.
 */
public final class MetaModel {

  private static final MetaModel LSP = read();

  private final Map<String, JsonObject> structures = new HashMap<>();
  private final Map<String, JsonObject> enumerations = new HashMap<>();
  private final Map<String, JsonObject> aliases = new HashMap<>();
  private final Map<String, JsonObject> requests = new HashMap<>();
  private final Map<String, JsonObject> notifications = new HashMap<>();
  private final Map<String, Map<String, JsonObject>> properties = new HashMap<>();

  /**
   * What is wrong with a value.
   *
   * @param path to the place, such as {@code .items[2].range}
   */
  public record Fault(String path, String what) {

    @Override
    public String toString() {
      return (path.isEmpty() ? "the value" : path) + " " + what;
    }
  }

  private MetaModel(JsonObject model) {
    index(model, "structures", "name", structures);
    index(model, "enumerations", "name", enumerations);
    index(model, "typeAliases", "name", aliases);
    index(model, "requests", "method", requests);
    index(model, "notifications", "method", notifications);
    structures.keySet().forEach(name -> properties.put(name, collected(name)));
  }

  public static MetaModel lsp() {
    return LSP;
  }

  private static MetaModel read() {
    try (InputStream stream = MetaModel.class.getResourceAsStream("metaModel.json")) {
      return new MetaModel(JsonParser.parseReader(
              new InputStreamReader(Objects.requireNonNull(stream), StandardCharsets.UTF_8))
          .getAsJsonObject());
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private static void index(
      JsonObject model, String list, String key, Map<String, JsonObject> into) {
    model.getAsJsonArray(list).forEach(each -> {
      JsonObject object = each.getAsJsonObject();
      into.put(object.get(key).getAsString(), object);
    });
  }

  boolean hasRequest(String method) {
    return requests.containsKey(method);
  }

  boolean hasNotification(String method) {
    return notifications.containsKey(method);
  }

  /** What is wrong with the parameters of a request or notification of the protocol. */
  public Optional<Fault> params(String method, JsonElement params) {
    JsonObject message = requests.getOrDefault(method, notifications.get(method));
    if (message == null) {
      return Optional.of(new Fault("", "belongs to the unknown method " + method));
    }
    JsonObject type = message.getAsJsonObject("params");
    return type == null ? Optional.empty() : check(type, params, "");
  }

  /** What is wrong with the result of a request of the protocol. */
  public Optional<Fault> result(String method, JsonElement result) {
    JsonObject request = requests.get(method);
    return request == null
        ? Optional.of(new Fault("", "belongs to the unknown request " + method))
        : check(request.getAsJsonObject("result"), result, "");
  }

  /** What is wrong with a part of the result of a request of the protocol. */
  public Optional<Fault> partialResult(String method, JsonElement part) {
    JsonObject request = requests.get(method);
    return request == null || !request.has("partialResult")
        ? Optional.of(new Fault("", "is a part of a result that has none: " + method))
        : check(request.getAsJsonObject("partialResult"), part, "");
  }

  /** What is wrong with a value of a named type. */
  public Optional<Fault> value(String type, JsonElement value) {
    return reference(type, value, "");
  }

  private Optional<Fault> check(JsonObject type, JsonElement value, String path) {
    String kind = type.get("kind").getAsString();
    return switch (kind) {
      case "base" -> base(type.get("name").getAsString(), value, path);
      case "reference" -> reference(type.get("name").getAsString(), value, path);
      case "array" -> array(type.getAsJsonObject("element"), value, path);
      case "map" -> map(type, value, path);
      case "or" -> or(type.getAsJsonArray("items"), value, path);
      case "and" -> and(type.getAsJsonArray("items"), value, path);
      case "tuple" -> tuple(type.getAsJsonArray("items"), value, path);
      case "literal" ->
        object(named(type.getAsJsonObject("value").getAsJsonArray("properties")), value, path);
      case "stringLiteral" ->
        value.equals(type.get("value"))
            ? Optional.empty()
            : fault(path, "is not " + type.get("value"));
      default -> throw new IllegalStateException("a kind of type that nobody knows: " + kind);
    };
  }

  private static Optional<Fault> base(String name, JsonElement value, String path) {
    boolean right = switch (name) {
      case "null" -> value.isJsonNull();
      case "boolean" -> value.isJsonPrimitive() && value.getAsJsonPrimitive().isBoolean();
      case "integer" -> isWhole(value, Integer.MIN_VALUE);
      case "uinteger" -> isWhole(value, 0);
      case "decimal" -> isNumber(value);
      case "URI", "DocumentUri" -> isString(value) && isUri(value.getAsString());
      case "string", "RegExp" -> isString(value);
      default -> throw new IllegalStateException("a base type that nobody knows: " + name);
    };
    return right ? Optional.empty() : fault(path, "is no " + name + " but " + shown(value));
  }

  private Optional<Fault> reference(String name, JsonElement value, String path) {
    if (name.equals("LSPAny")) {
      return Optional.empty();
    }
    Map<String, JsonObject> known = properties.get(name);
    if (known != null) {
      return object(known, value, path);
    }
    JsonObject enumeration = enumerations.get(name);
    if (enumeration != null) {
      return enumeration(enumeration, value, path);
    }
    JsonObject alias = aliases.get(name);
    if (alias == null) {
      throw new IllegalStateException("a type that nobody knows: " + name);
    }
    return check(alias.getAsJsonObject("type"), value, path);
  }

  private Optional<Fault> enumeration(JsonObject enumeration, JsonElement value, String path) {
    Optional<Fault> wrong =
        base(enumeration.getAsJsonObject("type").get("name").getAsString(), value, path);
    boolean custom = enumeration.has("supportsCustomValues")
        && enumeration.get("supportsCustomValues").getAsBoolean();
    if (wrong.isPresent() || custom) {
      return wrong;
    }
    for (JsonElement each : enumeration.getAsJsonArray("values")) {
      JsonElement known = each.getAsJsonObject().get("value");
      if (known.getAsString().equals(value.getAsString())) {
        return Optional.empty();
      }
    }
    return fault(path, "is no " + enumeration.get("name").getAsString() + " but " + shown(value));
  }

  private Optional<Fault> object(Map<String, JsonObject> known, JsonElement value, String path) {
    if (!value.isJsonObject()) {
      return fault(path, "is no object but " + shown(value));
    }
    JsonObject object = value.getAsJsonObject();
    for (Map.Entry<String, JsonElement> entry : object.entrySet()) {
      JsonObject property = known.get(entry.getKey());
      String below = path + "." + entry.getKey();
      if (property == null) {
        return fault(below, "is no property of this type");
      }
      Optional<Fault> wrong = check(property.getAsJsonObject("type"), entry.getValue(), below);
      if (wrong.isPresent()) {
        return wrong;
      }
    }
    return known.entrySet().stream()
        .filter(entry -> !object.has(entry.getKey()) && !isOptional(entry.getValue()))
        .map(entry -> new Fault(path + "." + entry.getKey(), "is missing"))
        .findFirst();
  }

  private static boolean isOptional(JsonObject property) {
    return property.has("optional") && property.get("optional").getAsBoolean();
  }

  private Optional<Fault> array(JsonObject element, JsonElement value, String path) {
    if (!value.isJsonArray()) {
      return fault(path, "is no array but " + shown(value));
    }
    JsonArray array = value.getAsJsonArray();
    for (int i = 0; i < array.size(); i++) {
      Optional<Fault> wrong = check(element, array.get(i), path + "[" + i + "]");
      if (wrong.isPresent()) {
        return wrong;
      }
    }
    return Optional.empty();
  }

  private Optional<Fault> map(JsonObject type, JsonElement value, String path) {
    if (!value.isJsonObject()) {
      return fault(path, "is no object but " + shown(value));
    }
    return value.getAsJsonObject().entrySet().stream()
        .flatMap(entry ->
            check(type.getAsJsonObject("value"), entry.getValue(), path + "." + entry.getKey())
                .stream())
        .findFirst();
  }

  private Optional<Fault> tuple(JsonArray items, JsonElement value, String path) {
    if (!value.isJsonArray() || value.getAsJsonArray().size() != items.size()) {
      return fault(path, "is no array of " + items.size() + " but " + shown(value));
    }
    for (int i = 0; i < items.size(); i++) {
      Optional<Fault> wrong = check(
          items.get(i).getAsJsonObject(), value.getAsJsonArray().get(i), path + "[" + i + "]");
      if (wrong.isPresent()) {
        return wrong;
      }
    }
    return Optional.empty();
  }

  /** Of several ways to be wrong, the one that got furthest says most. */
  private Optional<Fault> or(JsonArray items, JsonElement value, String path) {
    Optional<Fault> furthest = Optional.empty();
    for (JsonElement item : items) {
      Optional<Fault> wrong = check(item.getAsJsonObject(), value, path);
      if (wrong.isEmpty()) {
        return wrong;
      }
      if (furthest.isEmpty()
          || wrong.get().path().length() > furthest.get().path().length()) {
        furthest = wrong;
      }
    }
    return furthest;
  }

  private Optional<Fault> and(JsonArray items, JsonElement value, String path) {
    Map<String, JsonObject> all = new LinkedHashMap<>();
    items.forEach(
        item -> all.putAll(properties.get(item.getAsJsonObject().get("name").getAsString())));
    return object(all, value, path);
  }

  private Map<String, JsonObject> collected(String structure) {
    JsonObject declared = Objects.requireNonNull(structures.get(structure));
    Map<String, JsonObject> all = new LinkedHashMap<>();
    for (String above : new String[] {"extends", "mixins"}) {
      if (declared.has(above)) {
        declared
            .getAsJsonArray(above)
            .forEach(
                each -> all.putAll(collected(each.getAsJsonObject().get("name").getAsString())));
      }
    }
    all.putAll(named(declared.getAsJsonArray("properties")));
    return all;
  }

  private static Map<String, JsonObject> named(JsonArray properties) {
    Map<String, JsonObject> all = new LinkedHashMap<>();
    properties.forEach(
        each -> all.put(each.getAsJsonObject().get("name").getAsString(), each.getAsJsonObject()));
    return all;
  }

  private static boolean isString(JsonElement value) {
    return value.isJsonPrimitive() && value.getAsJsonPrimitive().isString();
  }

  private static boolean isNumber(JsonElement value) {
    return value.isJsonPrimitive() && value.getAsJsonPrimitive().isNumber();
  }

  private static boolean isWhole(JsonElement value, long least) {
    if (!isNumber(value)) {
      return false;
    }
    BigDecimal number = value.getAsBigDecimal();
    return number.stripTrailingZeros().scale() <= 0
        && number.compareTo(BigDecimal.valueOf(least)) >= 0
        && number.compareTo(BigDecimal.valueOf(Integer.MAX_VALUE)) <= 0;
  }

  /** A scheme and something behind it: RFC 3986, section 3. */
  private static boolean isUri(String text) {
    return text.matches("[A-Za-z][A-Za-z0-9+.-]*:.*") && !text.contains(" ");
  }

  private static Optional<Fault> fault(String path, String what) {
    return Optional.of(new Fault(path, what));
  }

  private static String shown(JsonElement value) {
    String text = value.toString();
    return text.length() <= 60 ? text : text.substring(0, 60) + "…";
  }
}
