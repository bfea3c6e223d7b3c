package rutbook.architecture;

import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import java.io.File;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.FileReader;
import java.io.FileWriter;
import java.io.RandomAccessFile;
import java.nio.channels.Channel;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.Year;
import java.time.YearMonth;
import java.time.ZonedDateTime;
import java.util.Calendar;
import java.util.Date;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ThreadLocalRandom;

/** What a call reaches for: the disk, the clock, chance, the end of the program, reflection. */
final class Forbidden {
  private static final List<Class<?>> DISK =
      List.of(
          Files.class,
          FileSystem.class,
          Channel.class,
          FileInputStream.class,
          FileOutputStream.class,
          FileReader.class,
          FileWriter.class,
          RandomAccessFile.class);

  private static final List<Class<?>> TIMES =
      List.of(
          Instant.class,
          LocalDate.class,
          LocalTime.class,
          LocalDateTime.class,
          ZonedDateTime.class,
          OffsetDateTime.class,
          Year.class,
          YearMonth.class);

  private static final Set<String> PATH_ON_DISK = Set.of("toRealPath", "register");
  private static final Set<String> ENDS = Set.of("exit", "halt", "addShutdownHook");
  private static final Set<String> PROCESS =
      Set.of(
          "getProperty", "setProperty", "getenv", "setOut", "setErr", "setIn", "out", "err", "in");
  private static final Set<String> LOOKS_UP =
      Set.of(
          "forName",
          "newInstance",
          "getMethod",
          "getMethods",
          "getDeclaredMethod",
          "getDeclaredMethods",
          "getField",
          "getFields",
          "getDeclaredField",
          "getDeclaredFields",
          "getConstructor",
          "getDeclaredConstructor",
          "getDeclaredConstructors",
          "getRecordComponents");

  private Forbidden() {}

  /** Reading, writing, asking whether something exists; naming a file is not. */
  static boolean touchesDisk(JavaAccess<?> access) {
    return DISK.stream().anyMatch(type -> owner(access).isAssignableTo(type))
        || owner(access).isAssignableTo(Path.class) && PATH_ON_DISK.contains(access.getName())
        || owner(access).isEquivalentTo(File.class) && !access.getName().equals("toPath");
  }

  /** A time that is asked of a clock which was handed in is fine. */
  static boolean readsClock(JavaAccess<?> access) {
    boolean asked = access.getName().equals("now") && !takes(access, Clock.class);
    return asked && TIMES.stream().anyMatch(owner(access)::isEquivalentTo)
        || owner(access).isEquivalentTo(Clock.class) && access.getName().startsWith("system")
        || isCall(access, System.class, Set.of("currentTimeMillis", "nanoTime"))
        || isCall(access, Date.class, Set.of("<init>")) && takesNothing(access)
        || isCall(access, Calendar.class, Set.of("getInstance"));
  }

  static boolean takesChance(JavaAccess<?> access) {
    return isCall(access, UUID.class, Set.of("randomUUID"))
        || isCall(access, Math.class, Set.of("random"))
        || isCall(access, Random.class, Set.of("<init>"))
        || isCall(access, SecureRandom.class, Set.of("<init>"))
        || owner(access).isEquivalentTo(ThreadLocalRandom.class);
  }

  static boolean endsProgram(JavaAccess<?> access) {
    return isCall(access, System.class, ENDS) || isCall(access, Runtime.class, ENDS);
  }

  /** The process around the program: its streams, its environment, its properties. */
  static boolean readsProcess(JavaAccess<?> access) {
    return isCall(access, System.class, PROCESS);
  }

  static boolean looksUp(JavaAccess<?> access) {
    return isCall(access, Class.class, LOOKS_UP)
        || owner(access).getPackageName().startsWith("java.lang.reflect")
            && !access.getName().equals("<clinit>");
  }

  /** Text made for people: that is done by {@code words}, from its bundles. */
  static boolean makesSentences(JavaAccess<?> access) {
    return isCall(access, String.class, Set.of("format", "formatted"))
        || owner(access).getPackageName().equals("java.text") && makesText(owner(access))
        || owner(access).getPackageName().equals("java.time.format")
        || owner(access).isAssignableTo(java.util.ResourceBundle.class)
        || owner(access).isAssignableTo(java.util.Formatter.class);
  }

  private static boolean makesText(JavaClass type) {
    return type.isAssignableTo(java.text.Format.class);
  }

  private static boolean isCall(JavaAccess<?> access, Class<?> type, Set<String> names) {
    return owner(access).isEquivalentTo(type) && names.contains(access.getName());
  }

  private static boolean takes(JavaAccess<?> access, Class<?> parameter) {
    return access.getTarget() instanceof CodeUnitAccessTarget target
        && target.getRawParameterTypes().stream().anyMatch(type -> type.isEquivalentTo(parameter));
  }

  private static boolean takesNothing(JavaAccess<?> access) {
    return access.getTarget() instanceof CodeUnitAccessTarget target
        && target.getRawParameterTypes().isEmpty();
  }

  private static JavaClass owner(JavaAccess<?> access) {
    return access.getTargetOwner();
  }
}
