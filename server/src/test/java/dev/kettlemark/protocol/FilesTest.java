package dev.kettlemark.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.eclipse.lsp4j.DefinitionParams;
import org.eclipse.lsp4j.DeleteFilesParams;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DidChangeWorkspaceFoldersParams;
import org.eclipse.lsp4j.FileDelete;
import org.eclipse.lsp4j.FileRename;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.RenameFilesParams;
import org.eclipse.lsp4j.WorkspaceFolder;
import org.eclipse.lsp4j.WorkspaceFoldersChangeEvent;
import org.eclipse.lsp4j.WorkspaceSymbolParams;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files and folders of every spelling, that move, lie behind links, or lie in no folder at all. */
class FilesTest {

  private static final String SYRUP = """
      formula syrup
        percent of charge
        batch 500 g
      stage pan
        60.00 % moon-sugar
        40.00 % water
        boil until dissolved
      """;

  private static final String PANTRY = "ingredient moon-sugar\n  contains 100 % sucrose\n";

  @TempDir
  Path root;

  private static Set<String> codes(List<Diagnostic> diagnostics) {
    return diagnostics.stream().map(d -> d.getCode().getLeft()).collect(Collectors.toSet());
  }

  private static String definition(EditorFixture editor, String uri) throws Exception {
    return editor
        .await(editor
            .server()
            .getTextDocumentService()
            .definition(
                new DefinitionParams(EditorFixture.id(uri), editor.positionOf(uri, "moon-sugar"))))
        .getLeft()
        .get(0)
        .getUri();
  }

  @Test
  void pathsOfEverySpellingLeadToTheirFiles() throws Exception {
    for (String name : List.of("100 % cocoa", "a#b", "é ü 糖", "a+b&c=d;e,f", "[x] (y)", "~$ '")) {
      Path folder = Files.createDirectories(root.resolve(name));
      Path pantry = Files.writeString(folder.resolve("pantry " + name + ".kettle"), PANTRY);
      String uri =
          Files.writeString(folder.resolve("syrup.kettle"), SYRUP).toUri().toString();
      try (EditorFixture editor = EditorFixture.onFolder(folder)) {
        editor.open(uri, SYRUP);
        assertEquals(Set.of(), codes(editor.diagnostics(uri)), name);
        assertEquals(pantry.toUri().toString(), definition(editor, uri), name);
      }
    }
  }

  /** A client may escape more than it must; what it has not opened is spelled as it spells the folder. */
  @Test
  void closedFilesAreSpelledAsTheClientSpellsTheirFolder() throws Exception {
    Path folder = Files.createDirectories(root.resolve("kitchen"));
    Files.writeString(folder.resolve("pantry.kettle"), PANTRY);
    String plain = folder.toUri().toString();
    String spelled = plain.replace("kitchen/", "k%69tchen");
    InitializeParams params = EditorFixture.params();
    params.setWorkspaceFolders(List.of(new WorkspaceFolder(spelled, "kitchen")));
    try (EditorFixture editor = EditorFixture.with(params)) {
      String uri = spelled + "/syrup.kettle";
      editor.open(uri, SYRUP);
      assertEquals(Set.of(), codes(editor.diagnostics(uri)));
      assertEquals(spelled + "/pantry.kettle", definition(editor, uri));
    }
  }

  @Test
  void aFileOpenedThroughALinkIsTheFileItself() throws Exception {
    Path folder = Files.createDirectories(root.resolve("kitchen"));
    Path file = Files.writeString(folder.resolve("pantry.kettle"), PANTRY);
    Files.writeString(folder.resolve("syrup.kettle"), SYRUP);
    Path link = Files.createSymbolicLink(folder.resolve("z-link.kettle"), file);
    Path door = Files.createSymbolicLink(root.resolve("door"), folder);
    try (EditorFixture editor = EditorFixture.onFolder(folder)) {
      for (Path other : List.of(link, door.resolve("pantry.kettle"))) {
        String uri = root.toUri() + root.relativize(other).toString();
        editor.open(uri, PANTRY);
        assertEquals(Set.of(), codes(editor.diagnostics(uri)), uri);
        editor.type(uri, "100 %", "100");
        assertTrue(!codes(editor.diagnostics(uri)).isEmpty(), uri);
        editor.close(uri);
      }
    }
  }

  @Test
  void aLibraryBehindALinkIsOneLibrary() throws Exception {
    Path folder = Files.createDirectories(root.resolve("kitchen"));
    Files.writeString(folder.resolve("pantry.kettle"), PANTRY);
    Path door = Files.createSymbolicLink(root.resolve("door"), folder);
    try (EditorFixture editor = EditorFixture.onFolder(door)) {
      String uri = root.toUri() + "door/syrup.kettle";
      editor.open(uri, SYRUP);
      assertEquals(Set.of(), codes(editor.diagnostics(uri)));
      assertEquals(root.toUri() + "door/pantry.kettle", definition(editor, uri));
    }
  }

  /** Names belong to the library, so nothing breaks when a file moves. */
  @Test
  void aRenamedFolderTakesItsFilesAlong() throws Exception {
    Path old = Files.createDirectories(root.resolve("old"));
    Files.writeString(old.resolve("pantry.kettle"), PANTRY);
    String uri = Files.writeString(root.resolve("syrup.kettle"), SYRUP).toUri().toString();
    try (EditorFixture editor = EditorFixture.onFolders(ClientProfiles.neovim(), root)) {
      editor.open(uri, SYRUP);
      assertEquals(Set.of(), codes(editor.diagnostics(uri)));
      String from = old.toUri().toString().replaceAll("/$", "");
      Path fresh = Files.move(old, root.resolve("new"));
      editor
          .server()
          .getWorkspaceService()
          .didRenameFiles(
              new RenameFilesParams(List.of(new FileRename(from, root.toUri() + "new"))));
      assertEquals(fresh.resolve("pantry.kettle").toUri().toString(), definition(editor, uri));
      Files.delete(fresh.resolve("pantry.kettle"));
      Files.delete(fresh);
      editor
          .server()
          .getWorkspaceService()
          .didDeleteFiles(new DeleteFilesParams(List.of(new FileDelete(root.toUri() + "new"))));
      assertTrue(codes(editor.diagnostics(uri)).contains("unknown-ingredient"));
    }
  }

  @Test
  void aFolderThatIsAddedBringsItsFormulas() throws Exception {
    Path folder = Files.createDirectories(root.resolve("kitchen"));
    Files.writeString(folder.resolve("syrup.kettle"), SYRUP);
    try (EditorFixture editor = EditorFixture.withoutFolder()) {
      assertEquals(0, symbols(editor));
      WorkspaceFolder added = new WorkspaceFolder(folder.toUri().toString(), "kitchen");
      change(editor, List.of(added), List.of());
      assertEquals(1, symbols(editor));
      change(editor, List.of(), List.of(added));
      assertEquals(0, symbols(editor));
    }
  }

  private static void change(
      EditorFixture editor, List<WorkspaceFolder> added, List<WorkspaceFolder> removed) {
    editor
        .server()
        .getWorkspaceService()
        .didChangeWorkspaceFolders(
            new DidChangeWorkspaceFoldersParams(new WorkspaceFoldersChangeEvent(added, removed)));
  }

  private static int symbols(EditorFixture editor) throws Exception {
    return editor
        .await(editor.server().getWorkspaceService().symbol(new WorkspaceSymbolParams("syrup")))
        .getRight()
        .size();
  }

  @Test
  void twoLibrariesKnowNothingOfEachOther() throws Exception {
    Path one = Files.createDirectories(root.resolve("one"));
    Path two = Files.createDirectories(root.resolve("two"));
    Files.writeString(one.resolve("pantry.kettle"), PANTRY);
    String here = Files.writeString(one.resolve("syrup.kettle"), SYRUP).toUri().toString();
    String there = Files.writeString(two.resolve("syrup.kettle"), SYRUP).toUri().toString();
    try (EditorFixture editor = EditorFixture.onFolders(EditorFixture.params(), one, two)) {
      editor.open(here, SYRUP);
      assertEquals(Set.of(), codes(editor.diagnostics(here)));
      editor.open(there, SYRUP);
      assertTrue(codes(editor.diagnostics(there)).contains("unknown-ingredient"));
    }
  }

  @Test
  void whatCannotBeReadIsSaidInTheLogAndAFolderToTheWriter() throws Exception {
    Files.write(root.resolve("latin.kettle"), new byte[] {(byte) 0xe9, '\n'});
    try (EditorFixture editor = EditorFixture.onFolder(root)) {
      String told = RecordingClient.next(editor.client().logged).getMessage();
      assertTrue(told.contains("latin.kettle") && told.contains("not UTF-8"), told);
      assertEquals(0, editor.client().messages.size());
    }
    try (EditorFixture editor = EditorFixture.onFolder(root.resolve("nowhere"))) {
      String told = RecordingClient.next(editor.client().messages).getMessage();
      assertTrue(told.contains("nowhere"), told);
    }
  }
}
