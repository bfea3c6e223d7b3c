import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Makes an image of the packaged program that needs no Java on the computer, and from it what is
 * installed: .deb on Linux, .msi on Windows, .dmg on macOS. The Java in it is linked from the JDK
 * this runs on and JavaFX; the program stays on the class path. Its class archive holds what is in
 * that Java, so that the image may stand anywhere; the .deb makes one of everything once it is
 * installed.
 *
 * <p>{@code java Image.java <the packaged folder> <the folder to make it in> <the version> <the
 * folder of this file>}
 */
public final class Image {
  private static final String MODULES =
      "javafx.controls,java.desktop,java.logging,jdk.charsets,jdk.localedata,jdk.unsupported";

  /** What JavaFX opens by itself when it runs, so that no tool finds it by looking. */
  private static final String LOADED_LATER = "libgtk-3-0, libgl1";

  private static final List<String> OPTIONS =
      List.of(
          "-Drutbook.home=$APPDIR",
          "-XX:+UseSerialGC",
          "-XX:TieredStopAtLevel=1",
          "-Xlog:cds=off",
          "-Xshare:auto");

  private enum Computer {
    LINUX("deb", "png"),
    WINDOWS("msi", "ico"),
    MAC("dmg", "icns");

    private final String installer;
    private final String icon;

    Computer(String installer, String icon) {
      this.installer = installer;
      this.icon = icon;
    }

    static Computer here() {
      String name = System.getProperty("os.name").toLowerCase(Locale.ROOT);
      return name.startsWith("windows") ? WINDOWS : name.startsWith("mac") ? MAC : LINUX;
    }
  }

  private final Computer computer = Computer.here();
  private final Path folder;
  private final Path made;
  private final Path here;
  private final String version;

  private Image(Path folder, Path made, Path here, String version) {
    this.folder = folder;
    this.made = made;
    this.here = here;
    this.version = version;
  }

  public static void main(String[] arguments) throws IOException, InterruptedException {
    Path folder = Path.of(arguments[0]).toRealPath();
    Path made = Path.of(arguments[1]).toAbsolutePath();
    Path here = Path.of(arguments[3]).toAbsolutePath();
    String version = arguments[2].replaceAll("-.*", "");
    delete(made);
    Files.createDirectories(made);
    new Image(folder, made, here, version).make();
  }

  private void make() throws IOException, InterruptedException {
    Path java = link();
    archive(java);
    Path image = image(java, staged());
    install(image);
    System.out.println("Made in " + made);
  }

  /** A Java with what the program needs and no more; its launcher stays, to make archives with. */
  private Path link() throws IOException, InterruptedException {
    Path java = made.resolve("java");
    run(
        made,
        tool("jlink"),
        "--module-path",
        folder.resolve("lib").resolve("javafx").toString(),
        "--add-modules",
        MODULES,
        "--strip-java-debug-attributes",
        "--no-header-files",
        "--no-man-pages",
        "--output",
        java.toString());
    return java;
  }

  /** In place of the archive that a JDK brings: of Java and JavaFX, which move with the image. */
  private void archive(Path java) throws IOException, InterruptedException {
    Path empty = Files.createDirectory(made.resolve("empty"));
    run(
        empty,
        java.resolve("bin").resolve("java").toString(),
        "-XX:+UseSerialGC",
        "-Xshare:dump",
        "-XX:SharedClassListFile=" + folder.resolveSibling("rutbook.classes"));
    Files.delete(empty);
  }

  /** The program's own jars and samples, without JavaFX, which is in the Java. */
  private Path staged() throws IOException {
    Path staged = Files.createDirectory(made.resolve("program"));
    copy(folder.resolve("lib"), staged, ".jar");
    copy(
        folder.resolve("sample-notebooks"),
        Files.createDirectory(staged.resolve("sample-notebooks")),
        ".rutbook");
    Files.copy(folder.resolve("LICENSE"), staged.resolve("LICENSE"));
    Files.copy(folder.resolveSibling("rutbook.classes"), staged.resolve("rutbook.classes"));
    return staged;
  }

  private Path image(Path java, Path staged) throws IOException, InterruptedException {
    List<String> command = jpackage("app-image");
    command.addAll(List.of("--runtime-image", java.toString(), "--input", staged.toString()));
    command.addAll(List.of("--main-jar", programJar(staged), "--main-class", "rutbook.app.Main"));
    OPTIONS.forEach(option -> command.addAll(List.of("--java-options", option)));
    run(made, command.toArray(String[]::new));
    return made.resolve(computer == Computer.MAC ? "Rutbook.app" : "Rutbook");
  }

  private void install(Path image) throws IOException, InterruptedException {
    List<String> command = jpackage(computer.installer);
    command.addAll(List.of("--app-image", image.toString()));
    command.addAll(List.of("--license-file", folder.resolve("LICENSE").toString()));
    command.addAll(List.of("--file-associations", association().toString()));
    if (computer == Computer.LINUX) {
      command.addAll(
          List.of(
              "--resource-dir",
              here.resolve("linux").toString(),
              "--linux-shortcut",
              "--linux-menu-group",
              "Sports;Utility",
              "--linux-deb-maintainer",
              "rutbook@localhost",
              "--linux-package-deps",
              LOADED_LATER));
    } else if (computer == Computer.WINDOWS) {
      command.addAll(
          List.of(
              "--win-menu",
              "--win-shortcut-prompt",
              "--win-dir-chooser",
              "--win-per-user-install"));
    }
    run(made, command.toArray(String[]::new));
  }

  private Path association() throws IOException {
    return Files.writeString(
        made.resolve("notebook.properties"),
        String.join(
            System.lineSeparator(),
            "extension=rutbook",
            "mime-type=application/x-rutbook",
            "description=Rutbook notebook",
            "icon=" + icon().toString().replace('\\', '/')));
  }

  private List<String> jpackage(String type) {
    return new ArrayList<>(
        List.of(
            tool("jpackage"),
            "--type",
            type,
            "--name",
            "Rutbook",
            "--app-version",
            version,
            "--description",
            "A suspension notebook for off-road riders",
            "--vendor",
            "Rutbook",
            "--icon",
            icon().toString(),
            "--dest",
            made.toString()));
  }

  private Path icon() {
    return here.resolve("icons").resolve("rutbook." + computer.icon);
  }

  private static String programJar(Path staged) throws IOException {
    try (Stream<Path> jars = Files.list(staged)) {
      return jars.map(jar -> jar.getFileName().toString())
          .filter(name -> name.startsWith("rutbook-") && name.endsWith(".jar"))
          .findFirst()
          .orElseThrow();
    }
  }

  private static String tool(String name) {
    return Path.of(System.getProperty("java.home"), "bin", name).toString();
  }

  private static void copy(Path from, Path to, String ending) throws IOException {
    try (Stream<Path> files = Files.list(from)) {
      for (Path file : files.filter(each -> each.toString().endsWith(ending)).toList()) {
        Files.copy(file, to.resolve(file.getFileName()), StandardCopyOption.COPY_ATTRIBUTES);
      }
    }
  }

  private static void run(Path where, String... command) throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(command).directory(where.toFile()).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes());
    if (process.waitFor() != 0) {
      throw new IllegalStateException(String.join(" ", command) + System.lineSeparator() + said);
    }
  }

  private static void delete(Path folder) throws IOException {
    if (Files.exists(folder)) {
      try (Stream<Path> paths = Files.walk(folder)) {
        for (Path path : paths.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(path);
        }
      }
    }
  }
}
