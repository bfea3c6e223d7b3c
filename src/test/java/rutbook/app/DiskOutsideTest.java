package rutbook.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rutbook.json.SetupJson;
import rutbook.notebook.Shared;
import rutbook.samples.Samples;
import rutbook.share.SetupFiles;
import rutbook.ui.OutsideFiles;

/** The coach's shelf on a real disk. */
class DiskOutsideTest {
  @TempDir Path folder;

  private OutsideFiles.Answer<OutsideFiles.Shelf> shelf() {
    List<OutsideFiles.Answer<OutsideFiles.Shelf>> answers = new ArrayList<>();
    OutsideOnDisk.in(folder).shelf(answers::add);
    return answers.get(0);
  }

  @Test
  void aFileThatCannotBeReadIsNamedWithItsFaultBesideThoseThatCan() throws IOException {
    Path riders = Files.createDirectory(folder.resolve("riders"));
    byte[] whole =
        SetupJson.write(SetupFiles.whole(Samples.season(), EnumSet.noneOf(Shared.class)));
    Files.write(riders.resolve("whole.setup.json"), whole);
    Files.writeString(riders.resolve("torn.setup.json"), new String(whole, 0, whole.length / 2));
    Files.writeString(riders.resolve("empty.setup.json"), "");
    Files.writeString(riders.resolve("notes.txt"), "no setup file");
    assertThat(shelf())
        .isInstanceOfSatisfying(
            OutsideFiles.Answer.Done.class,
            done -> {
              OutsideFiles.Shelf shelf = (OutsideFiles.Shelf) done.value();
              assertThat(shelf.riders().guests()).hasSize(1);
              assertThat(shelf.unread())
                  .extracting(OutsideFiles.Unread::name)
                  .containsExactlyInAnyOrder("torn.setup.json", "empty.setup.json");
              assertThat(shelf.unread()).allMatch(each -> each.sentence().endsWith("."));
            });
    assertThat(Files.size(riders.resolve("empty.setup.json"))).isZero();
  }

  @Test
  void withoutAFolderTheShelfIsEmpty() {
    assertThat(shelf())
        .isEqualTo(
            new OutsideFiles.Answer.Done<>(
                new OutsideFiles.Shelf(rutbook.share.GuestShelf.of(List.of()), List.of())));
  }
}
