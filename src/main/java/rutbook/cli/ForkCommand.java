package rutbook.cli;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import rutbook.figures.Figure;
import rutbook.figures.FillKind;
import rutbook.figures.FillRoom;
import rutbook.figures.ForkFigures;
import rutbook.figures.Riding;
import rutbook.json.ForkAnswer;
import rutbook.notebook.Bounds;
import rutbook.notebook.Carrier;
import rutbook.notebook.Placed;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.physics.ForkChange;
import rutbook.units.Amount;

/** The fork's force and reserve for each fill, from the terminal. */
@Command(
    name = "fork",
    description =
        "Print the force of the fork over its travel and its reserve for the least, the nominal,"
            + " the most and the present fill; exit 1 when data are missing.")
final class ForkCommand extends OnNotebook {
  @Option(
      names = "--fill",
      defaultValue = "",
      description = "Another fill (of an air fork: pressure): what it would do, as \"355 mL\".")
  private String fill;

  @Option(
      names = "--altitude",
      defaultValue = "",
      description = "Where its air was closed in, as \"600 m\"; else where it was last bled.")
  private String altitude;

  @Override
  public Integer call() {
    OpenedNotebook opened = opened();
    Sheet sheet = opened.bike().latestSheet();
    Setup now = opened.timeline().now();
    Riding noted = Riding.of(opened.notebook().shelf(), opened.timeline());
    Riding riding = noted.at(opened.amount(altitude, Quantities.ALTITUDE).or(noted::altitude));
    ForkFigures fork = ForkFigures.of(sheet, now, riding);
    Optional<Planned> planned = planned(opened, sheet, now, riding);
    int exit = fork.present().drawn().found().isPresent() ? Exit.DONE : Exit.PROBLEM;
    return answer(
        opened,
        exit,
        ForkAnswer.of(fork, planned.map(Planned::change)),
        pages -> {
          FigurePages says = new FigurePages(opened, terminal());
          says.fork(fork);
          planned.ifPresent(
              each -> {
                says.change(each.fill(), each.change());
                says.warnings(each.rooms());
              });
        });
  }

  private record Planned(Amount fill, List<FillRoom> rooms, Figure<ForkChange> change) {}

  /** Another fill, refused beyond the sheet's limits as everywhere. */
  private Optional<Planned> planned(OpenedNotebook opened, Sheet sheet, Setup now, Riding riding) {
    List<Setting> settings = sheet.settings(FillKind.varied(sheet));
    if (fill.isEmpty()) {
      return Optional.empty();
    }
    if (settings.isEmpty()) {
      throw Refusal.use(opened.say("no-fill"));
    }
    Setting setting = settings.get(0);
    Amount amount = opened.amount(fill, setting.scale().step().unit()).orElseThrow();
    Bounds.refusal(sheet, setting, amount)
        .ifPresent(
            refused -> {
              throw Refusal.use(opened.faults().sentence(refused));
            });
    Setup then = now;
    for (Setting each : settings) {
      Reading reading =
          each.carrier() == Carrier.PAIR ? Reading.bothLegs(amount) : Reading.of(amount);
      then = then.with(Placed.found(each.id(), reading));
    }
    return Optional.of(
        new Planned(
            amount,
            FillRoom.planned(sheet, setting.id(), then.reading(setting.id()).orElseThrow()),
            ForkFigures.change(sheet, now, then, riding)));
  }
}
