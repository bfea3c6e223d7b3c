package rutbook.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * How the rider likes the window, and which notebooks were open lately.
 *
 * @param theme its name; empty for the program's own choice
 * @param language its tag; empty for the system's
 * @param textPercent size of the text, 75 to 250 % of the usual
 * @param bounds where the window was, if known
 * @param recent paths of notebooks, the latest first, at most {@value #MOST_RECENT}
 */
public record WindowSettings(
    String theme, String language, int textPercent, Optional<Bounds> bounds, List<String> recent) {
  public static final int SMALLEST_TEXT = 75;
  public static final int LARGEST_TEXT = 250;
  public static final int MOST_RECENT = 10;

  /**
   * Place and size on the screen, in its own units.
   *
   * @param width at least 1
   * @param height at least 1
   * @param maximised the other four are then those to go back to
   */
  public record Bounds(int x, int y, int width, int height, boolean maximised) {
    public Bounds {
      if (width < 1 || height < 1) {
        throw new IllegalArgumentException("a window of " + width + " by " + height);
      }
    }
  }

  public WindowSettings {
    if (textPercent < SMALLEST_TEXT || textPercent > LARGEST_TEXT) {
      throw new IllegalArgumentException("text at " + textPercent + " %");
    }
    if (recent.size() > MOST_RECENT) {
      throw new IllegalArgumentException(recent.size() + " recent notebooks");
    }
    recent = List.copyOf(recent);
  }

  /** Before anything was chosen. */
  public static WindowSettings unset() {
    return new WindowSettings("", "", 100, Optional.empty(), List.of());
  }

  public WindowSettings withTheme(String name) {
    return new WindowSettings(name, language, textPercent, bounds, recent);
  }

  public WindowSettings withLanguage(String tag) {
    return new WindowSettings(theme, tag, textPercent, bounds, recent);
  }

  /** With the nearest size that is allowed. */
  public WindowSettings withTextPercent(int percent) {
    int held = Math.max(SMALLEST_TEXT, Math.min(LARGEST_TEXT, percent));
    return new WindowSettings(theme, language, held, bounds, recent);
  }

  public WindowSettings withBounds(Bounds now) {
    return new WindowSettings(theme, language, textPercent, Optional.of(now), recent);
  }

  /** With this notebook as the latest. */
  public WindowSettings opened(String notebook) {
    List<String> paths = new ArrayList<>(recent);
    paths.remove(notebook);
    paths.add(0, notebook);
    return withRecent(paths.subList(0, Math.min(MOST_RECENT, paths.size())));
  }

  /** Without this notebook, for instance because it is gone. */
  public WindowSettings forgotten(String notebook) {
    return withRecent(recent.stream().filter(path -> !path.equals(notebook)).toList());
  }

  private WindowSettings withRecent(List<String> paths) {
    return new WindowSettings(theme, language, textPercent, bounds, paths);
  }

  /** From names and values; what makes no sense is as if it were not there. */
  public static WindowSettings from(Map<String, String> stored) {
    WindowSettings settings =
        unset()
            .withTheme(stored.getOrDefault("theme", ""))
            .withLanguage(stored.getOrDefault("language", ""))
            .withTextPercent(whole(stored, "text.percent").orElse(100));
    Optional<Bounds> bounds = storedBounds(stored);
    settings = bounds.isPresent() ? settings.withBounds(bounds.get()) : settings;
    for (int i = MOST_RECENT; i >= 1; i--) {
      String path = stored.getOrDefault("recent." + i, "");
      settings = path.isBlank() ? settings : settings.opened(path);
    }
    return settings;
  }

  private static Optional<Bounds> storedBounds(Map<String, String> stored) {
    Optional<Integer> x = whole(stored, "window.x");
    Optional<Integer> y = whole(stored, "window.y");
    Optional<Integer> width = whole(stored, "window.width").filter(it -> it > 0);
    Optional<Integer> height = whole(stored, "window.height").filter(it -> it > 0);
    if (x.isEmpty() || y.isEmpty() || width.isEmpty() || height.isEmpty()) {
      return Optional.empty();
    }
    boolean maximised = Boolean.parseBoolean(stored.get("window.maximised"));
    return Optional.of(new Bounds(x.get(), y.get(), width.get(), height.get(), maximised));
  }

  private static Optional<Integer> whole(Map<String, String> stored, String name) {
    try {
      return Optional.of(Integer.parseInt(stored.getOrDefault(name, "").strip()));
    } catch (NumberFormatException rubbish) {
      return Optional.empty();
    }
  }

  /** As names and values; {@link #from} gives the same settings back. */
  public Map<String, String> asMap() {
    Map<String, String> map = new TreeMap<>();
    map.put("theme", theme);
    map.put("language", language);
    map.put("text.percent", String.valueOf(textPercent));
    bounds.ifPresent(
        it -> {
          map.put("window.x", String.valueOf(it.x()));
          map.put("window.y", String.valueOf(it.y()));
          map.put("window.width", String.valueOf(it.width()));
          map.put("window.height", String.valueOf(it.height()));
          map.put("window.maximised", String.valueOf(it.maximised()));
        });
    for (int i = 0; i < recent.size(); i++) {
      map.put("recent." + (i + 1), recent.get(i));
    }
    return map;
  }
}
