package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class DuplicateCodeTest {

  private final RuleFixture duplicateCode = RuleFixture.of(new DuplicateCode());

  @Test
  void marksBothPlacesOfACode() {
    duplicateCode.check("""
        formula one
          code    KP-001
                  ^^^^^^ duplicate-code: code `KP-001` also stands on `two`

        product two
          code    KP-001
                  ^^^^^^ duplicate-code: code `KP-001` also stands on `one`
        """);
  }

  @Test
  void countsThemWhereThereAreMany() {
    StringBuilder text = new StringBuilder("""
        formula one
          code    KP-001
                  ^^^^^^ duplicate-code: code `KP-001` also stands on `copy-1` and 98 more
        """);
    for (int copy = 1; copy < 100; copy++) {
      text.append("--- %d.kettle%nformula copy-%d%n  code    KP-001%n".formatted(copy, copy));
      text.append("          ^^^^^^ duplicate-code: code `KP-001` also stands on `%s` and 98 more%n"
          .formatted(copy == 1 ? "copy-10" : "copy-1"));
    }
    duplicateCode.check(text.toString());
  }

  @Test
  void looksInOtherFiles() {
    duplicateCode.check("""
        formula one
          code    KP-001
                  ^^^^^^ duplicate-code: code `KP-001` also stands on `two`
        --- other.kettle
        formula two
          code    KP-001
                  ^^^^^^ duplicate-code: code `KP-001` also stands on `one`
        """);
  }

  @Test
  void doesNotCountWhatAVariantInherits() {
    duplicateCode.check("""
        formula one
          code    KP-001

        variant two of one
          batch   100 g
        """);
  }

  @Test
  void allowsDifferentCodes() {
    duplicateCode.check("""
        formula one
          code    KP-001

        variant two of one
          code    KP-002
        """);
  }

  @Test
  void takesTheNextFreeNumber() {
    duplicateCode.checkFirstFinding("Take `KP-003`, which is free", """
        formula one
          code    KP-001

        formula two
          code    KP-001

        formula three
          code    KP-002
        """, """
        formula one
          code    KP-003

        formula two
          code    KP-001

        formula three
          code    KP-002
        """);
  }
}
