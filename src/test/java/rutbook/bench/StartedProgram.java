package rutbook.bench;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;

/**
 * A program that can be started as the packaged one is: the same machine, the same JavaFX and, when
 * it has one, its class archive. On the display there is, or without one.
 */
final class StartedProgram {
  private static final List<Class<?>> MEASURING =
      List.of(BareTable.class, FirstFrame.class, PackagedStart.class);

  private static final List<String> OPENED =
      List.of(
          "javafx.graphics/com.sun.glass.events",
          "javafx.graphics/com.sun.glass.ui",
          "javafx.graphics/com.sun.glass.ui.delegate",
          "javafx.graphics/com.sun.glass.utils",
          "javafx.graphics/com.sun.javafx.util",
          "javafx.base/com.sun.javafx.logging");

  private static final long MOST_SECONDS = 120;

  private final Place place;
  private final List<Path> classPath;
  private final Class<?> main;
  private final Optional<Path> archive;
  private final Path scratch;

  /** What one start took, with the most memory in KiB. */
  record Start(long millis, long cpuMillis, long memory) {}

  /**
   * Where the packaged program is.
   *
   * @param home what is told to it as such
   * @param jars the folder of its class path
   * @param java what runs it
   * @param modules how that finds JavaFX, where it does not bring it along
   */
  record Place(Path home, Path jars, Path java, List<String> modules) {
    /** The folder that packaging leaves, run by the Java that runs this, JavaFX from the folder. */
    static Place folder(Path folder) {
      Path lib = folder.resolve("lib");
      return new Place(
          folder,
          lib,
          Path.of(System.getProperty("java.home"), "bin", "java"),
          List.of(
              "--module-path",
              lib.resolve("javafx").toString(),
              "--add-modules",
              "javafx.controls"));
    }

    /** What is installed, run by the Java that comes with it and has JavaFX in it. */
    static Place image(Path image) {
      Path program = image.resolve("program");
      return new Place(program, program, image.resolve("java/bin/java"), List.of());
    }

    Path jar(String start) throws IOException {
      try (Stream<Path> all = Files.list(jars)) {
        return all.filter(jar -> jar.getFileName().toString().startsWith(start))
            .findFirst()
            .orElseThrow();
      }
    }
  }

  private StartedProgram(
      Place place, List<Path> classPath, Class<?> main, Optional<Path> archive, Path scratch) {
    this.place = place;
    this.classPath = classPath;
    this.main = main;
    this.archive = archive;
    this.scratch = scratch;
  }

  /** The packaged program, to be started with its sample as on a first day. */
  static StartedProgram packaged(Place place, Path scratch) throws IOException {
    return new StartedProgram(
        place,
        List.of(place.jars().resolve("*"), measuring(scratch)),
        PackagedStart.class,
        Optional.empty(),
        scratch);
  }

  /** The bare table with the theme and JavaFX of the packaged program. */
  static StartedProgram bare(Place place, Path scratch) throws IOException {
    return new StartedProgram(
        place,
        List.of(place.jar("atlantafx"), measuring(scratch)),
        BareTable.class,
        Optional.empty(),
        scratch);
  }

  /** The same with an archive that packaging made. */
  StartedProgram archived(Path archive) {
    return new StartedProgram(place, classPath, main, Optional.of(archive), scratch);
  }

  /** The same with an archive of its own, made as that of the packaged program is. */
  StartedProgram archived() throws IOException, InterruptedException {
    Path needed = scratch.resolve(main.getSimpleName() + ".classes");
    Path made = scratch.resolve(main.getSimpleName() + ".jsa");
    run(List.of("-XX:DumpLoadedClassList=" + needed), true);
    List<String> dump =
        new ArrayList<>(List.of("-Xshare:dump", "-XX:SharedClassListFile=" + needed));
    dump.add("-XX:SharedArchiveFile=" + made);
    new ProcessBuilder(command(dump, false)).redirectErrorStream(true).start().onExit().join();
    return archived(made);
  }

  /** One start, in a process of its own. */
  Start start() throws IOException, InterruptedException {
    List<String> more = new ArrayList<>();
    archive.ifPresent(it -> more.add("-XX:SharedArchiveFile=" + it));
    String[] told = run(more, true).split(" ");
    return new Start(Long.parseLong(told[1]), Long.parseLong(told[2]), Long.parseLong(told[3]));
  }

  private String run(List<String> more, boolean window) throws IOException, InterruptedException {
    ProcessBuilder builder = new ProcessBuilder(command(more, window));
    builder.environment().keySet().removeIf(key -> key.startsWith("XDG_"));
    builder.redirectError(ProcessBuilder.Redirect.DISCARD);
    Process process = builder.start();
    process
        .onExit()
        .completeOnTimeout(process, MOST_SECONDS, TimeUnit.SECONDS)
        .thenAccept(Process::destroyForcibly);
    String said =
        new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
    process.waitFor();
    if (!said.startsWith("started ")) {
      throw new IllegalStateException(main.getSimpleName() + " did not start: " + said);
    }
    return said;
  }

  private List<String> command(List<String> more, boolean window) {
    List<String> command = new ArrayList<>(List.of(place.java().toString()));
    command.addAll(List.of("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1"));
    command.addAll(more);
    // Linux tells when a process began only as well as it knows when it was started itself: to 1 s.
    command.add("-D" + FirstFrame.BORN + "=" + System.currentTimeMillis());
    command.add("-Duser.home=" + scratch);
    command.add("-Drutbook.home=" + place.home());
    command.add("-Djavafx.cachedir=" + scratch.resolve("javafx-cache"));
    command.addAll(place.modules());
    List<String> jars = new ArrayList<>(classPath.stream().map(Path::toString).toList());
    if (window && System.getenv("DISPLAY") == null) {
      command.addAll(
          List.of(
              "-Djava.awt.headless=true",
              "-Dglass.platform=Monocle",
              "-Dmonocle.platform=Headless",
              "-Dprism.order=sw",
              "-Dheadless.geometry=1280x800-32"));
      OPENED.forEach(each -> command.addAll(List.of("--add-exports", each + "=ALL-UNNAMED")));
      jars.add(noDisplay());
    }
    command.addAll(List.of("-cp", String.join(System.getProperty("path.separator"), jars)));
    if (window) {
      command.add(main.getName());
    }
    return command;
  }

  private static String noDisplay() {
    return Stream.of(
            System.getProperty("java.class.path").split(System.getProperty("path.separator")))
        .filter(jar -> jar.contains("monocle"))
        .findFirst()
        .orElseThrow();
  }

  /** The classes that measure, as a jar, since an archive takes no folders. */
  private static Path measuring(Path scratch) throws IOException {
    Path jar = scratch.resolve("measuring.jar");
    if (Files.exists(jar)) {
      return jar;
    }
    try (OutputStream file = Files.newOutputStream(jar);
        JarOutputStream entries = new JarOutputStream(file)) {
      for (Class<?> type : MEASURING) {
        for (String name : List.of(type.getSimpleName(), type.getSimpleName() + "$1")) {
          try (InputStream bytes = type.getResourceAsStream(name + ".class")) {
            if (bytes != null) {
              entries.putNextEntry(
                  new JarEntry(type.getPackageName().replace('.', '/') + "/" + name + ".class"));
              bytes.transferTo(entries);
            }
          }
        }
      }
    }
    return jar;
  }
}
