package rutbook.cli;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import rutbook.figures.GasFigures;
import rutbook.figures.Riding;
import rutbook.json.GasAnswer;
import rutbook.units.Amount;

/** What gauges read elsewhere, from the terminal. */
@Command(
    name = "gas",
    description =
        "Print what gauges read at another altitude or temperature: fork air, tyres, reservoir.")
final class GasCommand extends OnNotebook {
  @Option(
      names = "--from-altitude",
      defaultValue = "",
      description = "Where the pressure was set, as \"200 m\"; else where the fork was last bled.")
  private String fromAltitude;

  @Option(names = "--to-altitude", defaultValue = "", description = "Where it is read.")
  private String toAltitude;

  @Option(names = "--from", defaultValue = "", description = "At which temperature it was set.")
  private String from;

  @Option(names = "--to", defaultValue = "", description = "At which temperature it is read.")
  private String to;

  @Override
  public Integer call() {
    OpenedNotebook opened = opened();
    Optional<Amount> noted = Riding.of(opened.notebook().shelf(), opened.timeline()).altitude();
    GasFigures.At before =
        new GasFigures.At(
            opened.amount(fromAltitude, Quantities.ALTITUDE).or(() -> noted),
            opened.amount(from, Quantities.TEMPERATURE));
    GasFigures.At after =
        new GasFigures.At(
            opened.amount(toAltitude, Quantities.ALTITUDE),
            opened.amount(to, Quantities.TEMPERATURE));
    List<GasFigures.Line> lines =
        GasFigures.of(opened.bike().latestSheet(), opened.timeline().now(), before, after);
    return answer(
        opened,
        Exit.DONE,
        GasAnswer.of(lines),
        pages -> {
          FigurePages says = new FigurePages(opened, terminal());
          says.gas(lines, before, after);
          terminal().blank();
          says.assumed(lines.stream().map(GasFigures.Line::moved).toList());
        });
  }
}
