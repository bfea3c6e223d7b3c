package rutbook.cli;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rutbook.compare.Choice;
import rutbook.edit.Edit;
import rutbook.edit.SessionStart;
import rutbook.imports.CsvText;
import rutbook.imports.Grid;
import rutbook.imports.ImportException;
import rutbook.imports.LapGuess;
import rutbook.imports.LapImport;
import rutbook.imports.LapMapping;
import rutbook.imports.NotTaken;
import rutbook.imports.SetupGuess;
import rutbook.imports.SetupImport;
import rutbook.imports.SetupMapping;
import rutbook.imports.SetupTaking;
import rutbook.json.ImportAnswer;
import rutbook.json.Reply;
import rutbook.notebook.Rider;
import rutbook.notebook.Sheet;
import rutbook.notebook.Track;
import rutbook.words.ImportWords;

/** Takes laps of a timing system, or setups of a spreadsheet, into the notebook. */
@Command(
    name = "import",
    description =
        "Take laps of a timing system into a moto (--laps 2026-05-03#2), or setups of a spreadsheet"
            + " as the starts of sessions (--setups). Columns are found by looking; --map says"
            + " otherwise. What is not taken is told row by row; exit 1 when nothing is.")
final class ImportCommand extends OnNotebook {
  @Parameters(index = "1", paramLabel = "TABLE", description = "A file of values, .csv.")
  private String table;

  @Option(
      names = "--laps",
      defaultValue = "",
      paramLabel = "REF",
      description = "The moto that the laps are of, such as 2026-05-03#2.")
  private String laps;

  @Option(names = "--setups", description = "The rows are setups of the bike.")
  private boolean setups;

  @Option(
      names = "--map",
      defaultValue = "",
      paramLabel = "COLUMNS",
      description =
          "What the columns are, by number or heading: time=3,number=1,rider=2 for laps;"
              + " day=1,track=2,fork-rebound:left=4 for setups; order=day-first for dates.")
  private String map;

  @Option(names = "--rider", defaultValue = "", description = "Whose laps, as the table says.")
  private String rider;

  @Option(names = "--track", defaultValue = "", description = "For rows that name no track.")
  private String track;

  @Option(names = "--instead", description = "Replace the laps that are there.")
  private boolean instead;

  @Option(names = "--dry-run", description = "Only print what would be taken.")
  private boolean dryRun;

  @Override
  public Integer call() {
    OpenedNotebook opened = opened();
    if (setups == !laps.isEmpty()) {
      throw Refusal.use(opened.say("import.which"));
    }
    try {
      Grid grid = CsvText.read(pen().bytes(table));
      return setups ? setups(opened, grid) : laps(opened, grid);
    } catch (ImportException noTable) {
      throw Refusal.use(new ImportWords(opened.phrases()).sentence(noTable));
    }
  }

  private int laps(OpenedNotebook opened, Grid grid) {
    Choice choice = new References(opened).subject(laps).choice();
    if (!(choice instanceof Choice.OfMoto at)) {
      throw Refusal.use(opened.say("import.no-moto", laps));
    }
    ImportWords words = new ImportWords(opened.phrases());
    LapMapping mapping = map.isEmpty() ? LapGuess.of(grid) : LapMapping.of(map, grid);
    if (mapping.times().isEmpty()) {
      throw Refusal.use(words.text("laps.no-column"));
    }
    if (LapImport.asksOrder(grid, mapping)) {
      throw Refusal.use(words.text("ask-order"));
    }
    Map<String, Integer> riders = LapImport.riders(grid, mapping);
    if (riders.size() > 1 && !riders.containsKey(rider)) {
      throw Refusal.use(opened.say("import.whose", String.join(", ", riders.keySet())));
    }
    Optional<String> whose = rider.isEmpty() ? Optional.empty() : Optional.of(rider);
    LapImport found =
        LapImport.of(grid, mapping, new LapImport.Wanted(whose, Optional.of(at.session().day())));
    if (!found.rows().isEmpty()) {
      make(found.edit(at.session().id(), at.ridden(), instead));
    }
    Reply reply = ImportAnswer.of(mapping.text(), dryRun, found);
    return answer(
        opened,
        found.rows().isEmpty() ? Exit.PROBLEM : Exit.DONE,
        reply,
        pages ->
            lines(
                opened,
                words.text("laps.found", found.rows().size()),
                List.of(),
                found.notTaken()));
  }

  private int setups(OpenedNotebook opened, Grid read) {
    ImportWords words = new ImportWords(opened.phrases());
    Sheet sheet = opened.bike().latestSheet();
    Grid grid = map.isEmpty() && SetupGuess.isTurned(read, sheet) ? read.turned() : read;
    SetupMapping mapping =
        map.isEmpty() ? SetupGuess.of(grid, sheet) : SetupMapping.of(map, grid, sheet);
    if (SetupImport.asksOrder(grid, mapping)) {
      throw Refusal.use(words.text("ask-order"));
    }
    SetupImport found =
        SetupTaking.of(
            opened.notebook(),
            opened.bike().id(),
            grid,
            mapping,
            new SetupImport.Wanted(rider(opened), track(opened)),
            pen().ids());
    found.edit().ifPresent(this::make);
    List<String> beyond =
        found.rows().stream()
            .flatMap(row -> words.beyond(row.line(), row.beyond()).stream())
            .toList();
    return answer(
        opened,
        found.rows().isEmpty() ? Exit.PROBLEM : Exit.DONE,
        ImportAnswer.of(mapping.text(), dryRun, found),
        pages ->
            lines(
                opened, words.text("setups.found", found.rows().size()), beyond, found.notTaken()));
  }

  private void make(Edit edit) {
    if (!dryRun) {
      pen().change(file(), edit::applyTo);
    }
  }

  private static Rider rider(OpenedNotebook opened) {
    return SessionStart.rider(opened.notebook(), opened.bike())
        .orElseThrow(() -> Refusal.use(opened.say("import.no-rider")));
  }

  private Optional<Track> track(OpenedNotebook opened) {
    List<Track> tracks = opened.notebook().shelf().tracks();
    Optional<Track> named =
        tracks.stream().filter(each -> each.name().equalsIgnoreCase(track)).findFirst();
    if (!track.isEmpty() && named.isEmpty()) {
      throw Refusal.use(
          opened.say(
              "import.no-track",
              track,
              String.join(", ", tracks.stream().map(Track::name).toList())));
    }
    return named;
  }

  private void lines(
      OpenedNotebook opened, String heading, List<String> beyond, List<NotTaken> not) {
    ImportWords words = new ImportWords(opened.phrases());
    terminal().line(heading);
    beyond.forEach(each -> terminal().line(2, each));
    if (!not.isEmpty()) {
      terminal().line(words.text("not", not.size()));
      not.forEach(each -> terminal().line(2, words.notTaken(each)));
    }
    terminal().line(opened.say(dryRun ? "import.dry" : "import.done"));
  }
}
