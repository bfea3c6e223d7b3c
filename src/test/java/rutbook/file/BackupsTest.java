package rutbook.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import rutbook.file.ForgetfulDisk.Quirk;

class BackupsTest {
  private static final Path FILE = ForgetfulDisk.FOLDER.resolve("season.rut");
  private static final Path FOLDER = ForgetfulDisk.FOLDER.resolve("season.rut.backups");

  private final ForgetfulDisk disk = new ForgetfulDisk(Quirk.NONE);
  private final HandClock clock = new HandClock();
  private final Backups backups = new Backups(disk, new DurableFile(disk), FILE, clock);

  @Test
  void oneIsDueBeforeTheFirstSaveAndThenAtMostEveryTenMinutes() throws IOException {
    assertThat(backups.due()).isTrue();
    backups.keep(Page.of(1));
    assertThat(backups.due()).isFalse();
    clock.move(Backups.EVERY.minusSeconds(1));
    assertThat(backups.due()).isFalse();
    clock.move(Duration.ofSeconds(1));
    assertThat(backups.due()).isTrue();
  }

  @Test
  void aClockThatJumpsBackMakesOneDueAndTheOrderStays() throws IOException {
    backups.keep(Page.of(1));
    clock.move(Duration.ofDays(-3));
    assertThat(backups.due()).isTrue();
    backups.keep(Page.of(2));

    assertThat(backups.list())
        .extracting(backup -> backup.file().getFileName().toString())
        .containsExactly("000002-20260430T101500Z.rut", "000001-20260503T101500Z.rut");
    assertThat(backups.newestReadable(Page::readable)).contains(backups.list().get(0));
  }

  @Test
  void aSaveEveryTenMinutesKeepsTheLatestTwentyAndOneADay() throws IOException {
    for (int i = 1; i <= 6 * 24 * 3; i++) {
      backups.keep(Page.of(i));
      clock.move(Backups.EVERY);
    }
    List<Backup> kept = backups.list();

    assertThat(kept.stream().limit(20).map(Backup::number))
        .containsExactlyElementsOf(IntStream.iterate(432, n -> n - 1).limit(20).boxed().toList());
    assertThat(kept.stream().skip(20).map(Backup::time))
        .containsExactly(
            Instant.parse("2026-05-05T23:55:00Z"),
            Instant.parse("2026-05-04T23:55:00Z"),
            Instant.parse("2026-05-03T23:55:00Z"));
  }

  @Test
  void daysBeyondAMonthOfRidingGo() throws IOException {
    for (int i = 1; i <= 90; i++) {
      backups.keep(Page.of(i));
      clock.move(Duration.ofDays(1));
    }

    assertThat(backups.list()).hasSize(Backups.DAYS);
    assertThat(backups.list().get(0).number()).isEqualTo(90);
  }

  @Test
  void nothingIsRemovedWhenTheNewOneIsNotSafe() throws IOException {
    for (int i = 1; i <= 25; i++) {
      backups.keep(Page.of(i));
    }
    List<String> before = disk.names(FOLDER);
    for (String step : List.of("write", "force", "move")) {
      disk.trouble(at -> at.equals(step) ? Optional.of(new IOException("no")) : Optional.empty());
      assertThat(catchThrowable(() -> backups.keep(Page.of(99)))).isInstanceOf(IOException.class);
      assertThat(disk.names(FOLDER)).isEqualTo(before);
    }
  }

  @Test
  void oldOnesThatCannotBeRemovedStopNothing() throws IOException {
    disk.trouble(
        step ->
            step.equals("delete")
                ? Optional.of(new AccessDeniedException("no"))
                : Optional.empty());
    for (int i = 1; i <= 30; i++) {
      backups.keep(Page.of(i));
    }
    assertThat(backups.list()).hasSize(30);
    disk.trouble(step -> Optional.empty());
    backups.keep(Page.of(31));

    assertThat(backups.list()).hasSize(20);
  }

  @Test
  void otherFilesInTheFolderAreLeftAlone() throws IOException {
    backups.keep(Page.of(1));
    Path mine = FOLDER.resolve("before the big race.rut");
    Path noDay = FOLDER.resolve("000001-20261399T101500Z.rut");
    disk.put(mine, Page.of(5));
    disk.put(noDay, Page.of(5));
    for (int i = 2; i <= 30; i++) {
      backups.keep(Page.of(i));
    }

    assertThat(disk.bytes(mine)).isEqualTo(Page.of(5));
    assertThat(disk.bytes(noDay)).isEqualTo(Page.of(5));
    assertThat(backups.list()).hasSize(20);
  }

  @Test
  void theNewestThatCanBeReadIsOffered() throws IOException {
    for (int i = 1; i <= 3; i++) {
      backups.keep(Page.of(i));
      clock.move(Backups.EVERY);
    }
    disk.put(backups.list().get(0).file(), new byte[0]);

    assertThat(backups.newestReadable(Page::readable).orElseThrow().number()).isEqualTo(2);
    assertThat(backups.newestReadable(bytes -> false)).isEmpty();
  }

  @Test
  void withoutAFolderThereAreNone() {
    assertThat(backups.list()).isEmpty();
    assertThat(backups.newestReadable(Page::readable)).isEmpty();
  }

  @Test
  void aNotebookWithoutAnEndingHasBackupsWithoutOne() {
    String name = Backup.name(Path.of("season"), 7, Instant.parse("2026-05-03T10:15:00Z"));
    assertThat(name).isEqualTo("000007-20260503T101500Z");
    assertThat(Backup.from(Path.of(name)))
        .contains(new Backup(Path.of(name), 7, Instant.parse("2026-05-03T10:15:00Z")));
  }

  /**
   * Whatever the times: the latest twenty stay, and a day never loses its last backup too early.
   */
  @Property(seed = "20260503", tries = 300)
  void neitherTheLatestNorTheLastOfARecentDayGoes(
      @ForAll @Size(max = 120) List<@IntRange(max = 60 * 24 * 40) Integer> minutes) {
    List<Backup> newestFirst = new ArrayList<>();
    for (int i = 0; i < minutes.size(); i++) {
      Instant time = Instant.parse("2026-05-03T00:00:00Z").plusSeconds(60L * minutes.get(i));
      newestFirst.add(new Backup(Path.of("" + i), minutes.size() - i, time));
    }
    List<Backup> go = Backups.notNeeded(newestFirst);
    List<Backup> stay = newestFirst.stream().filter(backup -> !go.contains(backup)).toList();

    assertThat(stay).containsAll(newestFirst.stream().limit(Backups.NEWEST).toList());
    assertThat(stay).hasSizeLessThanOrEqualTo(Backups.NEWEST + Backups.DAYS);
    List<LocalDate> days =
        newestFirst.stream().map(BackupsTest::day).distinct().limit(Backups.DAYS).toList();
    for (LocalDate day : days) {
      Backup last =
          newestFirst.stream().filter(it -> day(it).equals(day)).findFirst().orElseThrow();
      assertThat(stay).contains(last);
    }
  }

  private static LocalDate day(Backup backup) {
    return LocalDate.ofInstant(backup.time(), ZoneOffset.UTC);
  }
}
