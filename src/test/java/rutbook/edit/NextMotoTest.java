package rutbook.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.End;
import rutbook.notebook.EntryId;
import rutbook.notebook.Feel;
import rutbook.notebook.Moto;
import rutbook.notebook.MotoId;
import rutbook.notebook.Notebook;
import rutbook.notebook.Section;
import rutbook.notebook.Symptom;

class NextMotoTest {
  private static final LocalDate DAY = LocalDate.of(2026, 4, 4);
  private static final Moto RIDDEN =
      Bench.moto(
          "m-1", List.of(), List.of(Feel.of(End.FRONT, Section.BRAKING_BUMPS, Symptom.HARSH, 3)));

  private static Notebook ridden(Moto... motos) {
    return Bench.notebook()
        .with(Bench.session("s-1", DAY, Bench.HOLLOW, Bench.setup(), List.of(motos)));
  }

  private static NextMoto next(Notebook notebook) {
    return NextMoto.of(notebook, Bench.BIKE, DAY, () -> "new").orElseThrow();
  }

  @Test
  void itIsTheLastOneWhileNothingWasSaidOfIt() {
    Moto open = Bench.moto("m-2", List.of(), List.of());
    assertThat(next(ridden(RIDDEN, open)))
        .isEqualTo(new NextMoto(new EntryId("s-1"), new MotoId("m-2")));
  }

  @Test
  void itIsANewOneAfterARideOrBeforeTheFirst() {
    NextMoto anew = new NextMoto(new EntryId("s-1"), new MotoId("new"));
    assertThat(next(ridden(RIDDEN))).isEqualTo(anew);
    assertThat(next(ridden())).isEqualTo(anew);
  }

  @Test
  void thereIsNoneOnADayWithoutASession() {
    assertThat(NextMoto.of(ridden(RIDDEN), Bench.BIKE, DAY.plusDays(1), () -> "new")).isEmpty();
    assertThat(NextMoto.of(Bench.notebook(), Bench.BIKE, DAY, () -> "new")).isEmpty();
  }
}
