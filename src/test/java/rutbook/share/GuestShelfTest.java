package rutbook.share;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.HandOverId;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookId;
import rutbook.notebook.Rider;

/** A coach's shelf of three riders, one of whom handed over twice. */
class GuestShelfTest {
  private static final LocalDate MAY = LocalDate.of(2026, 5, 3);

  private static GuestFile file(String name, String rider, String notebook, LocalDate day) {
    SetupFile bench = SetupFiles.whole(Bench.notebook(), Set.of());
    HandOver handOver =
        new HandOver(
            new HandOverId("h-" + name.replace(".setup.json", "")),
            new NotebookId(notebook),
            day,
            Set.of(),
            "");
    Excerpt of = bench.excerpt();
    Rider named = new Rider(of.rider().id(), rider, List.of());
    Excerpt excerpt = new Excerpt(of.display(), named, of.bike(), of.tracks(), of.entries());
    SetupFile file = new SetupFile(handOver, excerpt, bench.setups(), Optional.empty());
    return new GuestFile(name, file);
  }

  private static GuestFile handedBack(GuestFile file) {
    CoachPart coach = CoachPart.of("Jorun").advising("Ride it.").handedBackOn(MAY.plusDays(30));
    return new GuestFile(file.name(), file.file().with(coach));
  }

  private static GuestFile begun(GuestFile file) {
    return new GuestFile(file.name(), file.file().with(CoachPart.of("Jorun").advising("So far.")));
  }

  private final List<GuestFile> files =
      List.of(
          handedBack(file("a.setup.json", "Alva", "one", MAY)),
          begun(file("b.setup.json", "Alva", "one", MAY.plusDays(7))),
          file("c.setup.json", "Björn", "two", MAY.plusDays(2)),
          handedBack(file("d.setup.json", "Cleo", "three", MAY.plusDays(20))));

  @Test
  void whoWaitsStandsFirstThenWhoHandedOverLast() {
    List<GuestFile> shuffled = new ArrayList<>(files);
    Collections.shuffle(shuffled, new Random(4));
    GuestShelf shelf = GuestShelf.of(shuffled);
    assertThat(shelf.guests()).extracting(Guest::rider).containsExactly("Alva", "Björn", "Cleo");
    assertThat(shelf.guests()).extracting(Guest::waiting).containsExactly(1L, 1L, 0L);
    assertThat(shelf.guests().get(0).lastHandedOver()).isEqualTo(MAY.plusDays(7));
    assertThat(shelf).isEqualTo(GuestShelf.of(files));
  }

  @Test
  void theFilesOfOneBikeStandTogetherNewestFirst() {
    Guest alva = GuestShelf.of(files).guests().get(0);
    assertThat(alva.files())
        .extracting(GuestFile::name)
        .containsExactly("b.setup.json", "a.setup.json");
    assertThat(alva.newest().isBegun()).isTrue();
    assertThat(alva.files().get(1).isWaiting()).isFalse();
  }

  @Test
  void allWordsOfASearchAreInRiderBikeOrFile() {
    GuestShelf shelf = GuestShelf.of(files);
    String bike = shelf.guests().get(0).bike();
    assertThat(shelf.search("BJÖ").guests()).extracting(Guest::rider).containsExactly("Björn");
    assertThat(shelf.search("d.setup  " + bike).guests())
        .extracting(Guest::rider)
        .containsExactly("Cleo");
    assertThat(shelf.search("alva björn").guests()).isEmpty();
    assertThat(shelf.search("  ")).isEqualTo(shelf);
    assertThat(GuestShelf.of(List.of()).guests()).isEmpty();
  }

  /** Two riders of the same name have two notebooks, and are two guests. */
  @Test
  void theNameIsNotWhatTellsRidersApart() {
    GuestShelf shelf =
        GuestShelf.of(
            List.of(
                file("a.setup.json", "Alva", "one", MAY),
                file("b.setup.json", "Alva", "two", MAY)));
    assertThat(shelf.guests()).hasSize(2);
  }

  @Test
  void aGuestFileIsLookedAtAsTheNotebookThatItIs() {
    SetupFile file = handedBack(files.get(2)).file();
    Notebook guest = file.asNotebook();
    assertThat(guest.bikes()).containsExactly(file.excerpt().bike());
    assertThat(guest.entries()).containsAll(file.excerpt().entries());
  }
}
