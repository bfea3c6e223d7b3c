package rutbook.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import rutbook.figures.Figure;
import rutbook.figures.LevelFigures;
import rutbook.figures.OilFigures;
import rutbook.figures.OilStanding;
import rutbook.json.OilAnswer;
import rutbook.notebook.Oil;
import rutbook.notebook.Sheet;
import rutbook.units.Amount;
import rutbook.units.Length;
import rutbook.words.OilWords;

/** The oils of the shelf beside the one in the fork, from the terminal. */
@Command(
    name = "oil",
    description =
        "Print the oils of the shelf by viscosity, index and grade, and each against the one in the"
            + " fork.")
final class OilCommand extends OnNotebook {
  private static final Amount TEN_MILLIMETRES = Amount.of(10, Length.MILLIMETRE);

  @Option(names = "--at", defaultValue = "", description = "At which temperature, as \"60 °C\".")
  private String at;

  @Option(names = "--blend", description = "Twice: the two oils that are mixed, by name.")
  private List<String> blend = List.of();

  @Option(
      names = "--part",
      defaultValue = "50",
      description = "Per cent of the first oil by volume, 0 to 100.")
  private double part;

  @Override
  public Integer call() {
    OpenedNotebook opened = opened();
    Optional<Amount> temperature = opened.amount(at, Quantities.TEMPERATURE);
    List<OilStanding> oils =
        opened.notebook().shelf().oils().stream()
            .map(oil -> OilStanding.of(oil, temperature))
            .toList();
    Optional<Oil> inFork =
        OilStanding.inFork(opened.timeline()).flatMap(opened.notebook().shelf()::oil);
    Sheet sheet = opened.bike().latestSheet();
    Optional<Figure<LevelFigures>> level =
        LevelFigures.byLevel(sheet)
            ? Optional.of(LevelFigures.ofLevel(sheet, TEN_MILLIMETRES))
            : Optional.empty();
    Optional<Figure<OilFigures.Blended>> blended = blended(opened, temperature);
    return answer(
        opened,
        Exit.DONE,
        OilAnswer.of(oils, inFork, ratios(inFork, oils, temperature), blended),
        pages -> {
          FigurePages says = new FigurePages(opened, terminal());
          says.oils(oils, temperature.orElse(OilFigures.RIDING), inFork);
          OilWords words = new OilWords(opened.phrases());
          ratios(inFork, oils, temperature)
              .forEach(
                  ratio ->
                      terminal()
                          .line(2, words.ratio(inFork.orElseThrow(), ratio.oil(), ratio.ratio())));
          level.ifPresent(says::level);
          blended.ifPresent(each -> blended(opened, says, each));
          terminal().blank();
          says.assumed(
              oils.stream()
                  .flatMap(oil -> Stream.of(oil.at(), oil.index()))
                  .collect(
                      Collectors.toCollection(() -> new ArrayList<>(blended.stream().toList()))));
        });
  }

  /** Every other oil that has a line against the one in the fork. */
  private static List<OilAnswer.Against> ratios(
      Optional<Oil> inFork, List<OilStanding> oils, Optional<Amount> temperature) {
    return inFork.stream()
        .flatMap(
            old ->
                oils.stream()
                    .map(OilStanding::oil)
                    .filter(other -> !other.id().equals(old.id()))
                    .flatMap(
                        other ->
                            OilFigures.ratio(old, other, temperature).found().stream()
                                .map(ratio -> new OilAnswer.Against(other, ratio))))
        .toList();
  }

  private Optional<Figure<OilFigures.Blended>> blended(
      OpenedNotebook opened, Optional<Amount> temperature) {
    if (blend.isEmpty()) {
      return Optional.empty();
    }
    if (blend.size() != 2 || !(part >= 0 && part <= 100)) {
      throw Refusal.use(opened.say("bad-blend"));
    }
    return Optional.of(
        OilFigures.blended(
            oil(opened, blend.get(0)), oil(opened, blend.get(1)), part / 100, temperature));
  }

  private void blended(
      OpenedNotebook opened, FigurePages says, Figure<OilFigures.Blended> blended) {
    OilWords words = new OilWords(opened.phrases());
    blended
        .found()
        .ifPresentOrElse(
            found ->
                terminal()
                    .line(
                        2,
                        words.blend(oil(opened, blend.get(0)), oil(opened, blend.get(1)), found)),
            () -> says.lacking(blended));
  }

  private static Oil oil(OpenedNotebook opened, String name) {
    return opened.oil(name).flatMap(opened.notebook().shelf()::oil).orElseThrow();
  }
}
