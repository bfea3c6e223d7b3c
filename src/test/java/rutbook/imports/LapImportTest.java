package rutbook.imports;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rutbook.edit.Editor;
import rutbook.imports.NotTaken.Why;
import rutbook.notebook.Bench;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Lap;
import rutbook.notebook.Moto;
import rutbook.notebook.Notebook;

/**
 * Columns found by looking, and what is taken of them. The files are made by hand in the manner of
 * timing exports, with invented names.
 */
class LapImportTest {
  private static final String CLUB_DAY =
      """
      Pos;No.;Name;Lap;Lap Tm;S1;S2;S3;Elapsed
      1;17;Imke Adler;1;2:01,400;0:41,200;0:39,100;0:41,100;0:02:01,400
      1;17;Imke Adler;2;1:52,310;0:38,100;0:36,110;0:38,100;0:03:53,710
      2;4;Jo Fenn;1;2:04,000;0:42,000;0:40,000;0:42,000;0:02:04,000
      2;4;Jo Fenn;2;1:55,020;0:39,010;0:37,000;0:39,010;0:03:59,020
      1;17;Imke Adler;3;In Pit;;;;
      1;17;Imke Adler;4;1:51,900;0:38,000;0:36,000;0:37,900;0:05:45,610
      """;

  private static Grid grid(String text) {
    return CsvText.read(text.getBytes(StandardCharsets.UTF_8));
  }

  private static LapImport.Wanted rider(String name) {
    return new LapImport.Wanted(Optional.of(name), Optional.empty());
  }

  @Test
  void columnsAreFoundByTheirValues() {
    LapMapping mapping = LapGuess.of(grid(CLUB_DAY));
    assertThat(mapping.text()).isEqualTo("time=5,number=4,rider=3,unit=seconds");
  }

  /** Found by fuzzing. */
  @Test
  void oneSectorAloneIsTakenForTheLap() {
    Grid grid = grid("Lap,S1\n1,0:41.2\n2,0:38.1\n3,0:40.0\n");
    assertThat(LapGuess.of(grid).text()).startsWith("time=2,");
  }

  @Test
  void withoutHeadingsTheValuesAreEnough() {
    String bare = CLUB_DAY.substring(CLUB_DAY.indexOf('\n') + 1);
    assertThat(LapGuess.of(grid(bare)).text()).startsWith("time=5,number=4,rider=");
  }

  @Test
  void theLapsOfOneRiderAreTakenAndTheRestIsTold() {
    Grid grid = grid(CLUB_DAY);
    LapMapping mapping = LapGuess.of(grid);
    assertThat(LapImport.riders(grid, mapping)).isEqualTo(Map.of("Imke Adler", 4, "Jo Fenn", 2));
    LapImport found = LapImport.of(grid, mapping, rider("Imke Adler"));
    assertThat(found.rows())
        .containsExactly(
            new LapImport.Row(2, 121_400),
            new LapImport.Row(3, 112_310),
            new LapImport.Row(7, 111_900));
    assertThat(found.notTaken())
        .extracting(NotTaken::line, NotTaken::why, NotTaken::cell)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple(4, Why.OTHER_RIDER, "Jo Fenn"),
            org.assertj.core.groups.Tuple.tuple(5, Why.OTHER_RIDER, "Jo Fenn"),
            org.assertj.core.groups.Tuple.tuple(6, Why.BAD_TIME, "In Pit"));
  }

  @Test
  void sectorsMakeTheLapWhereThereIsNone() {
    Grid grid = grid("Lap,S1,S2\n1,40.1,41.2\n2,39.9,40.8\n");
    LapMapping mapping = LapGuess.of(grid);
    assertThat(mapping.times()).containsExactly(1, 2);
    assertThat(LapImport.of(grid, mapping, LapImport.Wanted.ALL).laps())
        .containsExactly(Lap.of(81_300), Lap.of(80_700));
  }

  @Test
  void wholeThousandthsAreToldFromSeconds() {
    assertThat(LapGuess.of(grid("lap,ms\n1,112300\n2,111900\n3,113000\n")).text())
        .isEqualTo("time=2,number=1,unit=milliseconds");
    assertThat(LapGuess.of(grid("lap,time\n1,112\n2,111\n3,113\n")).unit())
        .isEqualTo(LapUnit.SECONDS);
  }

  @Test
  void timeSinceTheStartIsNoLap() {
    LapMapping mapping =
        LapGuess.of(
            grid(
                "Clock,Lap time\n10:00:01,1:52.3\n10:01:54,1:53.0\n10:03:45,1:51.0\n"
                    + "10:05:40,1:55.0\n"));
    assertThat(mapping.times()).containsExactly(1);
  }

  @Test
  void lapsAreInTheOrderOfTheirNumbers() {
    Grid grid = grid("Lap,Time\n3,1:53.0\n1,1:51.0\n2,1:52.0\n");
    LapMapping mapping = LapMapping.of("time=Time,number=1", grid);
    assertThat(LapImport.of(grid, mapping, LapImport.Wanted.ALL).laps())
        .containsExactly(Lap.of(111_000), Lap.of(112_000), Lap.of(113_000));
  }

  @Test
  void ofSeveralDaysOnlyTheWantedOneIsTakenAndItsOrderIsAsked() {
    Grid grid = grid("Date,Time\n03/05/2026,1:52.3\n04/05/2026,1:53.0\n04/05/2026,1:54.0\n");
    LapMapping mapping = LapGuess.of(grid);
    assertThat(LapImport.asksOrder(grid, mapping)).isTrue();
    LapImport.Wanted third =
        new LapImport.Wanted(Optional.empty(), Optional.of(LocalDate.of(2026, 5, 3)));
    assertThat(LapImport.of(grid, mapping, third).rows()).as("nothing is guessed").isEmpty();
    LapMapping said = mapping.with(DayOrder.DAY_FIRST);
    assertThat(LapImport.asksOrder(grid, said)).isFalse();
    assertThat(LapImport.of(grid, said, third).laps()).containsExactly(Lap.of(112_300));
  }

  @Test
  void boundsAreTheModels() {
    Grid grid = grid("Lap,Time\n1,0\n2,99:59:59\n3,1:52.3\n");
    LapImport found = LapImport.of(grid, LapMapping.of("time=2", grid), LapImport.Wanted.ALL);
    assertThat(found.laps()).containsExactly(Lap.of(112_300));
    assertThat(found.notTaken()).extracting(NotTaken::why).containsOnly(Why.TIME_OUT_OF_RANGE);
    Grid long_ = grid("1:52.3,x\n".repeat(1001));
    LapImport much = LapImport.of(long_, LapMapping.of("time=1", long_), LapImport.Wanted.ALL);
    assertThat(much.laps()).hasSize(1000);
    assertThat(much.notTaken()).extracting(NotTaken::why).containsExactly(Why.TOO_MANY_LAPS);
  }

  @Test
  void aMappingIsReadAsItIsWritten() {
    Grid grid = grid(CLUB_DAY);
    LapMapping mapping =
        LapGuess.of(grid)
            .with(5, LapMapping.Kind.SECTOR)
            .with(6, LapMapping.Kind.SECTOR)
            .with(4, LapMapping.Kind.NOTHING)
            .with(DayOrder.MONTH_FIRST);
    assertThat(mapping.times()).containsExactly(5, 6);
    assertThat(LapMapping.of(mapping.text(), grid)).isEqualTo(mapping);
  }

  @Test
  void theyAreOneEditAndOneStepBack() {
    Notebook before =
        Bench.notebook()
            .with(
                Bench.session(
                    "s1",
                    LocalDate.of(2026, 5, 3),
                    Bench.HOLLOW,
                    Bench.setup(),
                    List.of(Bench.moto("m1", List.of(), List.of()))));
    Editor editor = new Editor(before);
    Moto moto = ((Entry.Session) before.entry(new EntryId("s1")).orElseThrow()).motos().get(0);
    Grid grid = grid("Lap,Time\n1,1:52.3\n2,1:51.9\n");
    LapImport found = LapImport.of(grid, LapGuess.of(grid), LapImport.Wanted.ALL);
    assertThat(found.isIn(moto)).isFalse();
    editor.make(found.edit(new EntryId("s1"), moto, false));
    Moto after =
        ((Entry.Session) editor.present().entry(new EntryId("s1")).orElseThrow()).motos().get(0);
    assertThat(after.report().laps()).containsExactly(Lap.of(112_300), Lap.of(111_900));
    assertThat(found.isIn(after)).isTrue();
    editor.undo();
    assertThat(editor.present()).isEqualTo(before);
  }
}
