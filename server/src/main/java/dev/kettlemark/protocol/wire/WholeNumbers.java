package dev.kettlemark.protocol.wire;

import com.google.gson.GsonBuilder;
import com.google.gson.JsonSyntaxException;
import com.google.gson.TypeAdapter;
import com.google.gson.stream.JsonReader;
import com.google.gson.stream.JsonToken;
import com.google.gson.stream.JsonWriter;
import java.io.IOException;

/**
 * Reads an {@code integer} of LSP 3.17, "Base Types": a whole number from -2^31 to 2^31-1.
 *
 * <p>Gson alone cuts 1.5 and 1e12 to something that fits, and takes text for a number.
 */
final class WholeNumbers extends TypeAdapter<Integer> {

  private WholeNumbers() {}

  static void register(GsonBuilder builder) {
    TypeAdapter<Integer> adapter = new WholeNumbers().nullSafe();
    builder.registerTypeAdapter(int.class, adapter).registerTypeAdapter(Integer.class, adapter);
  }

  @Override
  public Integer read(JsonReader in) throws IOException {
    if (in.peek() != JsonToken.NUMBER) {
      throw new JsonSyntaxException("not a number");
    }
    double number = in.nextDouble();
    int whole = (int) number;
    if (whole != number) {
      throw new JsonSyntaxException("not a whole number: " + number);
    }
    return whole;
  }

  @Override
  public void write(JsonWriter out, Integer value) throws IOException {
    out.value(value);
  }
}
