package rutbook.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CountDownLatch;
import java.util.function.IntConsumer;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Window;
import rutbook.app.StartedWindow;
import rutbook.notebook.Notebook;

/**
 * How long the window's thread is kept while a notebook of ten thousand sessions is typed in,
 * filtered, scrolled, edited and saved on a real disk. Per kind of action: the most time of the
 * processor between two frames, which other programs on the machine do not lengthen, and the
 * longest wait between two frames by the clock, which they do.
 */
public final class ManySessionsBench {
  private static final int SESSIONS = 10_000;

  private final Scene scene;
  private final List<Double> frames = new ArrayList<>();
  private final List<Double> waits = new ArrayList<>();

  private ManySessionsBench(Scene scene) {
    this.scene = scene;
  }

  public static void main(String[] arguments) throws IOException, InterruptedException {
    int sessions = arguments.length > 0 ? Integer.parseInt(arguments[0]) : SESSIONS;
    Notebook notebook = ManySessions.of(sessions, 1);
    Path folder = Files.createTempDirectory("rutbook-many");
    Platform.startup(() -> {});
    onTheThread(() -> StartedWindow.open(notebook, folder));
    ManySessionsBench[] bench = new ManySessionsBench[1];
    onTheThread(
        () -> {
          bench[0] = new ManySessionsBench(Window.getWindows().get(0).getScene());
          bench[0].watch();
        });
    bench[0].run();
    Runtime.getRuntime().halt(0);
  }

  private static void onTheThread(Runnable action) throws InterruptedException {
    CountDownLatch done = new CountDownLatch(1);
    Platform.runLater(
        () -> {
          try {
            action.run();
          } finally {
            done.countDown();
          }
        });
    done.await();
  }

  private static double cpuMillis() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() / 1e6;
  }

  private void watch() {
    new AnimationTimer() {
      private double cpu = cpuMillis();
      private long last = System.nanoTime();

      @Override
      public void handle(long frame) {
        double cpuNow = cpuMillis();
        long now = System.nanoTime();
        frames.add(cpuNow - cpu);
        waits.add((now - last) / 1e6);
        cpu = cpuNow;
        last = now;
      }
    }.start();
  }

  private void run() throws InterruptedException {
    Thread.sleep(3_000);
    String typed = "kicks braking";
    step("warming up", 40, i -> search().setText(typed.substring(0, i % typed.length())));
    step("typing in the search", 13, i -> search().setText(typed.substring(0, i + 1)));
    step("clearing it", 5, i -> search().setText(i % 2 == 0 ? "" : "dune"));
    onTheThread(() -> search().setText(""));
    step("filtering by kind and track", 8, this::filter);
    onTheThread(() -> filter(0));
    int rows = list().getItems().size();
    step("scrolling through all", 120, i -> list().scrollTo(rows * i / 120));
    step("opening a session, first", 1, this::open);
    step("going back and opening again", 9, this::open);
    edits();
    saving();
  }

  private TextField search() {
    return (TextField) scene.lookup("#log-search");
  }

  private ListView<?> list() {
    return (ListView<?>) scene.lookup("#log-list");
  }

  @SuppressWarnings("unchecked")
  private void filter(int turn) {
    ChoiceBox<Object> kinds = (ChoiceBox<Object>) scene.lookup("#log-kinds");
    ChoiceBox<Object> tracks = (ChoiceBox<Object>) scene.lookup("#log-tracks");
    kinds.setValue(kinds.getItems().get(turn % 2));
    tracks.setValue(tracks.getItems().get(turn / 2 % tracks.getItems().size()));
  }

  private void open(int turn) {
    Node back = scene.lookup("#session-back");
    if (back instanceof ButtonBase key) {
      key.fire();
      return;
    }
    list().getSelectionModel().select(2);
    list()
        .fireEvent(
            new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.ENTER, false, false, false, false));
  }

  /** Acts, lets frames pass, and tells the worst of them. */
  private void step(String name, int times, IntConsumer action) throws InterruptedException {
    onTheThread(
        () -> {
          frames.clear();
          waits.clear();
        });
    for (int i = 0; i < times; i++) {
      int turn = i;
      onTheThread(() -> action.accept(turn));
      Thread.sleep(60);
    }
    Thread.sleep(400);
    onTheThread(
        () ->
            System.out.printf(
                Locale.ROOT,
                "%-28s most of the processor in a frame %6.1f ms, longest wait %6.1f ms%n",
                name,
                frames.stream().mapToDouble(it -> it).max().orElse(0),
                waits.stream().mapToDouble(it -> it).max().orElse(0)));
  }

  /** From a touch to the end of the layout that shows what it did. */
  private void edits() throws InterruptedException {
    onTheThread(
        () -> {
          if (scene.lookup("#session-page") == null) {
            open(0);
          }
        });
    Thread.sleep(500);
    List<Double> times = new ArrayList<>();
    for (int i = 0; i < 400; i++) {
      int turn = i;
      onTheThread(
          () -> {
            double before = cpuMillis();
            ((ButtonBase) scene.lookup("#trust-" + (1 + turn % 10))).fire();
            scene.getRoot().applyCss();
            scene.getRoot().layout();
            times.add(cpuMillis() - before);
          });
    }
    List<Double> warm = times.subList(100, times.size()).stream().sorted().toList();
    System.out.printf(
        Locale.ROOT,
        "%-28s median %5.1f ms, p99 %5.1f ms, most %5.1f ms of the processor%n",
        "an edit until it is shown",
        warm.get(warm.size() / 2),
        warm.get(warm.size() * 99 / 100),
        warm.get(warm.size() - 1));
  }

  private void saving() throws InterruptedException {
    step(
        "saving while editing",
        120,
        i -> ((ButtonBase) scene.lookup("#trust-" + (1 + i % 10))).fire());
  }
}
