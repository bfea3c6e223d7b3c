package rutbook.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rutbook.json.JsonFault.Kind;
import rutbook.notebook.Bench;
import rutbook.notebook.EndOfDayCheck;
import rutbook.notebook.Entry;
import rutbook.notebook.Fault;
import rutbook.notebook.Lap;
import rutbook.notebook.MotionRatio;
import rutbook.notebook.Moto;
import rutbook.notebook.MotoId;
import rutbook.notebook.MotoKind;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Placed;
import rutbook.notebook.RatioConvention;
import rutbook.notebook.Reading;
import rutbook.notebook.Report;
import rutbook.notebook.Rider;
import rutbook.notebook.RiderId;
import rutbook.notebook.RuleChange;
import rutbook.notebook.SettingId;
import rutbook.notebook.Setup;
import rutbook.notebook.Shelf;
import rutbook.notebook.ShockParts;
import rutbook.notebook.TravelUsed;
import rutbook.units.Display;
import rutbook.words.FaultWords;
import rutbook.words.JsonWords;
import rutbook.words.Phrases;

/** Nothing that a notebook can hold is written so that it cannot be read again. */
class WrittenIsReadTest {
  private static final Phrases ENGLISH = Phrases.english(Display.METRIC);

  @ParameterizedTest
  @ValueSource(
      strings = {
        "0.1234567890123",
        "1.0000000000000000000000000000000000000001",
        "1E-400",
        "1E+200000000"
      })
  void aNumberWithMoreDigitsThanAreKeptIsRefusedWhereItIsMade(String number) {
    BigDecimal value = new BigDecimal(number);
    refused(
        () -> new MotionRatio(value, RatioConvention.SPRING_OVER_WHEEL),
        "Motion ratio: a number has at most 12 digits before and after the point.");
    refused(
        () -> new RuleChange("rule", value, "why"),
        "Size of the rule: a number has at most 12 digits before and after the point.");
  }

  private static void refused(Runnable making, String sentence) {
    assertThatThrownBy(making::run)
        .isInstanceOfSatisfying(
            NotebookException.class,
            thrown -> assertThat(new FaultWords(ENGLISH).what(thrown)).isEqualTo(sentence));
  }

  @Test
  void listsLongerThanAnyoneFillsAreRefusedWhereTheyAreMade() {
    int many = 10_001;
    List<Placed> placed =
        IntStream.range(0, many)
            .mapToObj(i -> Placed.found(new SettingId("s" + i), Reading.of(Bench.mm("1"))))
            .toList();
    tooMany(() -> new Setup(placed));
    List<EndOfDayCheck.Found> found =
        placed.stream()
            .map(each -> new EndOfDayCheck.Found(each.setting(), each.reading()))
            .toList();
    tooMany(() -> new EndOfDayCheck(found));
    List<Rider> riders =
        IntStream.range(0, many)
            .mapToObj(i -> new Rider(new RiderId("r" + i), "Rider", List.of()))
            .toList();
    tooMany(() -> new Shelf(riders, List.of(), List.of(), List.of()));
    tooMany(() -> Bench.sheet().withTorques(Collections.nCopies(many, Bench.torques().get(0))));
    ShockParts shock = Bench.sheet().parts().shock();
    tooMany(
        () ->
            new ShockParts(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Collections.nCopies(many, shock.springsAtHand().get(0)),
                true,
                ""));
    tooMany(() -> Report.EMPTY.withLaps(Collections.nCopies(1001, Lap.of(90_000))));
  }

  private static void tooMany(Runnable making) {
    assertThatThrownBy(making::run)
        .isInstanceOfSatisfying(
            NotebookException.class,
            thrown -> {
              assertThat(thrown.fault()).isEqualTo(Fault.TOO_MANY);
              assertThat(new FaultWords(ENGLISH).what(thrown)).contains("are too many, at most");
            });
  }

  /** 3,500 motos with a note of 20,000 letters each are 67 MiB. */
  @Test
  void aNotebookLargerThanAFileMayBeIsNotWrittenAndSaysSo() {
    String note = "n".repeat(20_000);
    List<Moto> motos = new ArrayList<>();
    for (int i = 0; i < 3_500; i++) {
      motos.add(Bench.moto("m" + i, List.of(), List.of()).withNote(note));
    }
    Entry.Session session =
        Bench.session("s1", Bench.SPRING, Bench.HOLLOW, Bench.setup(), List.of());
    Notebook large = Bench.notebook().with(session.withMotos(motos));
    assertThatThrownBy(() -> NotebookJson.write(large))
        .isInstanceOfSatisfying(
            JsonException.class,
            thrown -> {
              assertThat(thrown.fault().kind()).isEqualTo(Kind.TOO_LARGE);
              assertThat(new JsonWords(ENGLISH).sentence(thrown)).contains("at most 67108864");
            });
    Notebook fits = Bench.notebook().with(session.withMotos(motos.subList(0, 3_000)));
    assertThat(NotebookJson.read(NotebookJson.write(fits))).isEqualTo(fits);
  }

  /** As many tokens in as few bytes as a notebook can: laps, feels of little, empty conditions. */
  @Test
  @Tag("long")
  void aNotebookOfVeryManySmallThingsIsReadAgain() {
    Report report =
        new Report(
            Collections.nCopies(Report.MOST_LAPS, Lap.of(1)),
            OptionalInt.of(1),
            List.of(),
            TravelUsed.NOT_NOTED,
            false);
    List<Moto> motos = new ArrayList<>();
    for (int i = 0; i < 4_000; i++) {
      motos.add(
          new Moto(new MotoId("m" + i), MotoKind.TEST, List.of(), report, Optional.empty(), ""));
    }
    Notebook notebook =
        Bench.notebook()
            .with(Bench.session("s1", Bench.SPRING, Bench.HOLLOW, Bench.setup(), motos));
    byte[] bytes = NotebookJson.write(notebook);
    assertThat(bytes.length).isGreaterThan(40 << 20);
    assertThat(NotebookJson.read(bytes)).isEqualTo(notebook);
  }
}
