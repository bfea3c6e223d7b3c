package rutbook.share;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import rutbook.json.Marked;
import rutbook.json.SetupJson;
import rutbook.notebook.Dice;
import rutbook.notebook.Notebooks;
import rutbook.notebook.Shared;
import rutbook.samples.Samples;

/** What was not ticked is not in the file: the whole file is searched, byte by byte. */
class UntickedTest {
  private static String text(Marked.Result marked, Set<Shared> ticked) {
    SetupFile file = SetupFiles.whole(marked.notebook(), ticked);
    return new String(SetupJson.write(file), StandardCharsets.ISO_8859_1);
  }

  private static void requireAtHome(Marked.Result marked, String text, Set<Shared> ticked) {
    for (Map.Entry<String, Optional<Shared>> mark : marked.marks().entrySet()) {
      if (mark.getValue().filter(ticked::contains).isEmpty() && !isTheRider(marked, mark)) {
        assertThat(text).as("%s with %s", mark, ticked).doesNotContain("\"" + mark.getKey());
        assertThat(text.contains(mark.getKey())).as("%s with %s", mark, ticked).isFalse();
      }
    }
  }

  /** The name of a rider is made of the rider's id here, and who hands over is named. */
  private static boolean isTheRider(
      Marked.Result marked, Map.Entry<String, Optional<Shared>> mark) {
    return SetupFiles.whole(marked.notebook(), Set.of())
        .excerpt()
        .rider()
        .name()
        .equals("Rider" + mark.getKey());
  }

  @Property(tries = 60, seed = "51")
  void whatIsNotTickedIsNotInTheFileOfAnyNotebook(@ForAll long notebook, @ForAll long seed) {
    Dice dice = new Dice(new Random(seed));
    Marked.Result marked = Marked.of(Notebooks.of(notebook, dice.below(20)));
    Set<Shared> ticked = dice.some(Shared.class);
    requireAtHome(marked, text(marked, ticked), ticked);
    requireAtHome(marked, text(marked, Set.of()), Set.of());
  }

  /** The search finds what is there: ticked, each of the four kinds is in the file. */
  @Test
  void whatIsTickedIsFoundByTheSameSearch() {
    Marked.Result marked = Marked.of(Samples.season());
    String text = text(marked, EnumSet.allOf(Shared.class));
    Set<Shared> found = new HashSet<>();
    marked
        .marks()
        .forEach((mark, with) -> with.filter(it -> text.contains(mark)).ifPresent(found::add));
    assertThat(found).isEqualTo(EnumSet.allOf(Shared.class));
    for (Shared alone : Shared.values()) {
      requireAtHome(marked, text(marked, EnumSet.of(alone)), EnumSet.of(alone));
    }
  }

  @Test
  void thePreviewSaysWhatIsInTheFile() {
    Preview nothing = Preview.of(SetupFiles.whole(Samples.season(), Set.of()));
    assertThat(nothing.notes()).isEmpty();
    assertThat(nothing.weights()).isEmpty();
    assertThat(nothing.stays()).isEqualTo(EnumSet.allOf(Shared.class));
    assertThat(nothing.rides())
        .isNotEmpty()
        .allMatch(ride -> ride.laps() == 0 && ride.track().isEmpty());
    Preview all = Preview.of(SetupFiles.whole(Samples.season(), EnumSet.allOf(Shared.class)));
    assertThat(all.notes()).isNotEmpty();
    assertThat(all.weights()).isNotEmpty();
    assertThat(all.stays()).isEmpty();
    assertThat(all.rides()).isNotEmpty().allMatch(ride -> ride.track().isPresent());
  }
}
