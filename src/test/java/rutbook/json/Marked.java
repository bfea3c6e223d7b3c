package rutbook.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rutbook.notebook.Notebook;
import rutbook.notebook.Shared;

/**
 * A notebook in which everything that a rider may want to keep at home is said in a way that is
 * said nowhere else, so that a file can be searched for it byte by byte.
 */
public final class Marked {
  private final ObjectNode tree;

  /** What is marked, and with what it may go along; empty for what never does. */
  private final Map<String, Optional<Shared>> marks = new LinkedHashMap<>();

  private int count;

  private Marked(ObjectNode tree) {
    this.tree = tree;
  }

  /** The notebook, and its marks. */
  public record Result(Notebook notebook, Map<String, Optional<Shared>> marks) {}

  public static Result of(Notebook notebook) {
    try {
      ObjectNode tree = (ObjectNode) Trees.MAPPER.readTree(NotebookJson.write(notebook));
      Marked marked = new Marked(tree);
      marked.all();
      Notebook result = NotebookJson.read(Trees.MAPPER.writeValueAsBytes(tree));
      return new Result(result, marked.marks);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  private void all() {
    renameIds();
    tree.path("tracks").forEach(track -> track((ObjectNode) track));
    tree.path("oils").forEach(oil -> put((ObjectNode) oil, "name", Optional.empty()));
    for (JsonNode rider : tree.path("riders")) {
      ((ObjectNode) rider).put("name", "Rider" + rider.path("id").asText());
      rider.path("weights").forEach(weight -> amount((ObjectNode) weight, "inGear", "kg"));
    }
    for (JsonNode bike : tree.path("bikes")) {
      bike.path("sheets").forEach(sheet -> note((ObjectNode) sheet, "reason"));
    }
    tree.path("entries").forEach(entry -> entry((ObjectNode) entry));
  }

  private String mark(Optional<Shared> with, String text) {
    marks.put(text, with);
    return text;
  }

  private void put(ObjectNode node, String field, Optional<Shared> with) {
    node.put(field, mark(with, "Mark" + count++ + "x"));
  }

  private void note(ObjectNode node, String field) {
    put(node, field, Optional.of(Shared.NOTES));
  }

  private void amount(ObjectNode node, String field, String unit) {
    Optional<Shared> with = Optional.of(unit.equals("kg") ? Shared.WEIGHT : Shared.PLACE_NAMES);
    count++;
    node.put(field, mark(with, "8%d.%03d %s".formatted(count / 1000, count % 1000, unit)));
  }

  private void track(ObjectNode track) {
    put(track, "name", Optional.of(Shared.PLACE_NAMES));
    amount(track, "altitude", "m");
    note(track, "note");
  }

  private void entry(ObjectNode entry) {
    note(entry, "note");
    entry.put(
        "time", mark(Optional.empty(), "05:%02d:%02d".formatted(count / 60 % 60, count++ % 60)));
    switch (entry.path("kind").asText()) {
      case "sag" -> amount(entry, "weight", "kg");
      case "session" -> entry.path("motos").forEach(moto -> moto((ObjectNode) moto));
      default -> {}
    }
  }

  private void moto(ObjectNode moto) {
    note(moto, "note");
    moto.path("changes").forEach(change -> note((ObjectNode) change, "why"));
    if (moto.path("report").path("laps") instanceof ArrayNode laps) {
      for (int i = 0; i < laps.size(); i++) {
        count++;
        String time =
            mark(Optional.of(Shared.LAPS), "7:%02d.%03d".formatted(count / 1000, count % 1000));
        if (laps.get(i) instanceof ObjectNode dropped) {
          dropped.put("time", time);
          note(dropped, "dropped");
        } else {
          laps.set(i, TextNode.valueOf(time));
        }
      }
    }
  }

  /** Ids of tracks, riders, oils, entries and motos, wherever they stand. */
  private void renameIds() {
    List<JsonNode> named = new ArrayList<>();
    for (String shelf : List.of("tracks", "riders", "oils", "entries")) {
      tree.path(shelf).forEach(named::add);
    }
    tree.path("entries").forEach(entry -> entry.path("motos").forEach(named::add));
    Map<String, String> renamed = new HashMap<>();
    for (JsonNode each : named) {
      String id = each.path("id").asText();
      renamed.computeIfAbsent(id, old -> mark(Optional.empty(), "Id" + count++ + "x"));
    }
    rename(tree, renamed);
  }

  private void rename(JsonNode node, Map<String, String> renamed) {
    if (node instanceof ObjectNode object) {
      List.copyOf(object.properties())
          .forEach(
              field -> {
                String to = renamed.get(field.getValue().asText());
                if (field.getValue().isTextual() && to != null) {
                  object.put(field.getKey(), to);
                } else {
                  rename(field.getValue(), renamed);
                }
              });
    } else {
      node.elements().forEachRemaining(each -> rename(each, renamed));
    }
  }
}
