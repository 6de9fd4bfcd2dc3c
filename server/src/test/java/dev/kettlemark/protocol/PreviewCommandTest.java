package dev.kettlemark.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.Gson;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.stream.StreamSupport;
import org.eclipse.lsp4j.ExecuteCommandParams;
import org.eclipse.lsp4j.Position;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What an editor is shown beside a text, and what it is told of another material, over the wire. */
class PreviewCommandTest {

  private static final String SYRUP = """
      # A syrup, and a sweeter one.

      formula plain "Plain syrup"
        percent   of charge
        batch     1000 g

      stage pan
        60.00 %             white-sugar
        40.00 %             water
        boil      under lid until dissolved

      formula thick "Thick syrup"
        percent   of charge
        batch     500 g

      stage pan
        80.00 %             white-sugar
        20.00 %             water
        boil      under lid until dissolved
      """;

  private static final String DROPS = """
      product drops "Drops"
        centre    5 g plain
        pieces    20
      """;

  private static final String PANTRY = """
      ingredient moon-honey "Moon honey"
        contains  17 % water, 41 % fructose, 42 % dextrose
      """;

  @TempDir
  Path folder;

  private EditorFixture editor;
  private String syrup;
  private String drops;

  @BeforeEach
  void open() throws Exception {
    Files.writeString(folder.resolve("drops.kettle"), DROPS);
    Files.writeString(folder.resolve("pantry.kettle"), PANTRY);
    syrup = folder.resolve("syrup.kettle").toUri().toString();
    drops = folder.resolve("drops.kettle").toUri().toString();
    editor = EditorFixture.onFolder(folder);
    editor.open(syrup, SYRUP);
    editor.diagnostics(syrup);
  }

  @AfterEach
  void close() throws Exception {
    editor.close();
  }

  @Test
  void itIsOffered() {
    assertTrue(editor
        .initialized()
        .getCapabilities()
        .getExecuteCommandProvider()
        .getCommands()
        .contains("kettlemark.preview"));
  }

  @Test
  void whatStandsAtThePositionIsShown() throws Exception {
    JsonObject thick = preview(at(editor.positionOf(syrup, "80.00 %")));
    assertEquals("thick", thick.get("name").getAsString());
    assertEquals("Thick syrup", thick.get("title").getAsString());
    assertEquals("chef", thick.get("reader").getAsString());
    assertEquals("en-GB", thick.get("locale").getAsString());
    assertEquals(1, thick.get("version").getAsInt());
    assertEquals(11, thick.get("first").getAsInt());
    assertEquals(18, thick.get("last").getAsInt());
    assertEquals(List.of(15, 16, 17, 18), lines(thick).stream().distinct().toList());
    JsonObject plain = preview(at(editor.positionOf(syrup, "60.00 %")));
    assertEquals(List.of(6, 7, 8, 9), lines(plain).stream().distinct().toList());
  }

  /** By hand: 60 % and 65 % of 1000 g. */
  @Test
  void aKeyIsSeen() throws Exception {
    JsonObject before = preview(at(editor.positionOf(syrup, "60.00 %")));
    assertTrue(before.get("html").getAsString().contains("600"));
    editor.type(syrup, "60.00 %", "65.00 %");
    editor.type(syrup, "40.00 %", "35.00 %");
    JsonObject after = preview(at(editor.positionOf(syrup, "65.00 %")));
    assertEquals(3, after.get("version").getAsInt());
    assertTrue(after.get("html").getAsString().contains("650"));
    assertFalse(after.get("html").getAsString().contains("600 g"));
  }

  @Test
  void linesOfOtherTextsAreNamedByTheirText() throws Exception {
    JsonObject shown = preview("{'uri':'" + drops + "','name':'drops','view':'sheet'}");
    assertFalse(shown.has("version"), "no editor holds it");
    List<String> texts = anchors(shown).stream()
        .map(anchor -> anchor.get("uri").getAsString())
        .distinct()
        .toList();
    assertEquals(List.of(syrup), texts);
    assertEquals(List.of(6, 7, 8, 9), lines(shown).stream().distinct().toList());
  }

  @Test
  void allViewsAndReadersAreThere() throws Exception {
    for (String view : List.of("sheet", "flow", "time", "shares")) {
      JsonObject shown = preview("{'uri':'" + syrup + "','name':'plain','view':'" + view + "'}");
      assertEquals(view, shown.get("view").getAsString());
      assertTrue(shown.get("html").getAsString().contains(view.equals("sheet") ? "<h1>" : "<svg"));
      assertTrue(shown.get("style").getAsString().contains(".kettlemark-preview"));
    }
    for (String reader : List.of("chef", "home", "production", "bench")) {
      JsonObject shown = preview("{'uri':'" + syrup + "','name':'plain','view':'sheet','reader':'"
          + reader + "','locale':'de-DE'}");
      assertEquals(reader, shown.get("reader").getAsString());
      assertTrue(shown.get("html").getAsString().contains("lang=\"de-DE\""));
    }
  }

  @Test
  void whatIsMissingIsShownAndNotRefused() throws Exception {
    JsonObject unknown = preview("{'uri':'" + syrup + "','name':'nobody','view':'flow'}");
    assertTrue(unknown.get("html").getAsString().contains("The library has no formula"));
    assertEquals("", unknown.get("name").getAsString());
    JsonObject nowhere = preview("{'uri':'untitled:none','view':'sheet'}");
    assertTrue(nowhere.get("html").getAsString().contains("No library holds this text"));
    String pantry = folder.resolve("pantry.kettle").toUri().toString();
    JsonObject honey = preview("{'uri':'" + pantry + "','view':'sheet'}");
    assertTrue(honey.get("html").getAsString().contains("Here stands no formula"));
  }

  @Test
  void theHeadOfATextSpeaksOfItsFirstFormula() throws Exception {
    assertEquals("plain", preview(at(new Position(0, 0))).get("name").getAsString());
    JsonObject first = preview("{'uri':'" + syrup + "','view':'flow'}");
    assertEquals("plain", first.get("name").getAsString());
    assertFalse(first.has("first"));
  }

  @Test
  void aTextThatWasNeverSavedIsShown() throws Exception {
    editor.open("untitled:new", SYRUP);
    JsonObject shown =
        preview("{'uri':'untitled:new','view':'sheet','position':{'line':16,'character':0}}");
    assertEquals("thick", shown.get("name").getAsString());
    assertTrue(lines(shown).contains(15));
  }

  @Test
  void aViewThatDoesNotExistIsRefused() {
    ExecutionException refused = assertThrows(
        ExecutionException.class,
        () -> preview("{'uri':'" + syrup + "','name':'plain','view':'smell'}"));
    assertTrue(String.valueOf(refused.getMessage()).contains("no such view"));
  }

  /** By hand: 40 % water, and 17 % of the 60 % that come in its place: 50.2 %. */
  @Test
  void anotherMaterialIsTriedAndNothingIsEdited() throws Exception {
    String page =
        text("{'uri':'" + syrup + "','formula':'plain','replace':'white-sugar','by':'moon-honey'}");
    assertTrue(page.contains("50.2"), page);
    assertEquals(SYRUP, editor.text(syrup));
    assertEquals(0, editor.client().applied.size());
  }

  @Test
  void aMaterialThatNobodyKnowsIsRefusedWithTheReason() {
    ExecutionException refused = assertThrows(
        ExecutionException.class,
        () -> text(
            "{'uri':'" + syrup + "','formula':'plain','replace':'white-sugar','by':'moonstone'}"));
    assertTrue(
        String.valueOf(refused.getMessage()).contains("nobody has described `moonstone`"),
        () -> "refused with " + refused.getMessage());
  }

  /** By hand: 20 g are 80 % of 25 g. */
  @Test
  void twoProductsStandSideBySide() throws Exception {
    String uri = folder.resolve("pieces.kettle").toUri().toString();
    editor.open(
        uri,
        "product bare\n  make 10 pieces\n  centre 20 g white-sugar\n\n"
            + "product dipped\n  make 10 pieces\n  centre 20 g white-sugar\n"
            + "  coat 20 % of finished couverture-dark-62\n");
    String page = command(
            "kettlemark.compare", "{'uri':'" + uri + "','formula':'bare','with':'dipped'}")
        .toString();
    assertTrue(page.contains("| Weight of a piece | 20.0\u202fg | 25.0\u202fg |"), page);
    ExecutionException refused = assertThrows(
        ExecutionException.class,
        () -> command("kettlemark.compare", "{'uri':'" + uri + "','formula':'bare'}"));
    assertTrue(String.valueOf(refused.getMessage()).contains("the command needs `with`"));
  }

  private String at(Position position) {
    return "{'uri':'" + syrup + "','view':'sheet','position':{'line':" + position.getLine()
        + ",'character':" + position.getCharacter() + "}}";
  }

  private JsonObject preview(String argument) throws Exception {
    return new Gson().toJsonTree(command("kettlemark.preview", argument)).getAsJsonObject();
  }

  private String text(String argument) throws Exception {
    return command("kettlemark.whatIf", argument).toString();
  }

  private Object command(String name, String argument) throws Exception {
    return editor.await(editor
        .server()
        .getWorkspaceService()
        .executeCommand(new ExecuteCommandParams(name, List.of(JsonParser.parseString(argument)))));
  }

  private static List<JsonObject> anchors(JsonObject shown) {
    return StreamSupport.stream(shown.getAsJsonArray("anchors").spliterator(), false)
        .map(JsonElement::getAsJsonObject)
        .toList();
  }

  private static List<Integer> lines(JsonObject shown) {
    return anchors(shown).stream().map(anchor -> anchor.get("line").getAsInt()).toList();
  }
}
