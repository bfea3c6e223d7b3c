package rutbook.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rutbook.file.ForgetfulDisk.Quirk;

class FaultLogTest {
  private static final Path FILE = ForgetfulDisk.FOLDER.resolve("log").resolve("rutbook.log");

  private final ForgetfulDisk disk = new ForgetfulDisk(Quirk.NONE);
  private final FaultLog log = new FaultLog(disk, FILE, new HandClock());

  private String text() {
    return new String(disk.bytes(FILE), StandardCharsets.UTF_8);
  }

  @Test
  void whatHappenedIsAddedWithItsTimeAndTrace() {
    assertThat(log.add("started").result()).contains(FILE);
    log.add("could not draw", new IllegalStateException("no ink"));

    assertThat(text().lines().limit(3))
        .containsExactly(
            "2026-05-03T10:15:00Z started",
            "2026-05-03T10:15:00Z could not draw",
            "java.lang.IllegalStateException: no ink");
    assertThat(text()).contains("\tat rutbook.file.FaultLogTest.");
  }

  @Test
  void theOldestLinesGoWhenItIsFull() {
    for (int i = 0; i < 40; i++) {
      log.add(i + " " + "x".repeat(10_000));
    }

    assertThat(disk.bytes(FILE)).hasSizeBetween(FaultLog.LIMIT - 11_000, FaultLog.LIMIT);
    assertThat(text().lines()).allMatch(line -> line.startsWith("2026-05-03T10:15:00Z "));
    assertThat(text()).contains("Z 39 x").doesNotContain("Z 13 x");
  }

  @Test
  void aLogThatCannotBeWrittenIsAFaultAndNoException() {
    disk.trouble(step -> Optional.of(new AccessDeniedException("no")));

    assertThat(log.add("started").fault()).contains(new FileFault.ReadOnly(FILE));
  }
}
