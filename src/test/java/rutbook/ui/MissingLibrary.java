package rutbook.ui;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Says in one sentence which system package a window lacks, where that is why there is none. */
final class MissingLibrary {
  private static final Pattern NAME = Pattern.compile("(lib[\\w+-]+(?:\\.\\d+)*\\.so(?:\\.\\d+)*)");
  private static final Map<String, String> DEBIAN =
      new TreeMap<>(
          Map.of(
              "libpangoft2-1.0.so.0", "libpangoft2-1.0-0",
              "libpango-1.0.so.0", "libpango-1.0-0",
              "libfreetype.so.6", "libfreetype6",
              "libfontconfig.so.1", "libfontconfig1",
              "libgtk-3.so.0", "libgtk-3-0",
              "libXtst.so.6", "libxtst6",
              "libXxf86vm.so.1", "libxxf86vm1",
              "libGL.so.1", "libgl1",
              "libX11.so.6", "libx11-6",
              "libstdc++.so.6", "libstdc++6"));

  private MissingLibrary() {}

  /** The sentence; empty where something else went wrong. */
  static Optional<String> sentence(Throwable thrown) {
    for (Throwable cause = thrown; cause != null; cause = cause.getCause()) {
      Optional<String> library = library(String.valueOf(cause.getMessage()));
      if (library.isPresent()) {
        return library.map(MissingLibrary::told);
      }
    }
    return Optional.empty();
  }

  /** The last library of a loader's message is the one that is not there. */
  private static Optional<String> library(String message) {
    if (!message.contains("cannot open shared object file")) {
      return Optional.empty();
    }
    Matcher matcher =
        NAME.matcher(message.substring(0, message.indexOf("cannot open shared object file")));
    Optional<String> last = Optional.empty();
    while (matcher.find()) {
      last = Optional.of(matcher.group(1));
    }
    return last;
  }

  private static String told(String library) {
    return "The window's tests need the system library "
        + library
        + ": on Debian and Ubuntu install the package "
        + DEBIAN.getOrDefault(library, "that holds it")
        + ".";
  }
}
