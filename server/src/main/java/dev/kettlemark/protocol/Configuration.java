package dev.kettlemark.protocol;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.eclipse.lsp4j.ConfigurationItem;
import org.eclipse.lsp4j.ConfigurationParams;
import org.eclipse.lsp4j.services.LanguageClient;
import org.jspecify.annotations.Nullable;

/**
 * The settings of a client, for all and for each folder.
 *
 * <p>They come in three ways: with {@code initialize}, pushed by the client, and asked of it. What came
 * last counts.
 */
final class Configuration {

  static final String SECTION = "kettlemark";

  private volatile Settings general = Settings.USUAL;
  private volatile Map<String, Settings> byFolder = Map.of();

  /** The settings for a document of a folder. */
  Settings of(Optional<String> folder) {
    return folder.flatMap(uri -> Optional.ofNullable(byFolder.get(uri))).orElse(general);
  }

  /** Takes over settings that hold everywhere; says whether that changed anything. */
  synchronized boolean take(@Nullable Object sent) {
    Settings before = general;
    Map<String, Settings> foldersBefore = byFolder;
    general = Settings.of(sent, before);
    byFolder = Map.of();
    return !before.equals(general) || !foldersBefore.isEmpty();
  }

  /**
   * Asks the client, for all and for each folder.
   *
   * @param folders as the client spells them
   * @return whether that changed anything
   */
  CompletableFuture<Boolean> ask(LanguageClient client, List<String> folders) {
    List<ConfigurationItem> items = new ArrayList<>();
    items.add(item(null));
    folders.forEach(folder -> items.add(item(folder)));
    return client
        .configuration(new ConfigurationParams(items))
        .thenApply(answers -> take(folders, answers));
  }

  private synchronized boolean take(List<String> folders, @Nullable List<Object> answers) {
    if (answers == null || answers.isEmpty()) {
      return false;
    }
    Settings before = general;
    Map<String, Settings> foldersBefore = byFolder;
    Settings all = Settings.of(answers.get(0), before);
    Map<String, Settings> each = new HashMap<>();
    for (int i = 0; i < folders.size() && i + 1 < answers.size(); i++) {
      each.put(folders.get(i), Settings.of(answers.get(i + 1), all));
    }
    general = all;
    byFolder = Map.copyOf(each);
    return !before.equals(general) || !foldersBefore.equals(byFolder);
  }

  private static ConfigurationItem item(@Nullable String folder) {
    ConfigurationItem item = new ConfigurationItem();
    item.setSection(SECTION);
    if (folder != null) {
      item.setScopeUri(folder);
    }
    return item;
  }
}
