package rutbook.cli;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import rutbook.figures.Figure;
import rutbook.figures.SagFigures;
import rutbook.json.SagAnswer;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.Sheet;
import rutbook.notebook.Timeline;
import rutbook.units.Amount;
import rutbook.words.FigureWords;

/** The sag worksheet of the rear, from the terminal. */
@Command(
    name = "sag",
    description =
        "Print the sag worksheet of the rear from its last measurement: the spring and preload that"
            + " meet both sags; exit 1 when data are missing.")
final class SagCommand extends OnNotebook {
  @Override
  public Integer call() {
    OpenedNotebook opened = opened();
    Timeline timeline = opened.timeline();
    FigureWords words = new FigureWords(opened.phrases());
    Entry.SagMeasured measured =
        timeline.sag(End.REAR).orElseThrow(() -> Refusal.missing(words.say("sag.never")));
    Sheet sheet = opened.bike().latestSheet();
    Figure<SagFigures> sag =
        SagFigures.of(sheet, timeline.after(measured.id()), measured, weight(opened, measured));
    int exit = sag.found().isPresent() ? Exit.DONE : Exit.PROBLEM;
    return answer(
        opened,
        exit,
        SagAnswer.of(sag, measured.day()),
        pages -> {
          FigurePages says = new FigurePages(opened, terminal());
          String title = words.say("sag.title", measured.day());
          sag.found().ifPresentOrElse(found -> says.sag(found, title), () -> says.lacking(sag));
          terminal().blank();
          says.assumed(List.of(sag));
        });
  }

  /** Of the rider who rode last before the day, or the notebook's only one. */
  private static Optional<Amount> weight(OpenedNotebook opened, Entry.SagMeasured measured) {
    var riders = opened.notebook().shelf().riders();
    return opened.timeline().sessions().stream()
        .filter(session -> !session.day().isAfter(measured.day()))
        .reduce((earlier, later) -> later)
        .flatMap(session -> opened.notebook().shelf().rider(session.rider()))
        .or(() -> riders.size() == 1 ? Optional.of(riders.get(0)) : Optional.empty())
        .flatMap(rider -> rider.weightOn(measured.day()));
  }
}
