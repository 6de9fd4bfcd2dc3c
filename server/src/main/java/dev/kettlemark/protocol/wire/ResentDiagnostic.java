package dev.kettlemark.protocol.wire;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.TypeAdapter;
import com.google.gson.TypeAdapterFactory;
import com.google.gson.reflect.TypeToken;
import com.google.gson.stream.JsonReader;
import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.io.StringWriter;
import org.eclipse.lsp4j.Diagnostic;
import org.jspecify.annotations.Nullable;

/**
 * A diagnostic that remembers the form in which it was sent.
 *
 * <p>The protocol sends all diagnostics of a document at each key, and all but a few are those of the key
 * before. Once sent it is not changed.
 */
public final class ResentDiagnostic extends Diagnostic {

  private transient volatile @Nullable String json;

  static void register(GsonBuilder builder) {
    builder.registerTypeAdapterFactory(new Factory());
  }

  private static final class Factory implements TypeAdapterFactory {

    @Override
    @SuppressWarnings("unchecked")
    public <T> @Nullable TypeAdapter<T> create(Gson gson, TypeToken<T> type) {
      return type.getRawType().equals(ResentDiagnostic.class)
          ? (TypeAdapter<T>)
              new Adapter(gson, gson.getDelegateAdapter(this, TypeToken.get(Diagnostic.class)))
          : null;
    }
  }

  private static final class Adapter extends TypeAdapter<ResentDiagnostic> {

    private final Gson gson;
    private final TypeAdapter<Diagnostic> plain;

    Adapter(Gson gson, TypeAdapter<Diagnostic> plain) {
      this.gson = gson;
      this.plain = plain;
    }

    @Override
    public void write(JsonWriter out, ResentDiagnostic value) throws IOException {
      if (out.getClass() != JsonWriter.class) {
        // One that builds a tree takes no text.
        plain.write(out, value);
        return;
      }
      String sent = value.json;
      if (sent == null) {
        StringWriter text = new StringWriter();
        plain.write(gson.newJsonWriter(text), value);
        sent = text.toString();
        value.json = sent;
      }
      out.jsonValue(sent);
    }

    @Override
    public ResentDiagnostic read(JsonReader in) {
      throw new UnsupportedOperationException("only the server sends these");
    }
  }
}
