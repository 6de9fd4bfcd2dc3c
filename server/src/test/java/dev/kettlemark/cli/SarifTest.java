package dev.kettlemark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import dev.kettlemark.Pinned;
import dev.kettlemark.checks.Rules;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Held against the JSON schema of the OASIS standard SARIF 2.1.0 by an independent validator. */
class SarifTest {

  private static final JsonSchema SCHEMA = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V4)
      .getSchema(Pinned.resource("cli/sarif-2.1.0-rtm.5.json").text());

  @TempDir
  private Path folder;

  private static Set<ValidationMessage> faults(String json) {
    return SCHEMA.validate(json, InputFormat.JSON);
  }

  @Test
  void isValidForTheWholeGalleryOfMistakes() {
    Run run = Run.of("check", "--format", "sarif", "../samples/mistakes");
    assertEquals(Set.of(), faults(run.out()));
    JsonArray results = onlyRun(run).getAsJsonArray("results");
    assertTrue(results.size() > 10, "the gallery holds more mistakes than that");
  }

  @Test
  void isValidWhereNothingIsFoundAndWhereSomethingIsUnreadable() throws IOException {
    Bench.write(folder, "a.kettle", Bench.CLEAN);
    assertEquals(
        Set.of(), faults(Run.of("check", "-f", "sarif", folder.toString()).out()));
    Files.write(folder.resolve("b.kettle"), new byte[] {(byte) 0xff});
    Run run = Run.of("check", "-f", "sarif", folder.toString());
    assertEquals(Set.of(), faults(run.out()));
    JsonObject invocation = onlyRun(run).getAsJsonArray("invocations").get(0).getAsJsonObject();
    assertFalse(invocation.get("executionSuccessful").getAsBoolean());
  }

  @Test
  void theValidatorSeesAWrongLog() {
    assertFalse(faults("{\"version\": \"2.1.0\", \"runs\": [{\"tool\": {}}]}").isEmpty());
  }

  @Test
  void describesEveryRuleWithItsPage() {
    Bench.write(folder, "a.kettle", Bench.CLEAN);
    Run run = Run.of("check", "-f", "sarif", folder.toString());
    JsonArray rules =
        onlyRun(run).getAsJsonObject("tool").getAsJsonObject("driver").getAsJsonArray("rules");
    assertEquals(Rules.all().size(), rules.size());
    rules.forEach(rule -> assertTrue(rule.getAsJsonObject().has("help"), rule::toString));
  }

  /** Suppressions: SARIF 2.1.0, sections 3.27.23 and 3.35. */
  @Test
  void suppressesWhatIsAcceptedButNotWhatIsAMatterOfSafety() {
    Bench.write(folder, "a.kettle", """
        formula black-caramel
          percent of charge
          caution hot-sugar
          accept total-off "as in the old book"
        stage pan
          99 % white-sugar
          cook to 200 °C
          accept burning-syrup "smoked on purpose"
        """);
    Run run = Run.of("check", "-f", "sarif", folder.toString());
    assertEquals(Set.of(), faults(run.out()));
    int suppressed = 0;
    boolean safety = false;
    for (var one : onlyRun(run).getAsJsonArray("results")) {
      JsonObject result = one.getAsJsonObject();
      boolean isSafety = result.get("ruleId").getAsString().equals("burning-syrup");
      if (isSafety) {
        safety = true;
        assertEquals("note", result.get("level").getAsString());
        assertFalse(result.has("suppressions"));
        assertTrue(result.toString().contains("accepted: smoked on purpose"));
      } else if (result.has("suppressions")) {
        suppressed++;
        JsonObject suppression = result.getAsJsonArray("suppressions").get(0).getAsJsonObject();
        assertEquals("inSource", suppression.get("kind").getAsString());
        assertEquals("as in the old book", suppression.get("justification").getAsString());
      }
    }
    assertTrue(safety);
    assertEquals(1, suppressed);
  }

  /** Columns count UTF-16 units from 1: SARIF 2.1.0, sections 3.14.17 and 3.30.6. */
  @Test
  void countsColumnsInUtf16() {
    Bench.write(folder, "a.kettle", "formula a\nstage b\n  1.00 %  \"\uD83C\uDF6F\"  $\n");
    JsonArray results =
        onlyRun(Run.of("check", "-f", "sarif", folder.toString())).getAsJsonArray("results");
    boolean found = false;
    for (var result : results) {
      JsonObject region = result
          .getAsJsonObject()
          .getAsJsonArray("locations")
          .get(0)
          .getAsJsonObject()
          .getAsJsonObject("physicalLocation")
          .getAsJsonObject("region");
      found |=
          region.get("startLine").getAsInt() == 3 && region.get("startColumn").getAsInt() == 17;
    }
    assertTrue(found, results::toString);
  }

  private static JsonObject onlyRun(Run run) {
    return JsonParser.parseString(run.out())
        .getAsJsonObject()
        .getAsJsonArray("runs")
        .get(0)
        .getAsJsonObject();
  }
}
