package dev.kettlemark.workbench;

import dev.kettlemark.Today;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/** A workbench on a folder, and a browser that has been let in. */
final class Visit implements AutoCloseable {

  final Workbench workbench;
  final String cookie;

  private Visit(Workbench workbench, String cookie) {
    this.workbench = workbench;
    this.cookie = cookie;
  }

  static Visit of(Path folder) throws IOException {
    Workbench workbench = Workbench.open(folder, 0, "test", () -> Today.DAY);
    String address = workbench.address();
    String target = address.substring(address.indexOf("/?"));
    try (Wire wire = new Wire(workbench.port())) {
      wire.send("GET " + target + " HTTP/1.1\r\nHost: 127.0.0.1:" + workbench.port() + "\r\n\r\n");
      String set = wire.reply().header("set-cookie");
      return new Visit(workbench, set.substring(0, set.indexOf(';')));
    }
  }

  String host() {
    return "127.0.0.1:" + workbench.port();
  }

  String origin() {
    return "http://" + host();
  }

  Wire wire() throws IOException {
    return new Wire(workbench.port());
  }

  /** What the page's own request gets; fields may be given anew, or taken out by an empty value. */
  Wire.Reply ask(String method, String target, String body, String... fields) throws IOException {
    Map<String, String> all = new LinkedHashMap<>();
    all.put("Host", host());
    all.put("Cookie", cookie);
    all.put("Sec-Fetch-Site", "same-origin");
    if (!method.equals("GET")) {
      all.put("Origin", origin());
      all.put("Content-Type", "text/plain;charset=utf-8");
      all.put("Content-Length", "" + body.getBytes(StandardCharsets.UTF_8).length);
    }
    for (int i = 0; i < fields.length; i += 2) {
      all.put(fields[i], fields[i + 1]);
    }
    StringBuilder request = new StringBuilder(method + " " + target + " HTTP/1.1\r\n");
    all.forEach((name, value) -> {
      if (!value.isEmpty()) {
        request.append(name + ": " + value + "\r\n");
      }
    });
    try (Wire wire = wire()) {
      return wire.send(request + "\r\n" + body).reply();
    }
  }

  Wire.Reply get(String target, String... fields) throws IOException {
    return ask("GET", target, "", fields);
  }

  @Override
  public void close() {
    workbench.close();
  }
}
