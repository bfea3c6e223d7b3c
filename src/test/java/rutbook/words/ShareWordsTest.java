package rutbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.Reading;
import rutbook.notebook.SettingId;
import rutbook.notebook.Shared;
import rutbook.share.ChosenSetup;
import rutbook.share.CoachPart;
import rutbook.share.Preview;
import rutbook.share.Returned;
import rutbook.share.SetupFiles;
import rutbook.share.ShareException;
import rutbook.share.ShareFault;
import rutbook.share.Standing;
import rutbook.share.Suggested;
import rutbook.units.Display;

class ShareWordsTest {
  private static final Phrases ENGLISH = Phrases.english(Display.METRIC);
  private static final List<Phrases> LANGUAGES =
      List.of(ENGLISH, new Phrases(Locale.GERMANY, Display.METRIC));
  private static final Reading TWELVE = Reading.bothLegs(Bench.clicks(12));
  private static final Reading FOURTEEN = Reading.bothLegs(Bench.clicks(14));

  private static Returned returned(Standing standing) {
    return new Returned(
        new Suggested(Bench.FORK_COMPRESSION, FOURTEEN, ""),
        Bench.sheet().setting(Bench.FORK_COMPRESSION),
        Optional.of(Reading.bothLegs(Bench.clicks(10))),
        Optional.of(TWELVE),
        standing,
        standing.canBeFollowed() ? Optional.of(FOURTEEN) : Optional.empty(),
        Optional.empty());
  }

  @Test
  void everyFaultEveryTickAndEveryStandingIsSaidInEveryLanguage() {
    for (Phrases phrases : LANGUAGES) {
      ShareWords words = new ShareWords(phrases);
      for (ShareFault fault : ShareFault.values()) {
        String said = words.sentence(new ShareException(fault, "first", SetupFiles.DAY, "third"));
        assertThat(said).as(fault.name()).endsWith(".").doesNotContain("{", "null");
      }
      for (Standing standing : Standing.values()) {
        assertThat(words.returned(returned(standing))).as(standing.name()).endsWith(".");
      }
      for (Shared shared : Shared.values()) {
        assertThat(words.tick(shared)).isNotBlank().isNotEqualTo(words.stays(shared));
      }
      for (ChosenSetup.What what : ChosenSetup.What.values()) {
        ChosenSetup setup =
            new ChosenSetup(
                what,
                SetupFiles.DAY,
                Bench.SPRING,
                Bench.setup(),
                Optional.empty(),
                Optional.empty());
        assertThat(words.setup(setup)).isNotBlank();
      }
    }
  }

  @Test
  void aProposalIsSaidWithNumberAndSenseBesideWhatWasHandedOver() {
    ShareWords words = new ShareWords(ENGLISH);
    assertThat(words.returned(returned(Standing.UNCHANGED)))
        .isEqualTo("Fork compression: 12 → 14 out (2 softer). It stands as you handed it over.");
    assertThat(words.returned(returned(Standing.CHANGED)))
        .startsWith("Fork compression: 12 → 14 out (2 softer).")
        .contains("handed it over at 10 out");
  }

  @Test
  void namesFromOutsideCannotTurnTheLine() {
    ShareWords words = new ShareWords(ENGLISH);
    assertThat(words.from(CoachPart.of("J\u202Eorun")))
        .isEqualTo("From J<U+202E>orun, not marked as handed back");
    Returned strange =
        new Returned(
            new Suggested(new SettingId("wing"), FOURTEEN, ""),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Standing.NOT_YOURS,
            Optional.empty(),
            Optional.empty());
    assertThat(words.returned(strange)).startsWith("“wing”");
  }

  @Test
  void thePreviewEndsWithWhatStaysAtHome() {
    ShareWords words = new ShareWords(ENGLISH);
    List<String> lines =
        words.preview(Preview.of(SetupFiles.whole(Bench.notebook(), Set.of(Shared.NOTES))));
    assertThat(lines.get(0)).startsWith("The rider’s name: ");
    assertThat(lines)
        .endsWith(
            "Not in it: names and altitudes of places.",
            "Not in it: lap times.",
            "Not in it: weight in gear.");
  }
}
