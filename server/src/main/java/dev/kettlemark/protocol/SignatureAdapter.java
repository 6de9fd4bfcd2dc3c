package dev.kettlemark.protocol;

import dev.kettlemark.features.Signatures;
import java.util.List;
import java.util.Optional;
import org.eclipse.lsp4j.MarkupContent;
import org.eclipse.lsp4j.MarkupKind;
import org.eclipse.lsp4j.ParameterInformation;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.SignatureHelp;
import org.eclipse.lsp4j.SignatureInformation;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.jsonrpc.messages.Tuple;

/** What a step or a fact takes. */
final class SignatureAdapter {

  private SignatureAdapter() {}

  static Optional<SignatureHelp> help(Scene scene, Position position) {
    return Signatures.at(scene.document(), scene.offset(position)).map(help -> {
      Signatures.Signature active = help.signatures().get(help.active());
      return new SignatureHelp(
          help.signatures().stream().map(one -> signature(scene, one)).toList(),
          help.active(),
          number(active));
    });
  }

  /** A number behind all parts marks none of them. */
  private static int number(Signatures.Signature signature) {
    return signature.active().orElse(signature.parameters().size());
  }

  private static SignatureInformation signature(Scene scene, Signatures.Signature one) {
    List<ParameterInformation> parameters = one.parameters().stream()
        .map(part -> parameter(scene, one.label(), part))
        .toList();
    SignatureInformation information = new SignatureInformation(
        one.label(), new MarkupContent(MarkupKind.MARKDOWN, one.documentation()), parameters);
    information.setActiveParameter(number(one));
    return information;
  }

  private static ParameterInformation parameter(
      Scene scene, String label, Signatures.Parameter part) {
    ParameterInformation information = new ParameterInformation();
    information.setLabel(
        scene.traits().language().readsLabelOffsets()
            ? Either.forRight(Tuple.two(part.start(), part.end()))
            : Either.forLeft(label.substring(part.start(), part.end())));
    if (!part.documentation().isEmpty()) {
      information.setDocumentation(part.documentation());
    }
    return information;
  }
}
