package rutbook.rebuild;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.Due;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Head;
import rutbook.notebook.Notebook;
import rutbook.notebook.ServiceId;
import rutbook.notebook.ServiceItem;
import rutbook.notebook.ServiceKind;
import rutbook.notebook.Timeline;

class ServiceBoardTest {
  private static final LocalDate DAY = Bench.SPRING.plusDays(1);

  private static Notebook read(Notebook notebook, int afterDays, String hours) {
    Head head =
        Head.of(new EntryId("read-" + afterDays), Bench.BIKE, DAY.plusDays(afterDays), 0)
            .withMeter(Optional.of(Bench.hours(hours)));
    return notebook.with(new Entry.Adjusted(head, List.of()));
  }

  private static ServiceBoard board(Notebook notebook, int afterDays) {
    return ServiceBoard.of(Timeline.of(notebook, Bench.BIKE), DAY.plusDays(afterDays));
  }

  @Test
  void aBikeWithoutReadingsHasNoPaceAndNoForecast() {
    ServiceBoard board = board(Bench.notebook(), 3);
    assertThat(board.hoursPerWeek()).isEmpty();
    assertThat(board.lines())
        .allSatisfy(
            line -> {
              assertThat(line.hoursSince()).isZero();
              assertThat(line.everDone()).isFalse();
              assertThat(line.forecast()).isEmpty();
            });
  }

  @Test
  void theDayIsForecastFromTheRidersOwnHoursPerWeek() {
    Notebook notebook = read(read(read(Bench.notebook(), 0, "10"), 7, "12.5"), 28, "18");
    notebook =
        notebook.with(
            new Entry.Serviced(
                Head.of(new EntryId("oil"), Bench.BIKE, DAY.plusDays(7), 1),
                List.of(new ServiceId("fork-oil")),
                ""));
    ServiceBoard board = board(notebook, 30);
    assertThat(board.hoursPerWeek().orElseThrow()).isCloseTo(2.0, within(1e-12));
    ServiceLine fork = board.lines().get(0);
    assertThat(fork.hoursSince()).isCloseTo(5.5, within(1e-12));
    assertThat(fork.left()).isCloseTo(24.5, within(1e-12));
    assertThat(fork.everDone()).isTrue();
    assertThat(fork.due()).isEqualTo(Due.NOT_YET);
    // 24.5 h at 2 h a week are 85.75 days.
    assertThat(fork.forecast()).contains(DAY.plusDays(30 + 86));
    ServiceLine shock = board.lines().get(1);
    assertThat(shock.everDone()).isFalse();
    assertThat(shock.hoursSince()).isCloseTo(18, within(1e-12));
  }

  @Test
  void anOldSeasonDoesNotSlowThePace() {
    Notebook notebook = read(read(read(Bench.notebook(), 0, "1"), 200, "11"), 200 + 14, "17");
    assertThat(board(notebook, 215).hoursPerWeek().orElseThrow()).isCloseTo(3, within(1e-12));
  }

  @Test
  void aMeterThatWasChangedGoesOnCounting() {
    Notebook notebook = read(Bench.notebook(), 0, "28");
    notebook =
        notebook.with(
            new Entry.MeterChange(
                Head.of(new EntryId("meter"), Bench.BIKE, DAY.plusDays(3), 0),
                Bench.hours("29"),
                Bench.hours("0")));
    ServiceLine fork = board(read(notebook, 10, "2"), 10).lines().get(0);
    assertThat(fork.hoursSince()).isCloseTo(31, within(1e-12));
    assertThat(fork.due()).isEqualTo(Due.DUE);
    assertThat(fork.forecast()).isEmpty();
  }

  @Test
  void aClockBeforeTheFirstSheetStillHasABoard() {
    assertThat(board(Bench.notebook(), -400).lines()).hasSize(2);
  }

  /** A week of readings is a pace, six days are none; and what was not ridden is none. */
  @Test
  void aPaceWantsAWeekAndHours() {
    assertThat(board(read(read(Bench.notebook(), 0, "10"), 7, "12"), 7).hoursPerWeek()).hasValue(2);
    assertThat(board(read(read(Bench.notebook(), 0, "10"), 6, "12"), 6).hoursPerWeek()).isEmpty();
    assertThat(board(read(read(Bench.notebook(), 0, "10"), 7, "10"), 7).hoursPerWeek()).isEmpty();
  }

  /** 30 hours at one a week are 210 days; what is due now or in six years has no day. */
  @Test
  void aForecastIsOfWhatComesInTheYearsAhead() {
    Notebook due = read(read(Bench.notebook(), 0, "29"), 7, "30");
    assertThat(board(due, 7).lines().get(0).left()).isZero();
    assertThat(board(due, 7).lines().get(0).forecast()).isEmpty();
    Notebook slow = read(read(Bench.notebook(), 0, "0"), 7, "0.1");
    assertThat(board(slow, 7).hoursPerWeek().orElseThrow()).isCloseTo(0.1, within(1e-12));
    assertThat(board(slow, 7).lines().get(0).forecast()).isEmpty();
    Notebook weekly = read(read(Bench.notebook(), 0, "0"), 7, "1");
    assertThat(board(weekly, 7).lines().get(0).forecast()).contains(DAY.plusDays(7 + 29 * 7));
  }

  @Test
  void aLineIsFoundByItsItem() {
    ServiceBoard board = board(Bench.notebook(), 3);
    for (ServiceLine line : board.lines()) {
      assertThat(board.line(line.item())).contains(line);
    }
    ServiceItem other =
        new ServiceItem(
            new ServiceId("linkage"),
            "Linkage",
            End.REAR,
            ServiceKind.LINKAGE,
            Bench.hours("30"),
            true);
    assertThat(board.line(other)).isEmpty();
  }
}
