package rutbook.app;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rutbook.file.SettingsFile;
import rutbook.file.WindowSettings;
import rutbook.ui.Theme;
import rutbook.ui.WindowMemory;
import rutbook.words.Language;

/** How the rider left the window and which notebooks were open, kept in the settings file. */
final class Remembered implements WindowMemory {
  private final SettingsFile file;
  private WindowSettings settings;

  Remembered(SettingsFile file) {
    this.file = file;
    this.settings = WindowSettings.from(file.load());
  }

  @Override
  public Look remembered() {
    Theme theme =
        Stream.of(Theme.values())
            .filter(each -> each.name().equals(settings.theme()))
            .findFirst()
            .orElse(Theme.LIGHT);
    return new Look(
        theme,
        Language.tagged(settings.language()),
        settings.textPercent(),
        settings.bounds().map(Remembered::bounds));
  }

  private static Bounds bounds(WindowSettings.Bounds kept) {
    return new Bounds(kept.x(), kept.y(), kept.width(), kept.height(), kept.maximised());
  }

  @Override
  public void remember(Look look) {
    WindowSettings next =
        settings
            .withTheme(look.theme().name())
            .withLanguage(look.language().map(Language::tag).orElse(""))
            .withTextPercent(look.textPercent());
    keep(look.bounds().map(Remembered::kept).map(next::withBounds).orElse(next));
  }

  private static WindowSettings.Bounds kept(Bounds bounds) {
    return new WindowSettings.Bounds(
        (int) bounds.x(),
        (int) bounds.y(),
        Math.max(1, (int) bounds.width()),
        Math.max(1, (int) bounds.height()),
        bounds.maximised());
  }

  List<Path> recent() {
    return settings.recent().stream().flatMap(text -> path(text).stream()).toList();
  }

  private static Optional<Path> path(String text) {
    try {
      return Optional.of(Path.of(text));
    } catch (InvalidPathException otherSystem) {
      return Optional.empty();
    }
  }

  void opened(Path path) {
    keep(settings.opened(path.toString()));
  }

  void forget(Path path) {
    keep(settings.forgotten(path.toString()));
  }

  /** Comfort only: when it cannot be stored, the window works all the same. */
  private void keep(WindowSettings next) {
    if (!next.equals(settings)) {
      settings = next;
      file.store(next.asMap());
    }
  }
}
