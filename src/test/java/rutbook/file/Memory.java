package rutbook.file;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** What a forgetful disk holds, what of it is forced, and all that may be left of it. */
final class Memory {

  /** Bytes of one file, forced and as the running program sees them. */
  static final class Node {
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
  static final class Names {
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

  final Map<Path, Names> folders = new LinkedHashMap<>();

  void addFolder(Path folder) {
    folders.put(folder, new Names());
    folders.get(folder).forcedInParent = true;
  }

  void put(Path file, byte[] bytes, Instant modified) {
    Node node = new Node();
    node.forced = bytes;
    node.now = bytes;
    node.modified = modified;
    Names names = folders.get(file.getParent());
    names.forced = names.now();
    names.since.clear();
    names.forced.put(name(file), node);
  }

  void remove(Path file) {
    Names names = folders.get(file.getParent());
    names.forced = names.now();
    names.since.clear();
    names.forced.remove(name(file));
  }

  /** Every memory that may be left by a power cut. */
  List<Memory> afterPowerCut() {
    List<Path> paths = List.copyOf(folders.keySet());
    List<Node> dirty = new ArrayList<>();
    folders.values().forEach(names -> collectDirty(names, dirty));
    List<Memory> found = new ArrayList<>();
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

  private Memory left(List<Path> paths, List<Node> dirty, int[] choice) {
    Memory left = new Memory();
    for (int i = 0; i < paths.size(); i++) {
      Path folder = paths.get(i);
      Names names = folders.get(folder);
      if (choice[i] == 0 && !names.forcedInParent) {
        continue;
      }
      left.addFolder(folder);
      names
          .after(choice[i])
          .forEach(
              (name, node) -> {
                int at = dirty.indexOf(node);
                Path file = folder.resolve(name);
                left.put(
                    file, at < 0 ? node.now : node.left(choice[paths.size() + at]), node.modified);
              });
    }
    return left;
  }

  static String name(Path file) {
    return file.getFileName().toString();
  }
}
