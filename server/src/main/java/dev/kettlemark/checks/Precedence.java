package dev.kettlemark.checks;

import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.library.Question;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Product;
import dev.kettlemark.model.Sheet;
import dev.kettlemark.model.Trial;
import dev.kettlemark.model.Variant;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.text.Source;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BinaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Which findings are left out where another one tells their cause, or the same more exactly.
 *
 * <p>Rules are blind to each other, so one slip may be seen by several of them. Whoever made it wants to
 * hear of it once. A finding is left out only where one that is told instead is as grave, and not
 * accepted; once that is mended, it comes back by itself if there is still a reason for it.
 */
final class Precedence {

  /** How near a finding must be to the one that is told instead. */
  enum Reach {
    LINE,
    STAGE,
    SECTION,
    /** Of the formula that a variant, a product, a trial or a sheet goes back to. */
    ORIGIN
  }

  /**
   * One order of precedence.
   *
   * @param told the rules that are told
   * @param silent the rules that are not told beside them
   */
  record Order(Reach reach, Set<String> told, Set<String> silent) {}

  /** A fact that cannot be read leaves amounts and steps as they are. */
  private static final String UNREADABLE = "unreadable-text";

  /** With these, nobody knows what a formula is made of, or how much of it. */
  private static final Set<String> BROKEN = Set.of(
      "unreadable-text",
      "missing-unit",
      "comma-in-number",
      "impossible-dose",
      "two-sufficient",
      "negative-rest",
      "unknown-basis",
      "circular-basis",
      "unweighed-object",
      "unknown-stage",
      "stage-before-made",
      "taken-twice",
      "unused-stage",
      "untaken-stage",
      "unknown-ingredient",
      "circular-formula",
      "change-without-target");

  /** With these, a line of a formula is not as it should be, and its figures follow that line. */
  private static final Set<String> MISTAKEN = Set.of(
      "total-off",
      "unused-amount",
      "mixed-units",
      "gum-of-charge",
      "split-basis-member",
      "counted-twice",
      "syrup-into-unwhipped-foam",
      "fat-in-foam",
      "hydration-in-syrup",
      "early-acid",
      "boiled-foam",
      "reheated-foam",
      "burning-syrup",
      "below-boiling",
      "already-concentrated",
      "stage-name-mismatch",
      "contradicting-solids",
      "altitude-not-said",
      "browned-fructose",
      "scorched-milk",
      "hot-second-syrup",
      "undissolved-sugar",
      "long-boil",
      "too-little-doctor",
      "too-much-doctor",
      "moisture-off",
      "texture-mismatch",
      "thin-pectin-mass",
      "foam-liquid-off",
      "foam-powder-water",
      "fat-jump",
      "over-usual-dose",
      "agent-overdose",
      "weight-for-weight",
      "density-out-of-kind",
      "overrun-against-density");

  /**
   * What is judged by the figures of the whole.
   *
   * <p>No rule about safety is among them: whoever may get hurt is told beside whatever else is wrong.
   */
  private static final Set<String> WHOLE = Set.of(
      "expectation-off",
      "moisture-off",
      "texture-mismatch",
      "too-little-doctor",
      "too-much-doctor",
      "no-grain",
      "thin-pectin-mass",
      "acidless-pectin",
      "foam-liquid-off",
      "foam-powder-water",
      "undissolved-sugar",
      "long-boil",
      "already-concentrated",
      "contradicting-solids",
      "bowl-overflow",
      "overfull-bowl",
      "whisk-out-of-reach",
      "scaled-boil",
      "spirit-on-gel",
      "raw-nut-in-cool-mass",
      "low-syrup-first",
      "off-speed-stream",
      "agent-too-cold",
      "unboiled-agent",
      "lumping-gum",
      "fat-in-foam",
      "syrup-into-unwhipped-foam",
      "fat-jump",
      "less-sweet-than-claimed",
      "too-few-grams",
      "charge-taken-for-finished",
      "water-between-layers",
      "damp-storage",
      "overfilled-cavity",
      "half-filled-cavity",
      "cut-off-weight");

  /** What a trial tells against its formula. */
  private static final Set<String> MEASURED = Set.of(
      "weight-off-prediction",
      "impossible-weight",
      "cook-out-of-tolerance",
      "thermometer-against-weight",
      "water-activity-off",
      "density-against-overrun");

  static final List<Order> ORDERS = List.of(
      // The same amount.
      line(
          "impossible-dose",
          "over-usual-dose",
          "agent-overdose",
          "gum-of-charge",
          "above-scale",
          "below-scale",
          "missing-caution"),
      section("impossible-dose", "pan-boils-over"),
      order(
          Reach.LINE,
          Set.of(
              "missing-unit",
              "spooned-gum",
              "ambiguous-ounce",
              "syrup-by-volume",
              "broken-count",
              "unknown-ingredient"),
          Set.of("mixed-units")),
      line("foam-powder-water", "foam-liquid-off"),
      line("fat-in-foam", "fat-jump"),
      line("gelatine-without-bloom", "missing-grade"),
      order(
          Reach.SECTION,
          Set.of("agent-overdose", "weight-for-weight"),
          Set.of("lumping-gum", "foam-liquid-off", "foam-powder-water", "gelling-agents-together")),
      line("missing-unit", "unreadable-text", "unknown-ingredient"),
      section("solids-taken-for-dextrose", "missing-grade"),
      // The same cook.
      order(
          Reach.LINE,
          Set.of("burning-syrup", "below-boiling", "missing-scale"),
          Set.of("tolerance-below-probe")),
      line("browned-fructose", "hot-second-syrup"),
      line("hot-second-syrup", "browned-fructose"),
      line("scorched-milk", "browned-fructose"),
      // The same stage.
      stage("unreadable-text", "unweighed-object", "unused-amount"),
      stage("unknown-ingredient", "unweighed-object", "unused-amount"),
      stage("circular-formula", "unweighed-object", "unused-amount"),
      stage("unweighed-object", "unused-amount"),
      stage("overfull-bowl", "bowl-overflow"),
      stage("bowl-overflow", "overfull-bowl"),
      stage("boiled-foam", "boiled-aroma"),
      order(
          Reach.SECTION,
          Set.of("unreadable-text", "unknown-stage", "stage-before-made"),
          Set.of("unused-stage", "untaken-stage", "taken-twice")),
      section("unreadable-text", "total-off", "missing-percent-basis"),
      section("untaken-stage", "unused-stage"),
      section("unknown-state", "syrup-into-unwhipped-foam"),
      section("syrup-into-unwhipped-foam", "fat-in-foam"),
      // The same piece, the same claim, the same acceptance.
      line("claim-in-shared-kitchen", "shared-bowl"),
      line("cut-off-weight", "cutting-waste"),
      line("charge-taken-for-finished", "too-few-grams"),
      section("change-without-target", "claim-not-true", "claim-not-known", "missing-caution"),
      section("claim-not-true", "animal-name-on-vegan", "shared-bowl", "claim-in-shared-kitchen"),
      line("unfilled-reason", "idle-acceptance"),
      // The whole, and what follows from it.
      order(Reach.SECTION, BROKEN, WHOLE),
      section("moisture-off", "texture-mismatch"),
      order(Reach.SECTION, MISTAKEN, Set.of("expectation-off")),
      order(Reach.ORIGIN, BROKEN, WHOLE),
      order(Reach.ORIGIN, BROKEN, MEASURED),
      order(Reach.ORIGIN, MISTAKEN, MEASURED));

  private Precedence() {}

  private static Order order(Reach reach, Set<String> told, Set<String> silent) {
    return new Order(
        reach,
        told,
        silent.stream().filter(id -> !told.contains(id)).collect(Collectors.toUnmodifiableSet()));
  }

  private static Order line(String told, String... silent) {
    return order(Reach.LINE, Set.of(told), Set.of(silent));
  }

  private static Order stage(String told, String... silent) {
    return order(Reach.STAGE, Set.of(told), Set.of(silent));
  }

  private static Order section(String told, String... silent) {
    return order(Reach.SECTION, Set.of(told), Set.of(silent));
  }

  /** The findings of a section that are told, in the order given. */
  static List<Finding> settled(Subject subject, List<Finding> findings) {
    if (findings.isEmpty()) {
      return findings;
    }
    List<Finding> left = new ArrayList<>(findings);
    Places places = new Places(subject);
    Set<String> origin = graveAtOrigin(subject);
    for (Order order : ORDERS) {
      if (left.stream().noneMatch(finding -> isSilent(order, finding))) {
        continue;
      }
      if (order.reach() == Reach.ORIGIN) {
        left.removeIf(finding ->
            isSilent(order, finding) && order.told().stream().anyMatch(origin::contains));
      } else {
        Map<Long, Severity> told = told(order, left, places);
        left.removeIf(finding -> isSilent(order, finding) && isTold(order, finding, told, places));
      }
    }
    return List.copyOf(left);
  }

  private static boolean isSilent(Order order, Finding finding) {
    return !finding.isAccepted() && order.silent().contains(finding.rule().id());
  }

  /** How grave the gravest is that an order tells, by place. */
  private static Map<Long, Severity> told(Order order, List<Finding> findings, Places places) {
    Map<Long, Severity> gravest = new HashMap<>();
    for (Finding finding : findings) {
      if (!finding.isAccepted() && order.told().contains(finding.rule().id())) {
        places
            .whereItTells(order.reach(), finding)
            .ifPresent(place -> gravest.merge(
                place, finding.severity(), BinaryOperator.minBy(Comparator.naturalOrder())));
      }
    }
    return gravest;
  }

  private static boolean isTold(
      Order order, Finding finding, Map<Long, Severity> told, Places places) {
    Severity gravest = told.get(places.of(order.reach(), finding));
    return gravest != null && gravest.compareTo(finding.severity()) <= 0;
  }

  /** The rules that tell an error or a warning of what a section goes back to. */
  private static Set<String> graveAtOrigin(Subject subject) {
    Set<String> grave = new HashSet<>();
    origins(subject).forEach(entry -> grave.addAll(subject.ask(new GraveIn(entry))));
    return grave;
  }

  /** The sections that a section goes back to; a circle leads nowhere. */
  private static Stream<Entry> origins(Subject subject) {
    Stream<String> names = subject.declaration().stream().flatMap(declaration -> {
      if (declaration instanceof Variant) {
        return Rules.sound(subject).flatMap(Variant::parent).stream().map(Located::value);
      } else if (declaration instanceof Product product) {
        return product.parts().stream()
            .flatMap(part -> part.material().stream())
            .map(Located::value);
      } else if (declaration instanceof Trial trial) {
        return trial.formula().stream().map(Located::value);
      } else if (declaration instanceof Sheet sheet) {
        return sheet.subject().stream().map(Located::value);
      }
      return Stream.empty();
    });
    return names
        .distinct()
        .flatMap(name -> subject
            .ask(Lookup.of(Kind.MATERIAL, name))
            .or(() -> subject.declaration().filter(Sheet.class::isInstance).isPresent()
                ? subject.ask(Lookup.of(Kind.PRODUCT, name))
                : Optional.empty())
            .stream());
  }

  /** Where findings stand in their section. */
  private record Places(Source source, List<Integer> stages, boolean isVariant) {

    Places(Subject subject) {
      this(Source.of(subject.text()), headings(subject), subject.variant().isPresent());
    }

    private static List<Integer> headings(Subject subject) {
      return subject.section().lines().stream()
          .filter(line -> line instanceof Line.SectionLine)
          .map(line -> line.span().start())
          .toList();
    }

    /** The line or the stage of a finding by its number, or the section. */
    long of(Reach reach, Finding finding) {
      return switch (reach) {
        case LINE -> source.lineAt(finding.span().start());
        case STAGE -> stage(finding);
        case SECTION, ORIGIN -> 0;
      };
    }

    /**
     * Where a finding silences others, if it does.
     *
     * <p>What a variant takes over stands in its heading, wherever it comes from: it is not together with
     * anything there.
     */
    Optional<Long> whereItTells(Reach reach, Finding finding) {
      long place = of(reach, finding);
      boolean tells = switch (reach) {
        case LINE -> place > 0 || !isVariant;
        case STAGE -> place > 1;
        case SECTION -> !finding.rule().id().equals(UNREADABLE) || stage(finding) > 1;
        case ORIGIN -> false;
      };
      return tells ? Optional.of(place) : Optional.empty();
    }

    private long stage(Finding finding) {
      return stages.stream().filter(start -> start <= finding.span().start()).count();
    }
  }

  private record GraveIn(Entry entry) implements Question<Set<String>> {
    @Override
    public Set<String> ask(Snapshot snapshot) {
      return Rules.judged(snapshot, entry).shown().stream()
          .filter(finding -> finding.severity().compareTo(Severity.WARNING) <= 0)
          .map(finding -> finding.rule().id())
          .collect(Collectors.toUnmodifiableSet());
    }
  }
}
