package rutbook.bench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import rutbook.file.DurableFile;
import rutbook.file.NotebookFile;
import rutbook.file.RealDisk;
import rutbook.json.NotebookJson;
import rutbook.notebook.Entry;
import rutbook.notebook.Notebook;

/**
 * Opening and saving a notebook of ten thousand sessions beside Jackson alone: reading the same
 * bytes into a tree, and writing that tree and forcing it. By turns, on a real disk; medians by the
 * clock and by the processor, which other programs do not lengthen.
 */
public final class FileBench {
  private static final int SESSIONS = 10_000;
  private static final int WARM = 8;
  private static final int ROUNDS = 15;

  private final ObjectMapper mapper = new ObjectMapper();
  private final Path folder = Files.createTempDirectory("rutbook-file");
  private final Path path = folder.resolve("many.rutbook");
  private final Path plain = folder.resolve("plain.json");
  private final RealDisk disk = new RealDisk(System.getProperty("os.name"));
  private final DurableFile durable = new DurableFile(disk);

  /** Keeps what was made from being optimised away. */
  private volatile Object made;

  private FileBench() throws IOException {}

  public static void main(String[] arguments) throws IOException {
    int sessions = arguments.length > 0 ? Integer.parseInt(arguments[0]) : SESSIONS;
    new FileBench().run(ManySessions.of(sessions, 1));
  }

  /** One thing done once. */
  private interface Work {
    void run() throws IOException;
  }

  private record Spent(double wall, double cpu) {}

  private void run(Notebook notebook) throws IOException {
    byte[] bytes = NotebookJson.write(notebook);
    Files.write(path, bytes);
    System.out.printf(
        "%d entries, %.1f MiB%n", notebook.entries().size(), bytes.length / 1048576.0);
    compare("open", this::open, () -> sink(mapper.readTree(Files.readAllBytes(path))));
    JsonNode tree = mapper.readTree(bytes);
    NotebookFile file =
        NotebookFile.open(disk, durable, path, Clock.systemUTC()).result().orElseThrow().file();
    int[] edits = {0};
    compare(
        "save",
        () -> {
          Entry last = notebook.entries().get(notebook.entries().size() - 1);
          Notebook edited = notebook.with(last.with(last.head().withNote("edit " + edits[0]++)));
          file.save(NotebookJson.write(edited)).result().orElseThrow();
        },
        () -> force(mapper.writerWithDefaultPrettyPrinter().writeValueAsBytes(tree)));
    file.close();
  }

  private void open() throws IOException {
    NotebookFile.Opened opened =
        NotebookFile.open(disk, durable, path, Clock.systemUTC()).result().orElseThrow();
    sink(NotebookJson.read(opened.bytes()));
    opened.file().close();
  }

  private void force(byte[] bytes) throws IOException {
    try (FileChannel out =
        FileChannel.open(
            plain,
            StandardOpenOption.CREATE,
            StandardOpenOption.TRUNCATE_EXISTING,
            StandardOpenOption.WRITE)) {
      ByteBuffer buffer = ByteBuffer.wrap(bytes);
      while (buffer.hasRemaining()) {
        out.write(buffer);
      }
      out.force(true);
    }
  }

  private static void compare(String name, Work ours, Work jackson) throws IOException {
    List<Spent> mine = new ArrayList<>();
    List<Spent> theirs = new ArrayList<>();
    for (int i = 0; i < WARM + ROUNDS; i++) {
      Spent us = spent(ours);
      Spent them = spent(jackson);
      if (i >= WARM) {
        mine.add(us);
        theirs.add(them);
      }
    }
    Spent a = median(mine);
    Spent b = median(theirs);
    System.out.printf(
        "%s: rutbook %.0f ms (cpu %.0f), jackson %.0f ms (cpu %.0f): ratio %.2f (cpu %.2f)%n",
        name, a.wall(), a.cpu(), b.wall(), b.cpu(), a.wall() / b.wall(), a.cpu() / b.cpu());
  }

  private static Spent spent(Work work) throws IOException {
    var threads = ManagementFactory.getThreadMXBean();
    long cpu = threads.getCurrentThreadCpuTime();
    long wall = System.nanoTime();
    work.run();
    return new Spent(
        (System.nanoTime() - wall) / 1e6, (threads.getCurrentThreadCpuTime() - cpu) / 1e6);
  }

  private static Spent median(List<Spent> all) {
    return new Spent(
        all.stream().mapToDouble(Spent::wall).sorted().toArray()[all.size() / 2],
        all.stream().mapToDouble(Spent::cpu).sorted().toArray()[all.size() / 2]);
  }

  private void sink(Object thing) {
    made = thing;
  }
}
