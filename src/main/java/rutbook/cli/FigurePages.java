package rutbook.cli;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rutbook.figures.Assumed;
import rutbook.figures.Figure;
import rutbook.figures.FillRoom;
import rutbook.figures.ForkFigures;
import rutbook.figures.GasFigures;
import rutbook.figures.LevelFigures;
import rutbook.figures.OilStanding;
import rutbook.figures.Reserve;
import rutbook.figures.SagFigures;
import rutbook.figures.SteeringSweep;
import rutbook.notebook.Oil;
import rutbook.physics.ForkChange;
import rutbook.units.Amount;
import rutbook.units.Dimension;
import rutbook.words.FigureWords;
import rutbook.words.ForkWords;
import rutbook.words.GasWords;
import rutbook.words.OilWords;
import rutbook.words.Phrases;
import rutbook.words.SagWords;
import rutbook.words.SteeringWords;

/** Figures as lines in a terminal, each with what was assumed for it or what it needs. */
final class FigurePages {
  private final Phrases phrases;
  private final Terminal terminal;
  private final FigureWords words;
  private final Columns columns;

  FigurePages(OpenedNotebook opened, Terminal terminal) {
    this.phrases = opened.phrases();
    this.terminal = terminal;
    this.words = new FigureWords(phrases);
    this.columns = new Columns(terminal, 2);
  }

  void fork(ForkFigures fork) {
    ForkWords says = new ForkWords(phrases);
    terminal.line(says.title(fork));
    columns.print(says.legs(fork));
    for (FillRoom room : fork.room().found().orElse(List.of())) {
      says.warning(room).ifPresent(warning -> terminal.line(2, warning));
    }
    Figure<ForkFigures.Drawn> drawn = fork.present().drawn();
    if (drawn.found().isEmpty()) {
      lacking(drawn);
      return;
    }
    terminal.heading(words.say("fork.curve"));
    columns.print(says.points(drawn.found().get()));
    terminal.line(2, words.say("fork.band"));
    terminal.heading(words.say("fork.reserve"));
    columns.print(says.reserves(fork, each -> Optional.of(each.whole())));
    Optional<Reserve> fromSag = drawn.found().get().fromSag();
    fromSag.ifPresent(
        from -> {
          terminal.heading(words.say("fork.reserve-from", from.from()));
          columns.print(says.reserves(fork, ForkFigures.Drawn::fromSag));
        });
    says.mass(fork)
        .ifPresentOrElse(
            mass -> terminal.line(2, mass),
            () -> terminal.line(2, words.say("drop-lacks", words.needs(fork.frontMass().needs()))));
    terminal.blank();
    terminal.line(words.say("model"));
    assumed(List.of(drawn, fork.frontMass(), drawn.found().get().whole().dropHeight()));
  }

  /** What another fill would do, said after the fork as it is. */
  void change(Amount fill, Figure<ForkChange> change) {
    terminal.heading(words.say("fork.change", fill));
    if (change.found().isEmpty()) {
      lacking(change);
      return;
    }
    new ForkWords(phrases)
        .change(change.found().get())
        .forEach(said -> terminal.row(2, 2, "-", said));
  }

  void warnings(List<FillRoom> rooms) {
    for (FillRoom room : rooms) {
      new ForkWords(phrases).warning(room).ifPresent(said -> terminal.line(2, said));
    }
  }

  void oils(List<OilStanding> oils, Amount temperature, Optional<Oil> inFork) {
    OilWords says = new OilWords(phrases);
    if (oils.isEmpty()) {
      terminal.line(words.say("no-oils"));
      return;
    }
    terminal.line(words.say("oil.title", phrases.amounts().unit(Dimension.KINEMATIC_VISCOSITY)));
    columns.print(says.shelf(oils, temperature));
    for (OilStanding oil : oils) {
      says.noIndex(oil).ifPresent(said -> terminal.line(2, said));
      if (!oil.at().needs().isEmpty()) {
        terminal.line(2, words.say("lacks", oil.oil().name(), words.needs(oil.at().needs())));
      }
    }
    terminal.line(
        2,
        inFork
            .map(oil -> words.say("oil.in-fork", oil.name()))
            .orElseGet(() -> words.say("oil.not-noted")));
  }

  void level(Figure<LevelFigures> level) {
    level.found().ifPresent(found -> terminal.line(2, new OilWords(phrases).level(found)));
    if (level.found().isEmpty()) {
      lacking(level);
    }
  }

  void sag(SagFigures sag, String title) {
    SagWords says = new SagWords(phrases);
    terminal.line(title);
    columns.print(says.measured(sag));
    terminal.blank();
    terminal.line(2, says.verdict(sag));
    says.wanted(sag).forEach(said -> terminal.line(2, said));
    terminal.heading(words.say("springs", sag.target().race()));
    columns.print(says.springs(sag));
    terminal.line(2, says.collar(sag));
  }

  void steering(SteeringSweep sweep, Amount sag) {
    terminal.line(words.say("steering.title"));
    if (sag.value().signum() != 0) {
      terminal.line(2, words.say("steering.sag", phrases.amounts().signed(sag)));
    }
    columns.print(new SteeringWords(phrases).sweep(sweep));
    terminal.line(2, words.say("steering.lowers"));
  }

  void gas(List<GasFigures.Line> lines, GasFigures.At before, GasFigures.At after) {
    GasWords says = new GasWords(phrases);
    terminal.line(words.say("gas.title"));
    boolean moved = after.altitude().isPresent() || after.temperature().isPresent();
    terminal.line(
        2, moved ? words.say("gas.move", at(before), at(after)) : words.say("gas.nowhere"));
    columns.print(says.moves(lines));
    says.notes(lines).forEach(note -> terminal.line(2, note));
  }

  private String at(GasFigures.At at) {
    return words.say(
        "gas.at",
        at.altitude().map(words::altitude).orElseGet(() -> words.say("gas.altitude.unknown")),
        at.temperature()
            .map(phrases.amounts()::amount)
            .orElseGet(() -> words.say("gas.temperature.unknown")));
  }

  void lacking(Figure<?> figure) {
    terminal.line(2, words.say("no-figure", words.needs(figure.needs())));
  }

  /** What was assumed for some figures, each once. */
  void assumed(Collection<? extends Figure<?>> figures) {
    Set<Assumed> all = new LinkedHashSet<>();
    figures.forEach(figure -> all.addAll(figure.assumed()));
    if (!all.isEmpty()) {
      terminal.line(words.say("assumptions"));
      all.stream().sorted().forEach(each -> terminal.row(2, 2, "-", words.assumed(each)));
    }
  }
}
