package rutbook.cli;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rutbook.compare.Subject;
import rutbook.edit.AdviceEdit;
import rutbook.edit.SessionStart;
import rutbook.json.HandOverAnswer;
import rutbook.json.SetupJson;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.HandOverId;
import rutbook.notebook.Head;
import rutbook.notebook.Notebook;
import rutbook.notebook.Shared;
import rutbook.share.HandOver;
import rutbook.share.Packing;
import rutbook.share.Preview;
import rutbook.share.SetupFile;
import rutbook.share.ShareException;
import rutbook.words.ShareWords;

/** Hands setups over to a coach, as one file, with a record of it in the notebook. */
@Command(
    name = "hand-over",
    description =
        "Hand setups over to a coach as one file. References are those of compare; without one it"
            + " is what is on the bike now. The first is the one asked about; of a day or a moto its"
            + " session goes along. The notebook keeps a record, by which the answer is taken back.")
final class HandOverCommand extends OnNotebook {
  @Parameters(index = "1", arity = "0..*", paramLabel = "REF")
  private List<String> references = List.of();

  @Option(
      names = "--to",
      defaultValue = "",
      paramLabel = "NAME",
      description = "The file to make, ending in .setup.json.")
  private String to;

  @Option(
      names = "--with",
      split = ",",
      paramLabel = "WHAT",
      description =
          "What else goes along: places, laps, notes, weight. Without it none of them does.")
  private List<String> with = List.of();

  @Option(names = "--ask", defaultValue = "", paramLabel = "TEXT", description = "A question.")
  private String question;

  @Option(
      names = "--by",
      defaultValue = "",
      paramLabel = "NAME",
      description = "Who hands over; otherwise the rider.")
  private String by;

  @Option(names = "--preview", description = "Only print what would be in the file.")
  private boolean preview;

  @Option(names = "--force", description = "Replace the file when it is already there.")
  private boolean force;

  @Override
  public Integer call() {
    OpenedNotebook opened = opened();
    Set<Shared> shared = shared(opened);
    if (!preview && !to.endsWith(".setup.json")) {
      throw Refusal.use(opened.say("hand-over.name", to));
    }
    HandOver handOver =
        new HandOver(
            new HandOverId(pen().ids().next()),
            opened.notebook().id(),
            pen().today(),
            shared,
            question);
    SetupFile file = file(opened, handOver);
    byte[] bytes = SetupJson.write(file);
    if (!preview) {
      pen()
          .change(
              file(),
              notebook -> {
                Notebook recorded = recorded(notebook, opened, file);
                outbox().put(to, bytes, force);
                return recorded;
              });
    }
    return answer(
        opened,
        Exit.DONE,
        HandOverAnswer.of(file, Preview.of(file), preview ? Optional.empty() : Optional.of(to)),
        pages -> lines(opened, file));
  }

  private SetupFile file(OpenedNotebook opened, HandOver handOver) {
    References meant = new References(opened);
    List<Subject> chosen =
        references.isEmpty()
            ? List.of(meant.subject("now"))
            : references.stream().map(meant::subject).toList();
    try {
      return Packing.of(
          opened.notebook(),
          opened.timeline(),
          chosen,
          handOver,
          by.isBlank() ? Optional.empty() : Optional.of(by));
    } catch (ShareException cannot) {
      throw Refusal.use(new ShareWords(opened.phrases()).sentence(cannot));
    }
  }

  private Notebook recorded(Notebook notebook, OpenedNotebook opened, SetupFile file) {
    int order = SessionStart.orderOn(notebook, opened.bike(), pen().today());
    Head head = Head.of(new EntryId(pen().ids().next()), opened.bike().id(), pen().today(), order);
    Entry.HandedOver record =
        new Entry.HandedOver(head, file.handOver().id(), file.snapshot(), SetupJson.checksum(file));
    return new AdviceEdit.HandOver(record).applyTo(notebook);
  }

  private Set<Shared> shared(OpenedNotebook opened) {
    Set<Shared> shared = EnumSet.noneOf(Shared.class);
    for (String each : with) {
      shared.add(
          switch (each.strip().toLowerCase(Locale.ROOT)) {
            case "places" -> Shared.PLACE_NAMES;
            case "laps" -> Shared.LAPS;
            case "notes" -> Shared.NOTES;
            case "weight" -> Shared.WEIGHT;
            default -> throw Refusal.use(opened.say("hand-over.with", each));
          });
    }
    return shared;
  }

  private void lines(OpenedNotebook opened, SetupFile file) {
    new ShareWords(opened.phrases())
        .preview(Preview.of(file))
        .forEach(line -> terminal().line(2, line));
    if (!preview) {
      terminal().line(opened.say("hand-over.done", to));
    }
  }
}
