import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.jar.JarFile;
import java.util.stream.Stream;

/**
 * Makes the class-data archive of a packaged Rutbook, from which a virtual machine of the same
 * build maps its classes instead of reading and checking them. The program is rehearsed once
 * without a display to see which classes it needs; then they are dumped. Where that is not possible
 * there is no archive, which costs nothing but time at every start. The list of classes stays
 * beside the folder, for an image with its own Java.
 *
 * <p>{@code java ClassArchive.java <the packaged folder> <the jar of a display that is none>}
 */
public final class ClassArchive {
  /** Where a window is drawn when there is no display; only the rehearsal uses it. */
  private static final String NO_DISPLAY = "com/sun/glass/ui/monocle/";

  /** What a real window needs and the rehearsal does not. */
  private static final List<String> DISPLAYS =
      List.of(
          "com/sun/glass/ui/gtk/",
          "com/sun/glass/ui/win/",
          "com/sun/glass/ui/mac/",
          "com/sun/prism/es2/",
          "com/sun/prism/d3d/",
          "com/sun/prism/impl/ps/");

  private static final List<String> MACHINE =
      List.of("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1");
  private static final long MOST_SECONDS = 120;

  private final Path folder;
  private final Path noDisplay;
  private final Path scratch;

  private ClassArchive(Path folder, Path noDisplay, Path scratch) {
    this.folder = folder;
    this.noDisplay = noDisplay;
    this.scratch = scratch;
  }

  public static void main(String[] arguments) throws IOException, InterruptedException {
    Path folder = Path.of(arguments[0]).toRealPath();
    Path scratch = Files.createTempDirectory("rutbook-archive");
    try {
      new ClassArchive(folder, Path.of(arguments[1]), scratch).make();
    } finally {
      delete(scratch);
    }
  }

  private void make() throws IOException, InterruptedException {
    Path archive = folder.resolve("lib").resolve("rutbook.jsa");
    Path place = folder.resolve("lib").resolve("rutbook.jsa.place");
    Files.deleteIfExists(place);
    Files.deleteIfExists(archive);
    Path needed = folder.resolveSibling("rutbook.classes");
    Files.deleteIfExists(needed);
    if (!rehearse(needed) || !Files.exists(needed)) {
      none("the program could not be rehearsed");
      return;
    }
    Files.write(needed, classes(needed));
    if (!dump(needed, archive) || !Files.exists(archive)) {
      Files.deleteIfExists(archive);
      none("the classes could not be dumped");
      return;
    }
    Files.writeString(place, folder + System.lineSeparator());
  }

  private void none(String why) throws IOException {
    System.out.println(
        "No class archive: " + why + ". The program starts without it, more slowly.");
    for (String name : List.of("rehearsal", "dump")) {
      Path said = scratch.resolve(name);
      if (Files.exists(said)) {
        Files.readAllLines(said).stream().limit(20).forEach(System.out::println);
      }
    }
  }

  /** Starts the program on a display that is none, in a home of its own. */
  private boolean rehearse(Path needed) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of(java()));
    command.addAll(MACHINE);
    command.addAll(
        List.of(
            "-XX:DumpLoadedClassList=" + needed,
            "-Drutbook.home=" + folder,
            "-Duser.home=" + scratch,
            "-Djava.awt.headless=true",
            "-Dglass.platform=Monocle",
            "-Dmonocle.platform=Headless",
            "-Dheadless.geometry=1280x800-32",
            "-Dprism.order=sw",
            "-cp",
            classPath(jars(), jars("javafx"), noDisplay.toString()),
            "rutbook.app.Main",
            "--rehearse"));
    return run(command, "rehearsal");
  }

  private boolean dump(Path needed, Path archive) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of(java()));
    command.addAll(MACHINE);
    command.addAll(
        List.of(
            "-Xshare:dump",
            "-XX:SharedClassListFile=" + needed,
            "-XX:SharedArchiveFile=" + archive,
            "--module-path",
            folder.resolve("lib").resolve("javafx").toString(),
            "--add-modules",
            "javafx.controls",
            "-cp",
            jars()));
    return run(command, "dump");
  }

  /** The needed classes without those of the display that is none, and with those of a real one. */
  private List<String> classes(Path needed) throws IOException {
    Set<String> classes = new LinkedHashSet<>();
    for (String line : Files.readAllLines(needed)) {
      if (!line.contains(NO_DISPLAY)) {
        classes.add(line);
      }
    }
    try (Stream<Path> modules = Files.list(folder.resolve("lib").resolve("javafx"))) {
      for (Path module : modules.sorted().toList()) {
        try (JarFile jar = new JarFile(module.toFile())) {
          jar.stream()
              .map(entry -> entry.getName())
              .filter(name -> name.endsWith(".class"))
              .filter(name -> DISPLAYS.stream().anyMatch(name::startsWith))
              .map(name -> name.substring(0, name.length() - ".class".length()))
              .forEach(classes::add);
        }
      }
    }
    return List.copyOf(classes);
  }

  private boolean run(List<String> command, String name) throws IOException, InterruptedException {
    ProcessBuilder builder =
        new ProcessBuilder(command)
            .directory(scratch.toFile())
            .redirectErrorStream(true)
            .redirectOutput(scratch.resolve(name).toFile());
    Map<String, String> environment = builder.environment();
    environment
        .keySet()
        .removeIf(
            key -> key.startsWith("XDG_") || key.equals("APPDATA") || key.equals("LOCALAPPDATA"));
    Process process = builder.start();
    if (!process.waitFor(MOST_SECONDS, TimeUnit.SECONDS)) {
      process.destroyForcibly().waitFor();
      return false;
    }
    return process.exitValue() == 0;
  }

  /** As the script that starts the program names them: the order is the folder's. */
  private String jars(String... below) {
    Path lib = folder.resolve("lib");
    return Stream.of(below)
        .reduce(lib, Path::resolve, (one, other) -> other)
        .resolve("*")
        .toString();
  }

  private static String classPath(String... parts) {
    return String.join(System.getProperty("path.separator"), parts);
  }

  private static String java() {
    return Path.of(System.getProperty("java.home"), "bin", "java").toString();
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> paths = Files.walk(folder)) {
      for (Path path : paths.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }
}
