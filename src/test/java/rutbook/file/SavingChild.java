package rutbook.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Random;

/**
 * A program of its own that opens a notebook and saves it over and over until it is killed. It
 * prints the number of a save only after that save was reported as done.
 */
final class SavingChild {
  private SavingChild() {}

  public static void main(String[] args) throws IOException {
    if (args.length > 1) {
      saveInPlace(Path.of(args[0]));
      return;
    }
    Disk disk = new RealDisk(System.getProperty("os.name"));
    Path path = Path.of(args[0]);
    Outcome<NotebookFile.Opened> outcome =
        NotebookFile.open(disk, new DurableFile(disk), path, Clock.systemUTC());
    if (outcome.fault().isPresent()) {
      System.out.println(outcome.fault().get());
      return;
    }
    NotebookFile.Opened opened = outcome.result().orElseThrow();
    int number = Page.number(opened.bytes()).orElseThrow();
    System.out.println("open " + number);
    Random sizes = new Random(number);
    while (true) {
      number++;
      Outcome<Saved> saved = opened.file().save(Page.of(number, 1 + sizes.nextInt(400_000)));
      if (saved.fault().isPresent()) {
        System.out.println(saved.fault().get());
        return;
      }
      System.out.println(number);
    }
  }

  /** How it must not be done: a test of the test. */
  private static void saveInPlace(Path file) throws IOException {
    int number = Page.number(Files.readAllBytes(file)).orElseThrow();
    System.out.println("open " + number);
    while (true) {
      number++;
      Files.write(file, Page.of(number, 400_000));
      System.out.println(number);
    }
  }
}
