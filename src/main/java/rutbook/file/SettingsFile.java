package rutbook.file;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Names and values in a text file, for what makes the program comfortable and is no loss when gone.
 * Whatever the file holds, reading it gives what can be understood.
 */
public final class SettingsFile {
  private static final long LIMIT = 1L << 20;

  private final Disk disk;
  private final Path file;

  /**
   * @param file in the user's folder for settings; the folder is made when something is stored
   */
  public SettingsFile(Disk disk, Path file) {
    this.disk = disk;
    this.file = file;
  }

  /** What is stored; empty when there is no file, or none that can be read. */
  public Map<String, String> load() {
    return new FileReading(disk)
        .read(file, LIMIT)
        .map(bytes -> parsed(new String(bytes, StandardCharsets.UTF_8)))
        .result()
        .orElse(Map.of());
  }

  /** Stores exactly these. */
  public Outcome<Path> store(Map<String, String> settings) {
    try {
      Folders.make(disk, file.toAbsolutePath().getParent());
    } catch (IOException thrown) {
      return Outcome.refused(new Faults(disk).whileWriting(file, thrown));
    }
    return new DurableFile(disk).write(file, text(settings).getBytes(StandardCharsets.UTF_8));
  }

  /** Line by line when the text as a whole is refused, so that one bad line costs only itself. */
  private static Map<String, String> parsed(String text) {
    Map<String, String> found = new TreeMap<>();
    try {
      found.putAll(properties(text));
    } catch (IllegalArgumentException badEscape) {
      for (String line : text.lines().toList()) {
        try {
          found.putAll(properties(line));
        } catch (IllegalArgumentException badLine) {
          continue;
        }
      }
    }
    return found;
  }

  private static Map<String, String> properties(String text) {
    Properties properties = new Properties();
    try {
      properties.load(new StringReader(text));
    } catch (IOException impossible) {
      throw new IllegalStateException("reading from memory", impossible);
    }
    Map<String, String> found = new TreeMap<>();
    properties.stringPropertyNames().forEach(key -> found.put(key, properties.getProperty(key)));
    return found;
  }

  /** In the order of the names and without the date that {@link Properties} puts on top. */
  private static String text(Map<String, String> settings) {
    return new TreeMap<>(settings)
        .entrySet().stream().map(SettingsFile::line).collect(Collectors.joining());
  }

  private static String line(Map.Entry<String, String> setting) {
    Properties one = new Properties();
    one.setProperty(setting.getKey(), setting.getValue());
    StringWriter out = new StringWriter();
    try {
      one.store(out, null);
    } catch (IOException impossible) {
      throw new IllegalStateException("writing to memory", impossible);
    }
    return out.toString()
        .lines()
        .filter(line -> !line.startsWith("#"))
        .map(line -> line + "\n")
        .collect(Collectors.joining());
  }
}
