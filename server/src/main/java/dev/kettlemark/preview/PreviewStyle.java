package dev.kettlemark.preview;

import dev.kettlemark.pictures.Picture;
import dev.kettlemark.sheets.SheetHtml;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;

/** How a preview looks; it says nothing of what stands around it on the page. */
final class PreviewStyle {

  private static final String COLOURS = read();

  private PreviewStyle() {}

  static String ofSheet() {
    return COLOURS + ".kettlemark-preview {\n" + SheetHtml.style() + "}\n";
  }

  /** Every style of a picture names the picture, so that many stand side by side. */
  static String of(List<Picture> pictures) {
    return ofSheet() + pictures.stream().map(Picture::style).collect(Collectors.joining());
  }

  private static String read() {
    String path = "/dev/kettlemark/preview/preview.css";
    try (InputStream in = PreviewStyle.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new IllegalStateException(path + " is not in the program");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
