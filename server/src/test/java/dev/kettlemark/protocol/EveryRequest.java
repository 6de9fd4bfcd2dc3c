package dev.kettlemark.protocol;

import com.google.gson.Gson;
import com.google.gson.JsonElement;
import dev.kettlemark.Today;
import dev.kettlemark.text.Source;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Proxy;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.eclipse.lsp4j.CodeActionContext;
import org.eclipse.lsp4j.CompletionList;
import org.eclipse.lsp4j.FormattingOptions;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.ReferenceContext;
import org.eclipse.lsp4j.SemanticTokens;
import org.eclipse.lsp4j.SignatureHelp;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextDocumentItem;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.jsonrpc.json.MessageJsonHandler;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.services.LanguageClient;
import org.jspecify.annotations.Nullable;

/**
 * Every request that the server answers, found by looking at its own methods, on one open text.
 *
 * <p>Where a request is asked is found as well: at the first word around the middle of the text at which it
 * has an answer. So a new feature is measured and tested without anybody thinking of it, and one whose
 * parameters nobody can fill fails. Commands are left out, since each has arguments of its own.
 */
public final class EveryRequest {

  private static final String URI = "untitled:bench";
  private static final Gson GSON = new MessageJsonHandler(Map.of()).getGson();
  private static final Pattern WORD = Pattern.compile("[^\\s,]+");
  private static final int LINES_AROUND = 50;

  private final List<Object> services;
  private final Source source;
  private final List<Position> places;
  private final Map<String, Ask> asks = new LinkedHashMap<>();
  private final Set<String> unanswered = new LinkedHashSet<>();
  private String lastResult = "";

  /**
   * A request with parameters to which it has an answer.
   *
   * @param params makes them anew where the server fills in what it is sent
   */
  public record Ask(Object service, Method method, Supplier<Object> params) {

    /** The answer, by the way that the wire takes as well. */
    public @Nullable Object now() {
      try {
        return ((CompletableFuture<?>) method.invoke(service, params.get())).join();
      } catch (IllegalAccessException | InvocationTargetException broken) {
        throw new IllegalStateException(method.getName(), broken);
      }
    }
  }

  private EveryRequest(String text) {
    ServerState state = new ServerState(new OnTheSpot(), EveryRequest::client, () -> Today.DAY);
    state.initialize(ClientProfiles.vscode());
    state.begin();
    state.open(new TextDocumentItem(URI, "kettlemark", 1, text));
    services = List.of(new DocumentService(state), new LibraryService(state));
    source = Source.of(text);
    places = places(source);
  }

  /** Looks for an answer to each request. */
  public static EveryRequest on(String text) {
    EveryRequest every = new EveryRequest(text);
    // What is asked with the answer to another request comes after it.
    methods()
        .sorted(Comparator.comparing((Method method) -> isAboutAnswer(method))
            .thenComparing(method -> method.getName()))
        .forEach(every::look);
    return every;
  }

  /** The names of all requests. */
  public static List<String> names() {
    return methods().map(EveryRequest::name).sorted().toList();
  }

  public Ask named(String name) {
    return Objects.requireNonNull(asks.get(name), name);
  }

  /** Requests to which there is no answer anywhere. */
  Set<String> unanswered() {
    return unanswered;
  }

  /** Findings are asked for of a document and of the whole library, by one name. */
  private static String name(Method method) {
    boolean isOfLibrary = method.getDeclaringClass() == LibraryService.class;
    return method.getName() + (isOfLibrary ? "OfLibrary" : "");
  }

  private static Stream<Method> methods() {
    return Stream.of(DocumentService.class, LanguageRequests.class, LibraryService.class)
        .flatMap(service -> Stream.of(service.getDeclaredMethods()))
        .filter(method -> Modifier.isPublic(method.getModifiers())
            && !method.isBridge()
            && method.getReturnType() == CompletableFuture.class
            && !method.getName().equals("executeCommand")
            && !method.getName().equals("textDocumentContent"));
  }

  /** Whether a request is asked with what another one answers. */
  private static boolean isAboutAnswer(Method method) {
    Class<?> params = method.getParameterTypes()[0];
    return !params.getSimpleName().endsWith("Params") || hasSetter(params, "setItem");
  }

  private static boolean hasSetter(Class<?> type, String name) {
    return Stream.of(type.getMethods()).anyMatch(method -> method.getName().equals(name));
  }

  private void look(Method method) {
    method.setAccessible(true);
    Object service = services.stream()
        .filter(method.getDeclaringClass()::isInstance)
        .findFirst()
        .orElseThrow();
    Class<?> type = method.getParameterTypes()[0];
    Stream<Object> tries = type.getSimpleName().endsWith("Params")
        ? hasSetter(type, "setItem")
            ? aboutItems(type)
            : places.stream().map(at -> filled(type, at))
        : answered(type);
    Optional<Ask> found = tries
        .map(params -> new Ask(service, method, again(params)))
        .filter(EveryRequest::isAnswered)
        .findFirst();
    found.ifPresentOrElse(ask -> asks.put(name(method), ask), () -> unanswered.add(name(method)));
    found.map(Ask::now).ifPresent(answer -> {
      if (answer instanceof SemanticTokens tokens && tokens.getResultId() != null) {
        lastResult = tokens.getResultId();
      }
    });
  }

  private static Supplier<Object> again(Object params) {
    if (params.getClass().getSimpleName().endsWith("Params")) {
      return () -> params;
    }
    String json = GSON.toJson(params);
    return () -> GSON.fromJson(json, params.getClass());
  }

  private static boolean isAnswered(Ask ask) {
    try {
      return !isNothing(ask.now());
    } catch (CompletionException refused) {
      if (refused.getCause() instanceof ResponseErrorException) {
        return false;
      }
      throw refused;
    }
  }

  private Stream<Object> aboutItems(Class<?> type) {
    Method setter = Stream.of(type.getMethods())
        .filter(method -> method.getName().equals("setItem"))
        .findFirst()
        .orElseThrow();
    return answered(setter.getParameterTypes()[0]).map(item -> {
      Object params = filled(type, places.get(0));
      set(params, setter, item);
      return params;
    });
  }

  /** What requests answer that is of a type, those first that have something left to be fetched. */
  private Stream<Object> answered(Class<?> type) {
    List<Ask> about = asks.values().stream()
        .filter(ask -> elements(ask.now()).anyMatch(type::isInstance))
        .toList();
    return Stream.of(true, false)
        .flatMap(fetched -> about.stream()
            .flatMap(ask -> Stream.concat(Stream.of(ask), elsewhere(ask)))
            .filter(EveryRequest::isAnswered)
            .flatMap(ask -> elements(ask.now()))
            .filter(type::isInstance)
            .filter(item -> hasData(item) == fetched));
  }

  private Stream<Ask> elsewhere(Ask ask) {
    Class<?> type = ask.method().getParameterTypes()[0];
    return hasSetter(type, "setPosition")
        ? places.stream()
            .map(at -> filled(type, at))
            .map(params -> new Ask(ask.service(), ask.method(), again(params)))
        : Stream.empty();
  }

  private static boolean hasData(Object item) {
    try {
      return item.getClass().getMethod("getData").invoke(item) instanceof JsonElement;
    } catch (ReflectiveOperationException none) {
      return false;
    }
  }

  private static Stream<Object> elements(@Nullable Object answer) {
    if (answer instanceof Either<?, ?> either) {
      return elements(either.get());
    }
    if (answer instanceof CompletionList list) {
      return elements(list.getItems());
    }
    return answer instanceof List<?> list
        ? list.stream().map(one -> one instanceof Either<?, ?> either ? either.get() : one)
        : Stream.empty();
  }

  private static boolean isNothing(@Nullable Object answer) {
    if (answer instanceof Either<?, ?> either) {
      return isNothing(either.get());
    }
    if (answer instanceof WorkspaceEdit edit) {
      return edit.getDocumentChanges() == null && edit.getChanges() == null;
    }
    if (answer instanceof SemanticTokens tokens) {
      return tokens.getData().isEmpty();
    }
    if (answer instanceof SignatureHelp help) {
      return help.getSignatures().isEmpty();
    }
    return answer == null
        || (answer instanceof List<?> && elements(answer).findAny().isEmpty())
        || (answer instanceof CompletionList list && list.getItems().isEmpty());
  }

  /** Parameters for a place, each property filled by what type it is of. */
  private Object filled(Class<?> type, Position at) {
    try {
      Object params = type.getConstructor().newInstance();
      for (Method setter : type.getMethods()) {
        if (setter.getName().startsWith("set") && setter.getParameterCount() == 1) {
          value(setter, at).ifPresent(value -> set(params, setter, value));
        }
      }
      return params;
    } catch (ReflectiveOperationException broken) {
      throw new IllegalStateException("nobody says with what " + type + " is filled", broken);
    }
  }

  private Optional<Object> value(Method setter, Position at) {
    Type type = setter.getGenericParameterTypes()[0];
    if (type == TextDocumentIdentifier.class) {
      return Optional.of(new TextDocumentIdentifier(URI));
    }
    if (type == Position.class) {
      return Optional.of(at);
    }
    if (type == Range.class) {
      return Optional.of(around(at));
    }
    if (type == CodeActionContext.class) {
      return Optional.of(new CodeActionContext(List.of()));
    }
    if (type == ReferenceContext.class) {
      return Optional.of(new ReferenceContext(true));
    }
    if (type == FormattingOptions.class) {
      return Optional.of(new FormattingOptions(2, true));
    }
    if (type instanceof ParameterizedType list && list.getRawType() == List.class) {
      Type element = list.getActualTypeArguments()[0];
      return Optional.of(
          element == Position.class
              ? List.of(at)
              : element == Range.class ? List.of(around(at)) : List.of());
    }
    return type == String.class ? word(setter.getName()) : Optional.empty();
  }

  private Optional<Object> word(String setter) {
    return switch (setter) {
      case "setNewName" -> Optional.of("another-name");
      case "setCh" -> Optional.of("\n");
      case "setQuery" -> Optional.of("bench");
      case "setPreviousResultId" ->
        lastResult.isEmpty() ? Optional.empty() : Optional.of(lastResult);
      default -> Optional.empty();
    };
  }

  private static void set(Object params, Method setter, Object value) {
    try {
      setter.invoke(params, value);
    } catch (ReflectiveOperationException broken) {
      throw new IllegalStateException(setter.toString(), broken);
    }
  }

  /** As many lines as a screen shows. */
  private Range around(Position at) {
    int last = source.lineCount() - 1;
    return new Range(
        new Position(Math.max(0, at.getLine() - LINES_AROUND / 2), 0),
        new Position(Math.min(last, at.getLine() + LINES_AROUND / 2), 0));
  }

  /** The starts and ends of the words around the middle, the middle first. */
  private static List<Position> places(Source source) {
    int middle = source.lineCount() / 2;
    List<Position> places = new ArrayList<>();
    for (int line = Math.max(0, middle - LINES_AROUND);
        line < Math.min(source.lineCount(), middle + LINES_AROUND);
        line++) {
      Matcher words = WORD.matcher(source.line(line).of(source.text()));
      while (words.find()) {
        places.add(new Position(line, words.start()));
        places.add(new Position(line, words.end()));
      }
      places.add(new Position(line, 0));
    }
    places.sort(Comparator.comparingInt(place -> Math.abs(place.getLine() - middle)));
    return List.copyOf(places);
  }

  /** A client that takes whatever it is told and answers nothing. */
  private static LanguageClient client() {
    return (LanguageClient) Proxy.newProxyInstance(
        EveryRequest.class.getClassLoader(),
        new Class<?>[] {LanguageClient.class},
        (self, method, arguments) -> method.getReturnType() == CompletableFuture.class
            ? CompletableFuture.completedFuture(null)
            : null);
  }
}
