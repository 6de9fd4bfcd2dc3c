package dev.kettlemark.protocol.wire;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import com.google.gson.TypeAdapter;
import com.google.gson.TypeAdapterFactory;
import com.google.gson.reflect.TypeToken;
import com.google.gson.stream.JsonReader;
import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.util.Set;
import org.eclipse.lsp4j.VersionedTextDocumentIdentifier;
import org.eclipse.lsp4j.WorkspaceFullDocumentDiagnosticReport;
import org.eclipse.lsp4j.WorkspaceUnchangedDocumentDiagnosticReport;
import org.jspecify.annotations.Nullable;

/**
 * Writes the version of a document that no editor holds as {@code null}.
 *
 * <p>Language Server Protocol 3.17 asks for it there ({@code version: integer | null}); left to itself
 * Gson leaves it out, and strict clients then refuse the whole answer.
 */
final class NullVersions implements TypeAdapterFactory {

  private static final String VERSION = "version";

  private static final Set<Class<?>> VERSIONED = Set.of(
      WorkspaceFullDocumentDiagnosticReport.class,
      WorkspaceUnchangedDocumentDiagnosticReport.class,
      VersionedTextDocumentIdentifier.class);

  static void register(GsonBuilder builder) {
    builder.registerTypeAdapterFactory(new NullVersions());
  }

  @Override
  public <T> @Nullable TypeAdapter<T> create(Gson gson, TypeToken<T> type) {
    return VERSIONED.contains(type.getRawType())
        ? new Adapter<>(gson.getDelegateAdapter(this, type), gson.getAdapter(JsonElement.class))
        : null;
  }

  private static final class Adapter<T> extends TypeAdapter<T> {

    private final TypeAdapter<T> plain;
    private final TypeAdapter<JsonElement> trees;

    Adapter(TypeAdapter<T> plain, TypeAdapter<JsonElement> trees) {
      this.plain = plain;
      this.trees = trees;
    }

    @Override
    public T read(JsonReader in) throws IOException {
      return plain.read(in);
    }

    @Override
    public void write(JsonWriter out, T value) throws IOException {
      JsonElement tree = withoutNulls(plain.toJsonTree(value));
      if (tree instanceof JsonObject object && !object.has(VERSION)) {
        object.add(VERSION, JsonNull.INSTANCE);
      }
      boolean before = out.getSerializeNulls();
      out.setSerializeNulls(true);
      trees.write(out, tree);
      out.setSerializeNulls(before);
    }

    /** A tree holds what is not set as well, which no other part of the protocol wants to see. */
    private static JsonElement withoutNulls(JsonElement tree) {
      if (tree instanceof JsonObject object) {
        object.entrySet().removeIf(entry -> entry.getValue().isJsonNull());
        object.entrySet().forEach(entry -> withoutNulls(entry.getValue()));
      } else if (tree instanceof JsonArray array) {
        array.forEach(Adapter::withoutNulls);
      }
      return tree;
    }
  }
}
