package dev.kettlemark.protocol;

import com.google.gson.JsonObject;
import dev.kettlemark.library.Entry;
import dev.kettlemark.preview.Anchor;
import dev.kettlemark.preview.Preview;
import dev.kettlemark.preview.PreviewRequest;
import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.lsp4j.Position;
import org.jspecify.annotations.Nullable;

/**
 * The command that answers with what is shown beside a text: {@code view} is the sheet or a picture, of {@code
 * name} or of what stands at {@code position}.
 *
 * <p>Whatever the text says, there is an answer; only a view or a reader that does not exist is refused.
 */
final class PreviewCommand {

  static final String NAME = "kettlemark.preview";

  /**
   * A line of a text and the element that tells it.
   *
   * @param uri the document; absent for the one that was asked about
   */
  record LineAnchor(int line, String id, @Nullable String uri) {}

  /**
   * The answer.
   *
   * @param version of the text that was looked at; absent where no editor holds it
   * @param first the first line of the section that a position speaks of
   * @param last its last line
   */
  record Answer(
      String name,
      String title,
      String view,
      @Nullable String reader,
      @Nullable String locale,
      @Nullable Integer version,
      @Nullable Integer first,
      @Nullable Integer last,
      String html,
      String style,
      List<LineAnchor> anchors) {}

  private PreviewCommand() {}

  static Object run(Optional<Scene> scene, JsonObject argument, Work work) {
    PreviewRequest request = PreviewRequest.of(
            Commands.text(argument, "view"),
            Commands.optionalText(argument, "reader"),
            Commands.optionalText(argument, "locale"))
        .orElseThrow(() -> ScaleCommand.refused("there is no such view, or no such reader"));
    if (scene.isEmpty()) {
      return answer(Preview.ofNothing(request), Optional.empty(), Optional.empty());
    }
    Scene at = scene.get();
    Entry entry =
        Preview.sectionAt(at.document(), position(argument).map(at::offset).orElse(0));
    work.check();
    Preview preview = Commands.optionalText(argument, "name")
        .map(name -> Preview.named(at.snapshot(), name, request))
        .orElseGet(() -> Preview.of(at.snapshot(), entry, request));
    work.check();
    return answer(preview, scene, position(argument).map(position -> entry));
  }

  private static Optional<Position> position(JsonObject argument) {
    return argument.get("position") instanceof JsonObject at
            && at.get("line") != null
            && at.get("character") != null
        ? Optional.of(
            new Position(at.get("line").getAsInt(), at.get("character").getAsInt()))
        : Optional.empty();
  }

  private static Answer answer(Preview preview, Optional<Scene> scene, Optional<Entry> entry) {
    Optional<Span> section = entry.map(one -> one.placed().span());
    return new Answer(
        preview.name(),
        preview.title(),
        preview.request().view().word(),
        preview.request().readerWord().orElse(null),
        preview.request().tag().orElse(null),
        scene.flatMap(PreviewCommand::version).orElse(null),
        section.flatMap(span -> scene.map(s -> s.source().lineAt(span.start()))).orElse(null),
        section
            .flatMap(span ->
                scene.map(s -> s.source().lineAt(Math.max(span.start(), span.end() - 1))))
            .orElse(null),
        preview.html(),
        preview.style(),
        scene.map(at -> anchors(at, preview.anchors())).orElse(List.of()));
  }

  private static Optional<Integer> version(Scene scene) {
    return Optional.ofNullable(scene.moment().open().get(scene.document().uri()))
        .map(Moment.OpenBuffer::version);
  }

  private static List<LineAnchor> anchors(Scene scene, List<Anchor> anchors) {
    List<LineAnchor> lines = new ArrayList<>();
    for (Anchor anchor : anchors) {
      String uri = anchor.place().uri();
      boolean isOther = !uri.equals(scene.document().uri());
      scene
          .moment()
          .document(uri)
          .ifPresent(document -> lines.add(new LineAnchor(
              document.text().source().lineAt(anchor.place().span().start()),
              anchor.id(),
              isOther ? scene.moment().clientUri(uri) : null)));
    }
    return lines;
  }
}
