package rutbook.file;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A disk in memory that forgets what was not forced, as a power cut makes a real one forget: of the
 * unforced changes to a folder any first part survives, of each unforced file nothing, half or all.
 */
final class ForgetfulDisk implements Disk {
  static final Path FOLDER = Path.of("/rider").toAbsolutePath();

  /** Ways for a disk, or for a way of saving, to be bad. */
  enum Quirk {
    NONE,
    IGNORES_FILE_FORCE,
    IGNORES_FOLDER_FORCE,
    SAVES_IN_PLACE
  }

  /** The power is gone; nothing the program does reaches the disk from here on. */
  static final class PowerCut extends Error {
    private static final long serialVersionUID = 1L;
  }

  /** Bytes of one file, forced and as the running program sees them. */
  private static final class Node {
    byte[] forced = {};
    byte[] now = {};
    Instant modified = Instant.EPOCH;

    boolean dirty() {
      return !Arrays.equals(forced, now);
    }

    byte[] left(int choice) {
      return switch (choice) {
        case 0 -> forced;
        case 1 -> Arrays.copyOf(now, now.length / 2);
        default -> now;
      };
    }
  }

  /** Names in one folder, forced and what was done to them since. */
  private static final class Names {
    Map<String, Node> forced = new LinkedHashMap<>();
    List<Consumer<Map<String, Node>>> since = new ArrayList<>();

    /** Until then the folder itself may vanish, with all that was forced in it. */
    boolean forcedInParent;

    Map<String, Node> after(int changes) {
      Map<String, Node> names = new LinkedHashMap<>(forced);
      since.subList(0, changes).forEach(change -> change.accept(names));
      return names;
    }

    Map<String, Node> now() {
      return after(since.size());
    }
  }

  private final Quirk quirk;
  private final Map<Path, Names> folders = new LinkedHashMap<>();
  private final Map<Path, Path> links = new HashMap<>();
  private final Set<Path> locked = new HashSet<>();
  private final List<String> steps = new ArrayList<>();
  private int cutAt = Integer.MAX_VALUE;
  private boolean cut;
  private Function<String, Optional<IOException>> trouble = step -> Optional.empty();
  private long ticks;
  private boolean scanners;

  ForgetfulDisk(Quirk quirk) {
    this.quirk = quirk;
    addFolder(FOLDER);
  }

  // What a test does to the disk.

  void cutAt(int step) {
    cutAt = step;
  }

  /** From now on, every step is first shown to this; an exception makes it fail half done. */
  void trouble(Function<String, Optional<IOException>> trouble) {
    this.trouble = trouble;
  }

  void scannersHoldFiles(boolean scanners) {
    this.scanners = scanners;
  }

  /** Somebody else puts a file there, wholly and for good. */
  void put(Path file, byte[] bytes) {
    Node node = new Node();
    node.forced = bytes;
    node.now = bytes;
    node.modified = tick();
    Names names = folders.get(file.getParent());
    names.forced = names.now();
    names.since.clear();
    names.forced.put(name(file), node);
  }

  void link(Path from, Path to) {
    links.put(from, to);
  }

  void remove(Path file) {
    Names names = folders.get(file.getParent());
    names.forced = names.now();
    names.since.clear();
    names.forced.remove(name(file));
  }

  void addFolder(Path folder) {
    folders.put(folder, new Names());
    folders.get(folder).forcedInParent = true;
  }

  void removeFolder(Path folder) {
    folders.remove(folder);
  }

  List<String> steps() {
    return List.copyOf(steps);
  }

  byte[] bytes(Path file) {
    Node node = folders.get(file.getParent()).now().get(name(file));
    return node == null ? null : node.now;
  }

  List<String> names(Path folder) {
    return folders.containsKey(folder)
        ? List.copyOf(folders.get(folder).now().keySet())
        : List.of();
  }

  /** Every disk that may be found when the power is back. */
  List<ForgetfulDisk> afterPowerCut() {
    List<Path> paths = List.copyOf(folders.keySet());
    List<Node> dirty = new ArrayList<>();
    folders.values().forEach(names -> collectDirty(names, dirty));
    List<ForgetfulDisk> found = new ArrayList<>();
    int[] choice = new int[paths.size() + dirty.size()];
    do {
      found.add(left(paths, dirty, choice));
    } while (next(choice, paths, dirty));
    return found;
  }

  private static void collectDirty(Names names, List<Node> dirty) {
    for (int changes = 0; changes <= names.since.size(); changes++) {
      for (Node node : names.after(changes).values()) {
        if (node.dirty() && !dirty.contains(node)) {
          dirty.add(node);
        }
      }
    }
  }

  private boolean next(int[] choice, List<Path> paths, List<Node> dirty) {
    for (int i = 0; i < choice.length; i++) {
      int most = i < paths.size() ? folders.get(paths.get(i)).since.size() : 2;
      if (choice[i]++ < most) {
        return true;
      }
      choice[i] = 0;
    }
    return false;
  }

  private ForgetfulDisk left(List<Path> paths, List<Node> dirty, int[] choice) {
    ForgetfulDisk left = new ForgetfulDisk(Quirk.NONE);
    for (int i = 0; i < paths.size(); i++) {
      Path folder = paths.get(i);
      Names names = folders.get(folder);
      if (choice[i] == 0 && !names.forcedInParent) {
        continue;
      }
      left.folders.putIfAbsent(folder, new Names());
      names
          .after(choice[i])
          .forEach(
              (name, node) -> {
                int at = dirty.indexOf(node);
                Path file = folder.resolve(name);
                left.put(file, at < 0 ? node.now : node.left(choice[paths.size() + at]));
              });
    }
    return left;
  }

  // What the program does to the disk.

  private void step(String what, Path on) throws IOException {
    if (cut || steps.size() + 1 >= cutAt) {
      cut = true;
      throw new PowerCut();
    }
    steps.add(what + " " + name(on));
    Optional<IOException> failure = trouble.apply(what);
    if (failure.isPresent()) {
      throw failure.get();
    }
  }

  @Override
  public byte[] read(Path file, long limit) throws IOException {
    step("read", file);
    return node(file).now.clone();
  }

  @Override
  public Draft draft(Path file) throws IOException {
    step("draft", file);
    Names names = namesAround(file);
    if (names.now().containsKey(name(file))) {
      throw new FileAlreadyExistsException(file.toString());
    }
    Node node = new Node();
    node.modified = tick();
    names.since.add(map -> map.put(name(file), node));
    return new Draft() {
      @Override
      public void write(byte[] bytes) throws IOException {
        node.now = Arrays.copyOf(bytes, bytes.length / 2);
        step("write", file);
        node.now = bytes.clone();
        node.modified = tick();
      }

      @Override
      public void force() throws IOException {
        step("force", file);
        if (quirk != Quirk.IGNORES_FILE_FORCE) {
          node.forced = node.now;
        }
      }

      @Override
      public void close() throws IOException {
        step("close", file);
      }
    };
  }

  @Override
  public void copyAccess(Path from, Path to) throws IOException {
    step("access", to);
  }

  @Override
  public void moveOver(Path from, Path to) throws IOException {
    step("move", to);
    Node node = node(from);
    Names names = namesAround(to);
    Node old = names.now().get(name(to));
    if (quirk == Quirk.SAVES_IN_PLACE && old != null) {
      old.now = node.now;
      old.modified = tick();
      step("force", to);
      old.forced = old.now;
      names.since.add(map -> map.remove(name(from)));
      return;
    }
    names.since.add(
        map -> {
          map.remove(name(from));
          map.put(name(to), node);
        });
  }

  @Override
  public void forceFolder(Path folder) throws IOException {
    step("forceFolder", folder);
    Names names = folders.get(folder);
    if (names == null) {
      throw new NoSuchFileException(folder.toString());
    }
    if (quirk != Quirk.IGNORES_FOLDER_FORCE) {
      names.forced = names.now();
      names.since.clear();
      folders.forEach((path, child) -> child.forcedInParent |= folder.equals(path.getParent()));
    }
  }

  @Override
  public void makeFolder(Path folder) throws IOException {
    step("makeFolder", folder);
    folders.putIfAbsent(folder, new Names());
  }

  @Override
  public List<Path> list(Path folder) throws IOException {
    step("list", folder);
    if (!folders.containsKey(folder)) {
      throw new NoSuchFileException(folder.toString());
    }
    Stream<Path> inside = folders.keySet().stream().filter(path -> folder.equals(path.getParent()));
    return Stream.concat(names(folder).stream().map(folder::resolve), inside).toList();
  }

  @Override
  public void delete(Path file) throws IOException {
    step("delete", file);
    namesAround(file).since.add(map -> map.remove(name(file)));
  }

  @Override
  public Stat stat(Path file) throws IOException {
    step("stat", file);
    Node node = node(file);
    return new Stat(node.now.length, node.modified, "" + System.identityHashCode(node), true);
  }

  @Override
  public boolean exists(Path file) {
    return isFolder(file)
        || (folders.containsKey(file.getParent())
            && folders.get(file.getParent()).now().containsKey(name(file)));
  }

  @Override
  public boolean isFolder(Path path) {
    return folders.containsKey(path);
  }

  @Override
  public boolean isWritable(Path path) {
    return trouble.apply("isWritable").filter(AccessDeniedException.class::isInstance).isEmpty();
  }

  @Override
  public Path resolve(Path path) throws IOException {
    step("resolve", path);
    return links.getOrDefault(path, path);
  }

  @Override
  public Optional<Hold> lock(Path file) throws IOException {
    step("lock", file);
    if (!locked.add(file)) {
      return Optional.empty();
    }
    Node node = new Node();
    namesAround(file).since.add(map -> map.putIfAbsent(name(file), node));
    return Optional.of(
        () -> {
          locked.remove(file);
          delete(file);
        });
  }

  @Override
  public boolean scannersHoldFiles() {
    return scanners;
  }

  private Names namesAround(Path file) throws IOException {
    Names names = folders.get(file.getParent());
    if (names == null) {
      throw new NoSuchFileException(file.toString());
    }
    return names;
  }

  private Node node(Path file) throws IOException {
    Node node = namesAround(file).now().get(name(file));
    if (node == null) {
      throw new NoSuchFileException(file.toString());
    }
    return node;
  }

  private Instant tick() {
    return Instant.EPOCH.plusSeconds(++ticks);
  }

  private static String name(Path file) {
    return file.getFileName().toString();
  }
}
