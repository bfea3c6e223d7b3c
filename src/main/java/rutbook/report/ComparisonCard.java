package rutbook.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rutbook.compare.Comparison;
import rutbook.compare.Group;
import rutbook.compare.LegDifference;
import rutbook.compare.SagRow;
import rutbook.compare.SettingDifference;
import rutbook.compare.Standing;
import rutbook.compare.Subject;
import rutbook.drawing.ComparedRuler;
import rutbook.drawing.Drawing;
import rutbook.drawing.MarkGlyph;
import rutbook.drawing.Ruler;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Sheet;
import rutbook.units.Amount;
import rutbook.words.ChangeWords;

/** The card of a comparison: what to change when going from the first to the second. */
final class ComparisonCard {
  private final CardOf of;
  private final Map<SettingId, List<String>> effects;
  private final ChangeWords changes;

  ComparisonCard(CardOf of, Map<SettingId, List<String>> effects) {
    this.of = of;
    this.effects = effects;
    this.changes = new ChangeWords(of.phrases()).spelled();
  }

  /** What the differences do is left out, and that is said, where it would take a second sheet. */
  Card card(Comparison comparison, List<Card.Block> more) {
    Card whole = whole(comparison, more);
    if (effects.isEmpty() || Density.fits(whole)) {
      return whole;
    }
    List<Card.Block> told = new ArrayList<>(more);
    told.add(new Card.Lines("", List.of(of.words().say("effects.left-out"))));
    return new ComparisonCard(of, Map.of()).whole(comparison, told);
  }

  private Card whole(Comparison comparison, List<Card.Block> more) {
    List<Card.Block> blocks = new ArrayList<>();
    blocks.add(legend(comparison));
    blocks.addAll(differing(comparison));
    blocks.add(same(comparison));
    if (!comparison.sag().isEmpty()) {
      blocks.add(sag(comparison));
    }
    if (!comparison.feel().isEmpty()) {
      blocks.add(feel(comparison));
    }
    blocks.addAll(more);
    return new Card(
        of.bike(),
        List.of(
            of.words().say("from", of.subject(comparison.from())),
            of.words().say("to", of.subject(comparison.to()))),
        blocks,
        of.cautions(comparison.to().sheet()));
  }

  private Card.Legend legend(Comparison comparison) {
    return new Card.Legend(
        List.of(
            mark(MarkGlyph.FIRST, comparison.from()),
            mark(MarkGlyph.SECOND, comparison.to()),
            CardOf.picture(MarkGlyph.NEAR_STOP.drawing(), of.words().mark(MarkGlyph.NEAR_STOP))));
  }

  private Card.Picture mark(MarkGlyph mark, Subject subject) {
    return CardOf.picture(
        mark.drawing(), of.words().mark(mark, of.comparing().choice(subject.choice())));
  }

  private List<Card.Block> differing(Comparison comparison) {
    List<Card.Block> blocks = new ArrayList<>();
    for (Group group : Group.values()) {
      List<Card.Row> rows = new ArrayList<>();
      for (SettingDifference row : comparison.settings().rows(group)) {
        if (!row.isSame()) {
          rows.add(row(comparison, row));
        }
      }
      if (!rows.isEmpty()) {
        blocks.add(new Card.Rulers(of.group(group), rows));
      }
    }
    return blocks;
  }

  private Card.Row row(Comparison comparison, SettingDifference difference) {
    Setting setting = difference.setting();
    Sheet sheet = difference.onlyBefore() ? comparison.from().sheet() : comparison.to().sheet();
    List<Amount> first = amounts(difference.from());
    List<Amount> second = amounts(difference.to());
    Ruler ruler =
        Ruler.of(sheet, setting, difference.to().or(difference::from).orElseThrow().reading())
            .in(of.phrases().display());
    String name = of.comparing().setting(setting);
    String said = String.join("; ", of.comparing().difference(difference));
    Drawing drawing = ComparedRuler.of(ruler, first, second, of.ruler());
    return new Card.Row(
        name,
        of.words().legs(setting),
        move(difference),
        sense(difference),
        Optional.of(CardOf.picture(drawing, name + ": " + said)),
        Card.Todo.NONE,
        note(sheet, difference),
        difference.to().map(of.words()::alarm).orElse(""),
        effects.getOrDefault(setting.id(), List.of()));
  }

  private String note(Sheet sheet, SettingDifference difference) {
    if (difference.onlyBefore()) {
      return of.words().say("only-before");
    }
    String note =
        of.words()
            .note(sheet, difference.setting(), difference.to().orElseThrow(), Optional.empty());
    return difference.onlyAfter() ? of.words().say("only-after") + " " + note : note;
  }

  /** Each distinct amount once: two legs alike are one mark. */
  private static List<Amount> amounts(Optional<Standing> standing) {
    List<Amount> amounts = standing.map(it -> it.reading().amounts()).orElse(List.of());
    return amounts.size() == 2 && amounts.get(0).sameQuantity(amounts.get(1))
        ? amounts.subList(0, 1)
        : amounts;
  }

  /** From what to what, without the sense: that stands below. */
  private String move(SettingDifference difference) {
    Setting setting = difference.setting();
    if (difference.legs().isEmpty()) {
      Reading only = difference.to().or(difference::from).orElseThrow().reading();
      return of.words().reading(setting, only);
    }
    List<String> said = new ArrayList<>();
    for (LegDifference leg : legs(difference)) {
      String move = changes.move(setting, leg.from(), leg.to());
      boolean apart = !difference.legsMoveAlike() && leg.leg().isPresent();
      said.add(apart ? changes.ofLeg(leg.leg().orElseThrow(), move) : move);
    }
    return String.join("; ", said);
  }

  private String sense(SettingDifference difference) {
    List<String> said = new ArrayList<>();
    for (LegDifference leg : legs(difference)) {
      Optional<Amount> from = leg.from().known();
      Optional<Amount> to = leg.to().known();
      if (from.isPresent() && to.isPresent()) {
        said.add(changes.difference(difference.setting(), from.get(), to.get()));
      }
    }
    return String.join("; ", said);
  }

  private static List<LegDifference> legs(SettingDifference difference) {
    return difference.legsMoveAlike()
        ? difference.legs().stream().limit(1).toList()
        : difference.legs();
  }

  /** What stays as it is, with its reading, so that the card alone is enough. */
  private Card.Pieces same(Comparison comparison) {
    List<String> said = new ArrayList<>();
    if (comparison.settings().isSame()) {
      said.add(of.words().say("same.nothing"));
    }
    for (SettingDifference row : comparison.settings().rows()) {
      if (row.isSame()) {
        Reading reading = row.to().orElseThrow().reading();
        said.add(
            of.words()
                .say(
                    "same.row",
                    of.comparing().setting(row.setting()),
                    of.words().reading(row.setting(), reading)));
      }
    }
    return new Card.Pieces(of.words().say("same"), said);
  }

  private Card.Lines sag(Comparison comparison) {
    List<String> said = new ArrayList<>();
    for (SagRow row : comparison.sag()) {
      boolean kept =
          CardOf.keeps(comparison.from(), row.end(), row.kind())
              || CardOf.keeps(comparison.to(), row.end(), row.kind());
      said.add(
          of.words()
              .sag(
                  row,
                  kept,
                  of.sagDay(comparison.from(), row.end()),
                  of.sagDay(comparison.to(), row.end())));
    }
    return new Card.Lines(of.words().say("sag"), said);
  }

  /** From what to what, short, so that the sheet has room for what matters more. */
  private Card.Pieces feel(Comparison comparison) {
    return new Card.Pieces(
        of.words().say("feel.moved"),
        comparison.feel().stream()
            .map(row -> of.phrases().sentence(of.comparing().feel(row)))
            .toList());
  }
}
