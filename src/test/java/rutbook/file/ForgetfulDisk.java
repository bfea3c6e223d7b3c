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
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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

  private final Quirk quirk;
  private final Memory memory;
  private final Map<Path, Path> links = new HashMap<>();
  private final Set<Path> locked = new HashSet<>();
  private final List<String> steps = new ArrayList<>();
  private int cutAt = Integer.MAX_VALUE;
  private boolean cut;
  private Function<String, Optional<IOException>> trouble = step -> Optional.empty();
  private long ticks;
  private boolean scanners;

  ForgetfulDisk(Quirk quirk) {
    this(quirk, new Memory());
    addFolder(FOLDER);
  }

  private ForgetfulDisk(Quirk quirk, Memory memory) {
    this.quirk = quirk;
    this.memory = memory;
  }

  /** Every disk that may be found when the power is back. */
  List<ForgetfulDisk> afterPowerCut() {
    return memory.afterPowerCut().stream()
        .map(left -> new ForgetfulDisk(Quirk.NONE, left))
        .toList();
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
    memory.put(file, bytes, tick());
  }

  void link(Path from, Path to) {
    links.put(from, to);
  }

  void remove(Path file) {
    memory.remove(file);
  }

  void addFolder(Path folder) {
    memory.addFolder(folder);
  }

  void removeFolder(Path folder) {
    memory.folders.remove(folder);
  }

  List<String> steps() {
    return List.copyOf(steps);
  }

  byte[] bytes(Path file) {
    Memory.Node node = memory.folders.get(file.getParent()).now().get(Memory.name(file));
    return node == null ? null : node.now;
  }

  List<String> names(Path folder) {
    return memory.folders.containsKey(folder)
        ? List.copyOf(memory.folders.get(folder).now().keySet())
        : List.of();
  }

  // What the program does to the disk.

  private void step(String what, Path on) throws IOException {
    if (cut || steps.size() + 1 >= cutAt) {
      cut = true;
      throw new PowerCut();
    }
    steps.add(what + " " + Memory.name(on));
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
    Memory.Names names = namesAround(file);
    if (names.now().containsKey(Memory.name(file))) {
      throw new FileAlreadyExistsException(file.toString());
    }
    Memory.Node node = new Memory.Node();
    node.modified = tick();
    names.since.add(map -> map.put(Memory.name(file), node));
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
    Memory.Node node = node(from);
    Memory.Names names = namesAround(to);
    Memory.Node old = names.now().get(Memory.name(to));
    if (quirk == Quirk.SAVES_IN_PLACE && old != null) {
      old.now = node.now;
      old.modified = tick();
      step("force", to);
      old.forced = old.now;
      names.since.add(map -> map.remove(Memory.name(from)));
      return;
    }
    names.since.add(
        map -> {
          map.remove(Memory.name(from));
          map.put(Memory.name(to), node);
        });
  }

  @Override
  public void forceFolder(Path folder) throws IOException {
    step("forceFolder", folder);
    Memory.Names names = memory.folders.get(folder);
    if (names == null) {
      throw new NoSuchFileException(folder.toString());
    }
    if (quirk != Quirk.IGNORES_FOLDER_FORCE) {
      names.forced = names.now();
      names.since.clear();
      memory.folders.forEach(
          (path, child) -> child.forcedInParent |= folder.equals(path.getParent()));
    }
  }

  @Override
  public void makeFolder(Path folder) throws IOException {
    step("makeFolder", folder);
    memory.folders.putIfAbsent(folder, new Memory.Names());
  }

  @Override
  public List<Path> list(Path folder) throws IOException {
    step("list", folder);
    if (!memory.folders.containsKey(folder)) {
      throw new NoSuchFileException(folder.toString());
    }
    Stream<Path> inside =
        memory.folders.keySet().stream().filter(path -> folder.equals(path.getParent()));
    return Stream.concat(names(folder).stream().map(folder::resolve), inside).toList();
  }

  @Override
  public void delete(Path file) throws IOException {
    step("delete", file);
    namesAround(file).since.add(map -> map.remove(Memory.name(file)));
  }

  @Override
  public Stat stat(Path file) throws IOException {
    step("stat", file);
    Memory.Node node = node(file);
    return new Stat(node.now.length, node.modified, "" + System.identityHashCode(node), true);
  }

  @Override
  public boolean exists(Path file) {
    return isFolder(file)
        || (memory.folders.containsKey(file.getParent())
            && memory.folders.get(file.getParent()).now().containsKey(Memory.name(file)));
  }

  @Override
  public boolean isFolder(Path path) {
    return memory.folders.containsKey(path);
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
    Memory.Node node = new Memory.Node();
    namesAround(file).since.add(map -> map.putIfAbsent(Memory.name(file), node));
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

  private Memory.Names namesAround(Path file) throws IOException {
    Memory.Names names = memory.folders.get(file.getParent());
    if (names == null) {
      throw new NoSuchFileException(file.toString());
    }
    return names;
  }

  private Memory.Node node(Path file) throws IOException {
    Memory.Node node = namesAround(file).now().get(Memory.name(file));
    if (node == null) {
      throw new NoSuchFileException(file.toString());
    }
    return node;
  }

  private Instant tick() {
    return Instant.EPOCH.plusSeconds(++ticks);
  }
}
