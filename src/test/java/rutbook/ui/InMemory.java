package rutbook.ui;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import rutbook.json.JsonException;
import rutbook.json.SetupJson;
import rutbook.report.PngPicture;
import rutbook.share.GuestFile;
import rutbook.share.GuestShelf;
import rutbook.share.SetupFile;
import rutbook.ui.fx.Snapshot;
import rutbook.units.Display;
import rutbook.words.JsonWords;
import rutbook.words.Phrases;

/** Files of others without a disk, written and read as on one; the dialogs give what is put in. */
final class InMemory implements OutsideFiles, FilePicker {
  final Map<Path, byte[]> files = new HashMap<>();
  final Map<String, SetupFile> shelf = new HashMap<>();
  final Map<String, String> mappings = new HashMap<>();
  final List<Path> cards = new ArrayList<>();
  final List<Unread> unread = new ArrayList<>();
  Optional<Path> picked = Optional.empty();

  @Override
  public void open(Path path, Consumer<Answer<Opened>> answer) {
    try {
      SetupJson.Read read = SetupJson.read(files.get(path));
      answer.accept(
          new Answer.Done<>(new Opened(read.file(), read.hasChecksum(), read.ridersChecksum())));
    } catch (JsonException noSetup) {
      Phrases phrases = new Phrases(Locale.UK, Display.METRIC);
      answer.accept(new Answer.Refused<>(new JsonWords(phrases).sentence(noSetup)));
    }
  }

  @Override
  public void write(Path path, SetupFile file, Consumer<Answer<Path>> answer) {
    files.put(path, SetupJson.write(file));
    answer.accept(new Answer.Done<>(path));
  }

  @Override
  public void writeCard(Path beside, SetupFile file, Consumer<Answer<Path>> answer) {
    cards.add(beside);
    answer.accept(new Answer.Done<>(beside));
  }

  @Override
  public String checksum(SetupFile file) {
    return SetupJson.checksum(file);
  }

  @Override
  public void shelf(Consumer<Answer<Shelf>> answer) {
    List<GuestFile> all = new ArrayList<>();
    shelf.forEach((name, file) -> all.add(new GuestFile(name, file)));
    answer.accept(new Answer.Done<>(new Shelf(GuestShelf.of(all), unread)));
  }

  @Override
  public void keep(SetupFile file, Consumer<Answer<GuestFile>> answer) {
    String name = file.handOver().notebook() + "-" + file.handOver().id();
    if (file.coach().isPresent() || !shelf.containsKey(name)) {
      shelf.put(name, file);
    }
    answer.accept(new Answer.Done<>(new GuestFile(name, shelf.get(name))));
  }

  @Override
  public Optional<String> mapping(String fingerprint) {
    return Optional.ofNullable(mappings.get(fingerprint));
  }

  @Override
  public void remember(String fingerprint, String mapping) {
    mappings.put(fingerprint, mapping);
  }

  @Override
  public void picture(Path path, Snapshot picture, boolean replace, Consumer<Pictured> answer) {
    if (files.containsKey(path) && !replace) {
      answer.accept(new Pictured.There(path));
    } else {
      files.put(path, PngPicture.of(picture.width(), picture.height(), picture.argb()));
      answer.accept(new Pictured.Done(path));
    }
  }

  @Override
  public void table(Path path, int most, Consumer<Answer<byte[]>> answer) {
    answer.accept(new Answer.Done<>(files.get(path)));
  }

  @Override
  public Optional<Path> toOpen(Kind kind) {
    return picked;
  }

  @Override
  public Optional<Path> toSave(Kind kind, String name) {
    return picked;
  }

  String text(Path path) {
    return new String(files.get(path), StandardCharsets.UTF_8);
  }
}
