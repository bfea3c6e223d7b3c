package rutbook.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import rutbook.notebook.Dice;
import rutbook.notebook.Notebook;
import rutbook.notebook.Notebooks;
import rutbook.notebook.Shared;
import rutbook.share.SetupFile;
import rutbook.share.SetupFiles;

class SetupJsonTest {
  @Property(tries = 100, seed = "41")
  void anySetupFileIsReadBackAsItWasWritten(
      @ForAll(supplier = Notebooks.class) Notebook notebook, @ForAll long seed) {
    Dice dice = new Dice(new Random(seed));
    EnumSet<Shared> shared = EnumSet.noneOf(Shared.class);
    for (Shared each : Shared.values()) {
      if (dice.once(2)) {
        shared.add(each);
      }
    }
    SetupFile file = SetupFiles.whole(notebook, shared);
    readBack(file);
    readBack(SetupFiles.advised(file, dice));
  }

  private static void readBack(SetupFile file) {
    byte[] bytes = SetupJson.write(file);
    SetupJson.Read read = SetupJson.read(bytes);
    assertThat(read).isEqualTo(new SetupJson.Read(file, true));
    assertThat(SetupJson.write(read.file())).isEqualTo(bytes);
    assertThat(read.ridersChecksum()).isEqualTo(SetupJson.checksum(file.asHandedOver()));
  }
}
