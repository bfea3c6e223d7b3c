package rutbook.cli;

import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import rutbook.figures.Figure;
import rutbook.figures.SteeringSweep;
import rutbook.json.SteeringAnswer;
import rutbook.units.Amount;
import rutbook.units.Length;

/** Rake, trail and pitch over the height of the fork, from the terminal. */
@Command(
    name = "steering",
    description =
        "Print rake, trail and pitch for every height of the fork that the sheet allows; exit 1"
            + " when data are missing.")
final class SteeringCommand extends OnNotebook {
  @Option(
      names = "--rear-sag",
      defaultValue = "",
      description = "With so much more sag at the rear, as \"10 mm\"; less with a minus.")
  private String rearSag;

  @Override
  public Integer call() {
    OpenedNotebook opened = opened();
    Amount sag = opened.amount(rearSag, Quantities.SAG).orElse(Amount.of(0, Length.MILLIMETRE));
    Figure<SteeringSweep> sweep =
        SteeringSweep.of(opened.bike().latestSheet(), opened.timeline().now(), sag);
    int exit = sweep.found().isPresent() ? Exit.DONE : Exit.PROBLEM;
    return answer(
        opened,
        exit,
        SteeringAnswer.of(sweep),
        pages -> {
          FigurePages says = new FigurePages(opened, terminal());
          sweep
              .found()
              .ifPresentOrElse(found -> says.steering(found, sag), () -> says.lacking(sweep));
          terminal().blank();
          says.assumed(List.of(sweep));
        });
  }
}
