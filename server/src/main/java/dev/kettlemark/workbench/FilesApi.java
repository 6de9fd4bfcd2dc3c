package dev.kettlemark.workbench;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import dev.kettlemark.files.TextFile;
import dev.kettlemark.workbench.KettleStore.Held;
import dev.kettlemark.workbench.KettleStore.Written;
import dev.kettlemark.workbench.http.Answer;
import dev.kettlemark.workbench.http.Connection;
import dev.kettlemark.workbench.http.Refused;
import dev.kettlemark.workbench.http.RequestHead;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Formula files over HTTP, with the conditions of RFC 9110, section 13.
 *
 * <p>{@code GET /api/files} lists them. {@code /api/file?path=…} is one: {@code GET} reads it, {@code PUT} with
 * {@code If-Match} saves it, {@code PUT} with {@code If-None-Match: *} makes a new one. A condition that does not hold
 * is answered with 409 and with both texts, so that nothing is lost.
 */
final class FilesApi {

  private static final Pattern TAG = Pattern.compile("\"([0-9a-f]{1,64})\"");

  private final KettleStore store;

  FilesApi(KettleStore store) {
    this.store = store;
  }

  Answer list() {
    JsonObject json = new JsonObject();
    Path name = store.folder().getFileName();
    json.addProperty("folder", name == null ? "/" : name.toString());
    json.addProperty("root", store.folder().toUri().toString());
    JsonArray files = new JsonArray();
    store.list().forEach(listed -> {
      JsonObject file = new JsonObject();
      file.addProperty("path", listed.path());
      file.addProperty("uri", store.folder().resolve(listed.path()).toUri().toString());
      file.addProperty("tag", listed.tag());
      files.add(file);
    });
    json.add("files", files);
    return Answer.json(200, json.toString());
  }

  Answer one(RequestHead head, Connection connection) throws Refused, IOException {
    String path = Optional.ofNullable(head.query().get("path"))
        .orElseThrow(() -> new Refused(400, "the query names no path"));
    try {
      return head.method().equals("PUT")
          ? put(path, head, connection)
          : held(200, path, store.read(path));
    } catch (CharacterCodingException other) {
      throw new Refused(415, path + " is not UTF-8 text");
    }
  }

  private Answer put(String path, RequestHead head, Connection connection)
      throws Refused, IOException {
    if (!head.field("content-type").orElse("").equals("text/plain;charset=utf-8")) {
      throw new Refused(415, "a text is sent as text/plain;charset=utf-8");
    }
    if (head.field("content-length").isEmpty()) {
      throw new Refused(411, "a text is sent with its length");
    }
    Optional<String> seen = head.field("if-match");
    boolean fresh = head.field("if-none-match").orElse("").equals("*");
    if (seen.isPresent() == fresh) {
      throw new Refused(428, "a text is saved over what was seen, or as a new one");
    }
    String text = text(connection.body(head, KettleStore.LARGEST));
    try {
      Written written =
          fresh ? store.create(path, text) : store.save(path, tag(seen.orElse("")), text);
      return written.written()
          ? held(fresh ? 201 : 200, path, new Held("", written.held().tag()))
          : conflict(path, written.held(), text);
    } catch (Refused | CharacterCodingException own) {
      throw own;
    } catch (IOException failure) {
      throw new Refused(403, "cannot save " + path + ": " + TextFile.why(failure));
    }
  }

  private static String tag(String ifMatch) throws Refused {
    Matcher tag = TAG.matcher(ifMatch);
    if (!tag.matches()) {
      throw new Refused(400, "the tag is malformed");
    }
    return tag.group(1);
  }

  private static String text(byte[] body) throws Refused {
    try {
      return TextFile.decoded(body);
    } catch (CharacterCodingException malformed) {
      throw new Refused(400, "the text is not UTF-8");
    }
  }

  private static Answer conflict(String path, Held held, String sent) {
    JsonObject json = json(path, held);
    json.addProperty("sent", sent);
    return Answer.json(409, json.toString());
  }

  private static Answer held(int status, String path, Held held) {
    return Answer.json(status, json(path, held).toString()).with("ETag", "\"" + held.tag() + "\"");
  }

  private static JsonObject json(String path, Held held) {
    JsonObject json = new JsonObject();
    json.addProperty("path", path);
    json.addProperty("tag", held.tag());
    json.addProperty("text", held.text());
    return json;
  }
}
