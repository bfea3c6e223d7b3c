package rutbook.ui;

import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.testfx.util.WaitForAsyncUtils;
import rutbook.edit.Editor;
import rutbook.notebook.Entry;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookId;
import rutbook.notebook.Timeline;
import rutbook.samples.Samples;
import rutbook.units.Display;
import rutbook.words.FileWords;
import rutbook.words.Language;
import rutbook.words.Phrases;

/**
 * Takes pictures of each page, theme and size, empty and full, into {@code target/pictures}. With
 * words as arguments only those whose name holds them all, with "german" in German; with "readme"
 * those that README shows.
 */
public final class Pictures {
  private static final File FOLDER = new File("target/pictures");
  private static final LocalDate TODAY = LocalDate.of(2026, 10, 17);

  /** How a picture is taken: size of window, theme, size of text. */
  record Take(int width, int height, Theme theme, TextSize text, Language language) {
    Take(int width, int height, Theme theme, TextSize text) {
      this(width, height, theme, text, Language.ENGLISH);
    }

    Take in(Language spoken) {
      return new Take(width, height, theme, text, spoken);
    }

    String name() {
      String size = width + "x" + height;
      String letters = text == TextSize.NORMAL ? "" : "-" + text.name().toLowerCase(Locale.ROOT);
      String spoken = language == Language.ENGLISH ? "" : "-" + language.tag();
      return theme.name().toLowerCase(Locale.ROOT) + "-" + size + letters + spoken;
    }
  }

  /** Something to look at, and the way there from a window that was just opened. */
  record View(String name, Notebook notebook, Consumer<Shown> way) {}

  /** An open window, with what the tool touches. */
  record Shown(Window window, Scene scene, InMemory outside) {
    void go(Place place) {
      window.go(place);
    }

    void touch(String... ids) {
      for (String id : ids) {
        layOut();
        Node node = scene.lookup("#" + id);
        if (node instanceof ButtonBase key) {
          key.fire();
        }
      }
      layOut();
    }

    private void layOut() {
      scene.getRoot().applyCss();
      scene.getRoot().layout();
    }
  }

  private Pictures() {}

  public static void main(String[] arguments) throws IOException {
    Platform.startup(() -> {});
    Platform.setImplicitExit(false);
    if (List.of(arguments).equals(List.of("readme"))) {
      forTheReadme();
    } else {
      List<String> words = new java.util.ArrayList<>(List.of(arguments));
      takeAll(words.remove("german") ? Language.GERMAN : Language.ENGLISH, words);
    }
    Platform.exit();
  }

  private static void takeAll(Language language, List<String> wanted) throws IOException {
    FOLDER.mkdirs();
    for (View view : views()) {
      for (Take take : takes(view)) {
        String name = view.name() + "-" + take.in(language).name();
        if (wanted.stream().allMatch(name::contains)) {
          take(view, take.in(language), new File(FOLDER, name + ".png"));
        }
      }
    }
  }

  /** The pictures that README shows, which are kept with the sources. */
  private static void forTheReadme() throws IOException {
    File kept = new File("src/site/pictures");
    kept.mkdirs();
    Take small = new Take(1024, 640, Theme.LIGHT, TextSize.NORMAL);
    Take usual = new Take(1280, 800, Theme.LIGHT, TextSize.NORMAL);
    take(view("season-session"), small, new File(kept, "session.png"));
    take(view("bench-fill"), small, new File(kept, "bench.png"));
    take(view("empty-bike-start-2"), small, new File(kept, "start.png"));
    Take tall = new Take(1280, 900, Theme.LIGHT, TextSize.NORMAL);
    take(view("season-feel"), tall, new File(kept, "feel.png"));
    take(view("next"), usual, new File(kept, "next.png"));
  }

  private static View view(String name) {
    return views().stream().filter(view -> view.name().equals(name)).findFirst().orElseThrow();
  }

  private static List<Take> takes(View view) {
    List<Take> takes = new java.util.ArrayList<>();
    int[][] sizes = {{1024, 640}, {1280, 800}, {1600, 1000}};
    for (int[] size : sizes) {
      for (Theme theme : Theme.values()) {
        takes.add(new Take(size[0], size[1], theme, TextSize.NORMAL));
      }
    }
    if (view.name().startsWith("season")) {
      takes.add(new Take(1024, 640, Theme.LIGHT, TextSize.SMALL));
      takes.add(new Take(1024, 640, Theme.LIGHT, TextSize.LARGE));
      takes.add(new Take(1280, 800, Theme.SUN, TextSize.LARGEST));
    }
    return takes;
  }

  /** One of each page, and the page of a session. */
  static List<View> ofEveryPage() {
    Notebook season = Samples.season();
    List<View> views = new java.util.ArrayList<>();
    for (Pages.OnRail page : Pages.RAIL) {
      views.add(new View("page-" + page.name(), season, shown -> shown.go(page.place())));
    }
    Place latest = latest(season).orElseThrow();
    views.add(new View("page-session", season, shown -> shown.go(latest)));
    return views;
  }

  static List<View> views() {
    List<View> views = new java.util.ArrayList<>();
    Map<String, Notebook> notebooks = new LinkedHashMap<>();
    notebooks.put("empty", Notebook.empty(new NotebookId("empty")));
    notebooks.put("first-day", Samples.firstDay());
    notebooks.put("season", Samples.season());
    notebooks.put("split-fork", Samples.splitFork());
    for (Map.Entry<String, Notebook> each : notebooks.entrySet()) {
      views.add(new View(each.getKey() + "-log", each.getValue(), shown -> {}));
      views.add(session(each.getKey() + "-compare", each, new Place.Compare()));
      latest(each.getValue())
          .ifPresent(place -> views.add(session(each.getKey() + "-session", each, place)));
    }
    Notebook season = notebooks.get("season");
    Place latest = latest(season).orElseThrow();
    Map<String, String[]> sides = new LinkedHashMap<>();
    sides.put("feel", new String[] {"section-CORNER_ENTRY", "symptom-DIVES", "severity-2"});
    sides.put("changes", new String[] {"tab-changes"});
    sides.put("laps", new String[] {"tab-laps"});
    sides.put("notes", new String[] {"tab-notes"});
    sides.put("grid", new String[] {"tab-grid"});
    sides.put("start", new String[] {"chain-start"});
    sides.put("check", new String[] {"session-check"});
    sides.put("count", new String[] {"session-check", "count-fork-compression-RIGHT"});
    sides.put("strip-open", new String[] {"strip-fold"});
    for (Map.Entry<String, String[]> side : sides.entrySet()) {
      views.add(
          new View(
              "season-" + side.getKey(),
              season,
              shown -> {
                shown.go(latest);
                shown.touch(side.getValue());
              }));
    }
    views.add(
        new View(
            "season-unsaved",
            season,
            shown ->
                ((Notices) shown.scene().lookup("#notices"))
                    .show(
                        new SaveLight.State.Failed(
                            "There is no room left on the disk for season.rutbook."))));
    views.add(
        new View(
            "season-slow-disk",
            season,
            shown ->
                ((Notices) shown.scene().lookup("#notices"))
                    .show(
                        new SaveLight.State.Waiting(
                            Optional.of(
                                new FileWords(Phrases.english(Display.METRIC), ZoneOffset.UTC)
                                    .slow())))));
    views.add(new View("season-new", season, shown -> shown.touch("log-new")));
    views.add(
        new View(
            "season-new-start",
            season,
            shown -> {
              shown.touch("log-new");
              Node track = shown.scene().lookup("#new-track");
              ((javafx.scene.control.ComboBox<?>) track).getEditor().setText("Hazel Pit");
              shown.touch("new-start-with");
            }));
    views.add(
        new View(
            "season-compare-over-time",
            season,
            shown -> {
              shown.go(new Place.Compare());
              shown.touch("compare-season-key");
            }));
    views.add(
        new View(
            "season-compare-list",
            season,
            shown -> {
              shown.go(new Place.Compare());
              shown.touch("compare-to");
            }));
    views.addAll(BenchViews.all());
    views.addAll(BikePictures.views(notebooks));
    views.addAll(CoachPictures.views());
    views.addAll(RiddenSuggestions.views());
    views.add(new View("season-shortcuts", season, shown -> shown.go(new Place.Shortcuts())));
    return views;
  }

  private static View session(String name, Map.Entry<String, Notebook> of, Place place) {
    return new View(name, of.getValue(), shown -> shown.go(place));
  }

  private static java.util.Optional<Place> latest(Notebook notebook) {
    return notebook.bikes().stream()
        .findFirst()
        .flatMap(bike -> Timeline.of(notebook, bike.id()).latest(Entry.Session.class))
        .map(session -> new Place.Session(session.id()));
  }

  static void take(View view, Take take, File file) throws IOException {
    Stage stage = open(view, take);
    WritableImage image =
        WaitForAsyncUtils.waitForAsyncFx(60_000, () -> stage.getScene().snapshot(null));
    write(image, file);
    WaitForAsyncUtils.waitForAsyncFx(60_000, stage::hide);
  }

  /** A window that shows the view, laid out, to be hidden by who asked. */
  static Stage open(View view, Take take) {
    Stage[] stage = new Stage[1];
    WaitForAsyncUtils.waitForAsyncFx(
        60_000,
        () -> {
          stage[0] = new Stage();
          WindowMemory.Look look =
              new WindowMemory.Look(
                  take.theme(),
                  java.util.Optional.of(take.language()),
                  take.text().percent(),
                  java.util.Optional.of(
                      new WindowMemory.Bounds(0, 0, take.width(), take.height(), false)));
          InMemory outside = new InMemory();
          Window window =
              Window.start(
                  stage[0], StandIns.services(new Editor(view.notebook()), TODAY, look, outside));
          Shown shown = new Shown(window, stage[0].getScene(), outside);
          shown.touch();
          view.way().accept(shown);
        });
    WaitForAsyncUtils.waitForFxEvents();
    return stage[0];
  }

  private static void write(WritableImage image, File file) throws IOException {
    int width = (int) image.getWidth();
    int height = (int) image.getHeight();
    int[] pixels = new int[width * height];
    image
        .getPixelReader()
        .getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), pixels, 0, width);
    BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    picture.setRGB(0, 0, width, height, pixels, 0, width);
    ImageIO.write(picture, "png", file);
  }
}
