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
import org.jspecify.annotations.Nullable;

/**
 * A part of an answer that remembers the form in which it was sent.
 *
 * <p>The protocol sends all findings of a document at each key, and its whole outline soon after, and all but a few
 * parts are those of the key before. Once sent none of them is changed.
 */
interface Resent {

  Form form();

  /** The form in which something was sent, once it has been. */
  final class Form {

    private volatile @Nullable String json;
  }

  static void register(GsonBuilder builder) {
    builder.registerTypeAdapterFactory(new Factory());
  }

  /** Makes an adapter of that of the protocol's own type, which each of them extends. */
  final class Factory implements TypeAdapterFactory {

    private Factory() {}

    @Override
    @SuppressWarnings("unchecked") // What is written is of the type that is extended.
    public <T> @Nullable TypeAdapter<T> create(Gson gson, TypeToken<T> type) {
      if (!Resent.class.isAssignableFrom(type.getRawType())) {
        return null;
      }
      TypeToken<?> own = TypeToken.get(type.getRawType().getGenericSuperclass());
      return new Adapter<>(gson, (TypeAdapter<T>) gson.getDelegateAdapter(this, own));
    }
  }

  /** Writes the remembered form. */
  final class Adapter<T> extends TypeAdapter<T> {

    private final Gson gson;
    private final TypeAdapter<T> plain;

    private Adapter(Gson gson, TypeAdapter<T> plain) {
      this.gson = gson;
      this.plain = plain;
    }

    @Override
    public void write(JsonWriter out, T value) throws IOException {
      if (out.getClass() != JsonWriter.class) {
        // One that builds a tree takes no text.
        plain.write(out, value);
        return;
      }
      Form form = ((Resent) value).form();
      String sent = form.json;
      if (sent == null) {
        StringWriter text = new StringWriter();
        plain.write(gson.newJsonWriter(text), value);
        sent = text.toString();
        form.json = sent;
      }
      out.jsonValue(sent);
    }

    @Override
    public T read(JsonReader in) {
      throw new UnsupportedOperationException("only the server sends these");
    }
  }
}
