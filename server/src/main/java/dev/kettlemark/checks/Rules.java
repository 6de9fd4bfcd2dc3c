package dev.kettlemark.checks;

import dev.kettlemark.analysis.Uses;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.library.Question;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.library.Task;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Variant;
import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** All rules, in the order of the documentation, and how they run. */
public final class Rules {

  private static final List<Rule> ALL = List.of(
      new UnreadableText(),
      new MissingUnit(),
      new MissingScale(),
      new MissingTimeUnit(),
      new CommaInNumber(),
      new BarePoint(),
      new SpoonedGum(),
      new MixedUnits(),
      new AmbiguousOunce(),
      new SyrupByVolume(),
      new ImpossibleDose(),
      new UnreachableDigits(),
      new GelatineWithoutBloom(),
      new SolidsTakenForDextrose(),
      new ToleranceBelowProbe(),
      new TotalOff(),
      new TwoSufficient(),
      new NegativeRest(),
      new UnknownBasis(),
      new SplitBasisMember(),
      new CircularBasis(),
      new MissingPercentBasis(),
      new GumOfCharge(),
      new CoatWithoutBasis(),
      new TotalJustOff(),
      new StaleSubtotal(),
      new CountedTwice(),
      new MaterialTotalOff(),
      new UnusedAmount(),
      new UnweighedObject(),
      new UnknownStage(),
      new StageBeforeMade(),
      new TakenTwice(),
      new UnusedStage(),
      new UntakenStage(),
      new SyrupIntoUnwhippedFoam(),
      new FatInFoam(),
      new LumpingGum(),
      new HydrationInSyrup(),
      new EarlyAcid(),
      new LowSyrupFirst(),
      new OffSpeedStream(),
      new WaitingSyrup(),
      new OverWhippedFoam(),
      new BoiledFoam(),
      new BoiledAroma(),
      new UndissolvedCook(),
      new ColdInclusions(),
      new FastFold(),
      new FoamLeftStanding(),
      new DepositBelowSetting(),
      new CutBeforeSet(),
      new ReheatedFoam(),
      new UntemperedCoat(),
      new CentreOffTemperature(),
      new BurningSyrup(),
      new BelowBoiling(),
      new AlreadyConcentrated(),
      new StageNameMismatch(),
      new ContradictingSolids(),
      new AltitudeNotSaid(),
      new BrownedFructose(),
      new ScorchedMilk(),
      new HotSecondSyrup(),
      new UndissolvedSugar(),
      new LongBoil(),
      new WrongTemper(),
      new LostTemper(),
      new LongHotHold(),
      new MismatchedConversion(),
      new UncountedInversion(),
      new ImpossibleRoom(),
      new OverheatedWaterBath(),
      new TooLittleDoctor(),
      new TooMuchDoctor(),
      new MoistureOff(),
      new TextureMismatch(),
      new NoGrain(),
      new SpoilingOnShelf(),
      new PerishableInRoom(),
      new WaterBetweenLayers(),
      new DampStorage(),
      new FoamLiquidOff(),
      new FatJump(),
      new LessSweetThanClaimed(),
      new OverUsualDose(),
      new ExpectationOff(),
      new AgentOverdose(),
      new GellingAgentsTogether(),
      new UnsoakedAgent(),
      new UnboiledAgent(),
      new AgentTooCold(),
      new AgentTooWarm(),
      new GelWithoutMineral(),
      new AcidlessPectin(),
      new ThinPectinMass(),
      new GelBoiledInAcid(),
      new AcidityNotStood(),
      new RawFruitOnProtein(),
      new GumsThatGelTogether(),
      new SpiritOnGel(),
      new FoamPowderWater(),
      new WeightForWeight(),
      new UnsetFoam(),
      new BowlOverflow(),
      new WhiskOutOfReach(),
      new DensityOutOfKind(),
      new OverrunAgainstDensity(),
      new EarlyDensityCheck(),
      new OverfilledCavity(),
      new HalfFilledCavity(),
      new CutOffWeight(),
      new CuttingWaste(),
      new ChargeTakenForFinished(),
      new TooFewGrams(),
      new BelowScale(),
      new AboveScale(),
      new IdleCavities(),
      new LossTwice(),
      new CoatBasisOfSister(),
      new ShortCoatingBath(),
      new ScaledBoil(),
      new PanBoilsOver(),
      new BrokenCount(),
      new ScaledTimes(),
      new OverfullBowl(),
      new UnknownIngredient(),
      new CircularFormula(),
      new ChangeWithoutTarget(),
      new DuplicateCode(),
      new DuplicateName(),
      new UnusedIngredient(),
      new SimilarIngredients(),
      new VariantChangedSinceTrial(),
      new OverdueReview(),
      new DiscontinuedIngredient(),
      new UseWithoutSource(),
      new ConflictingDensity(),
      new ImplausibleDensity(),
      new UnknownSubject(),
      new WeightOffPrediction(),
      new ImpossibleWeight(),
      new CookOutOfTolerance(),
      new ThermometerAgainstWeight(),
      new WaterActivityOff(),
      new DensityAgainstOverrun(),
      new TrialOfOlderVersion(),
      new ReleasedWithoutTrial(),
      new MissingLot(),
      new TwoChanges(),
      new ScoreWithoutScale(),
      new MissingCaution(),
      new RawEggNotHeated(),
      new RawNutInCoolMass(),
      new PasteurisedSaidOfRaw(),
      new ClaimNotTrue(),
      new FreeFromBesideMayContain(),
      new ClaimNotKnown(),
      new ClaimInSharedKitchen(),
      new SharedBowl(),
      new LessSugarWithoutReference(),
      new AnimalNameOnVegan(),
      new TypedAllergens(),
      new AdditiveNotPermitted(),
      new MissingYield(),
      new MissingShelf(),
      new UndeclaredTool(),
      new UnknownState(),
      new ToTaste(),
      new MissingGrade(),
      new TypedIngredients(),
      new PublishedDraft(),
      new EggComparisonMissing(),
      new OutdatedSheet(),
      new CelsiusOnUsSheet(),
      new SheetWithoutTolerance(),
      new HiddenWaiting(),
      new SheetWithoutAltitude(),
      new UnevenEditions(),
      new UnknownThreshold(),
      new MismatchedThreshold(),
      new UnknownRule(),
      new UnfilledReason(),
      new LapsedAcceptance(),
      new IdleAcceptance());

  private static final Task<List<Finding>> FOUND =
      (entry, scope) -> found(new Subject(entry, scope));

  private static final Task<List<Finding>> TOLD = (entry, scope) -> told(new Subject(entry, scope));

  private static final Task<Verdict> JUDGED =
      Task.lasting((entry, scope) -> judged(new Subject(entry, scope)));

  private static final Comparator<Finding> BY_PLACE = Comparator.<Finding>comparingInt(
          finding -> finding.span().start())
      .thenComparingInt(finding -> finding.span().end())
      .thenComparing(finding -> finding.rule().id());

  private Rules() {}

  public static List<Rule> all() {
    return ALL;
  }

  /** The ids of the rules whose findings may be accepted. */
  static List<String> acceptable() {
    return ALL.stream()
        .map(Rule::info)
        .filter(RuleInfo::acceptable)
        .map(RuleInfo::id)
        .toList();
  }

  public static Optional<Rule> named(String id) {
    return ALL.stream().filter(rule -> rule.info().id().equals(id)).findFirst();
  }

  /** The findings of an entry that are to be told, in order of place. */
  public static List<Finding> of(Snapshot snapshot, Entry entry) {
    return judged(snapshot, entry).shown();
  }

  /** The findings of an entry, those that are accepted apart. */
  public static Verdict judged(Snapshot snapshot, Entry entry) {
    return snapshot.result(JUDGED, entry);
  }

  private static List<Finding> found(Subject subject) {
    List<Finding> findings = new ArrayList<>();
    boolean isReadOnly = subject.excess().isPresent();
    HouseLimits limits = new HouseLimits(subject);
    for (Rule rule : ALL) {
      if (isReadOnly ? rule.isAboutReading() : !rule.isAboutAcceptances()) {
        findings.addAll(limits.check(rule));
      }
    }
    findings.sort(BY_PLACE);
    return List.copyOf(findings);
  }

  private static Verdict judged(Subject subject) {
    List<Finding> findings = new ArrayList<>(subject.found());
    for (Rule rule : ALL) {
      if (rule.isAboutAcceptances()) {
        findings.addAll(rule.check(subject));
      }
    }
    findings.sort(BY_PLACE);
    return Verdict.of(subject, findings);
  }

  /**
   * What is found in a section and not in the parent of a variant already.
   *
   * <p>A variant holds its parent's lines, and rules look at them anew, since a change elsewhere can
   * make a mistake of them. They are placed in the variant's heading; what is told there in the words
   * in which the parent is told it is the parent's own.
   */
  private static List<Finding> told(Subject subject) {
    List<Finding> found = subject.ask(Question.of(FOUND, subject.entry()));
    Optional<Located<String>> parent = sound(subject).flatMap(Variant::parent);
    if (parent.isEmpty()) {
      return found;
    }
    Set<String> told = subject
        .ask(Lookup.of(Kind.MATERIAL, parent.get().value()))
        .map(entry -> subject.ask(Question.of(FOUND, entry)))
        .orElse(List.of())
        .stream()
        .map(Rules::words)
        .collect(Collectors.toUnmodifiableSet());
    Span heading = subject.section().lines().get(0).span();
    return found.stream()
        .filter(finding -> !heading.contains(finding.span()) || !told.contains(words(finding)))
        .toList();
  }

  /** The variant, if it does not come from itself. */
  static Optional<Variant> sound(Subject subject) {
    return subject
        .variant()
        .filter(variant -> Uses.circle(variant, subject.scope()).isEmpty());
  }

  private static String words(Finding finding) {
    return finding.rule().id() + " " + finding.message();
  }

  /** What the rules find in a section and not in its parent already, before acceptances count. */
  static Question<List<Finding>> told(Entry entry) {
    return Question.of(TOLD, entry);
  }

  static Question<Verdict> judging(Entry entry) {
    return Question.of(JUDGED, entry);
  }
}
