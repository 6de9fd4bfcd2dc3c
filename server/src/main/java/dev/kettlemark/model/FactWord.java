package dev.kettlemark.model;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** The fact words of each section. */
public final class FactWord {

  public static final Set<String> HOUSE = words(FactForms.HOUSE);

  /** Facts of a house that name a tool. */
  public static final Set<String> TOOL =
      Set.of("scale", "thermometer", "bowl", "pan", "mould", "frame", "tool");

  public static final Set<String> INGREDIENT = words(FactForms.INGREDIENT);

  public static final Set<String> FORMULA = words(FactForms.FORMULA);

  /** Facts that may also stand among the steps of a stage. */
  public static final Set<String> STAGE = Set.of("note", "accept", "names");

  public static final Set<String> VARIANT_CHANGE = words(FactForms.VARIANT_CHANGE);

  public static final Set<String> PRODUCT = words(FactForms.PRODUCT);

  public static final Set<String> PRODUCT_PART =
      Set.of("centre", "layer", "coat", "filling", "wafer");

  public static final Set<String> TRIAL = words(FactForms.TRIAL);

  public static final Set<String> SHEET = words(FactForms.SHEET);

  private FactWord() {}

  private static Set<String> words(List<Form> forms) {
    return forms.stream().map(Form::word).collect(Collectors.toUnmodifiableSet());
  }
}
