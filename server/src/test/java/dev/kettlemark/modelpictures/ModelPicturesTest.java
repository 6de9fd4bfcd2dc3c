package dev.kettlemark.modelpictures;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.kettlemark.Pinned;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

/** The pictures of {@code server/MODELS.md} show what the program computes today. */
class ModelPicturesTest {

  private static final Map<String, Supplier<String>> PICTURES = new TreeMap<>(Map.of(
      "boiling-curve", BoilingPicture::svg,
      "glass-transition", GlassPicture::svg,
      "phases", PhasePicture::svg,
      "water-left", AltitudePicture::svg));

  @Test
  void showWhatIsComputed() {
    PICTURES.forEach((name, picture) ->
        Pinned.file(Path.of("pictures", name + ".svg")).check(picture.get(), getClass()));
  }

  @Test
  void areTheSameEachTime() {
    PICTURES.values().forEach(picture -> assertEquals(picture.get(), picture.get()));
  }
}
