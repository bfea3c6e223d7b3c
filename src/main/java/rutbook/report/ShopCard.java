package rutbook.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.drawing.MarkGlyph;
import rutbook.drawing.Ruler;
import rutbook.drawing.RulerDrawing;
import rutbook.notebook.Feel;
import rutbook.notebook.Placed;
import rutbook.notebook.Renewed;
import rutbook.notebook.Role;
import rutbook.notebook.Setting;
import rutbook.notebook.Sheet;
import rutbook.rebuild.Caution;
import rutbook.rebuild.ShopSheet;
import rutbook.words.PlanWords;

/** What goes along with a shock to a suspension shop, and what the shop writes on it. */
final class ShopCard {
  private final CardOf of;

  ShopCard(CardOf of) {
    this.of = of;
  }

  Card card(ShopSheet shop, Sheet sheet) {
    List<Card.Block> blocks = new ArrayList<>();
    blocks.add(new Card.Lines(of.words().say("shop.facts"), facts(shop)));
    if (!shop.complaints().isEmpty()) {
      blocks.add(new Card.Pieces(of.words().say("shop.complaints"), complaints(shop)));
    }
    blocks.add(of.legend(MarkGlyph.BASELINE, MarkGlyph.NEAR_STOP));
    blocks.add(baseline(shop, sheet));
    blocks.add(new Card.Work(of.words().say("shop.set"), boxes(shop, sheet)));
    PlanWords plan = new PlanWords(of.phrases());
    List<String> cautions =
        List.of(Caution.NEVER_OPEN_GAS, Caution.LICENSED_FIRST, Caution.MANUAL_RULES).stream()
            .map(plan::caution)
            .toList();
    return new Card(of.words().say("shop", of.bike()), List.of(), blocks, cautions);
  }

  private List<String> facts(ShopSheet shop) {
    List<String> said = new ArrayList<>();
    shop.weightInGear()
        .ifPresent(weight -> said.add(of.words().say("shop.weight", of.words().both(weight))));
    shop.hoursSinceOil()
        .ifPresent(
            hours ->
                said.add(of.words().say("shop.hours", of.phrases().amounts().number(hours, 1))));
    List<String> wanted = shop.wanted().stream().sorted().map(this::name).toList();
    said.add(
        wanted.isEmpty()
            ? of.words().say("shop.wanted.none")
            : of.words().say("shop.wanted", String.join(", ", wanted)));
    shop.raceSag().ifPresent(sag -> said.add(of.words().say("shop.race", of.words().both(sag))));
    shop.freeSag().ifPresent(sag -> said.add(of.words().say("shop.free", of.words().both(sag))));
    return said;
  }

  private String name(Renewed renewed) {
    return of.phrases().name(renewed);
  }

  private List<String> complaints(ShopSheet shop) {
    return shop.complaints().stream()
        .map(
            (Feel feel) ->
                of.words().say("feel.item", of.comparing().feel(feel.key()), feel.severity()))
        .map(of.phrases()::sentence)
        .toList();
  }

  private Card.Rulers baseline(ShopSheet shop, Sheet sheet) {
    List<Card.Row> rows = new ArrayList<>();
    for (Placed placed : shop.baseline()) {
      Setting setting = sheet.setting(placed.setting()).orElseThrow();
      String name = of.comparing().setting(setting);
      String reading = of.words().reading(setting, placed.reading());
      Ruler ruler =
          Ruler.of(sheet, setting, placed.reading())
              .withBaseline(placed.reading())
              .in(of.phrases().display());
      rows.add(
          new Card.Row(
              name,
              "",
              reading,
              of.words().other(placed.reading()),
              Optional.of(
                  CardOf.picture(RulerDrawing.of(ruler, of.ruler()), name + ": " + reading)),
              Card.Todo.NONE,
              of.words().say("limits", of.phrases().amounts().limits(sheet.limits(setting))),
              "",
              List.of()));
    }
    return new Card.Rulers(of.phrases().sentence(of.words().say("mark.BASELINE")), rows);
  }

  private List<Card.Step> boxes(ShopSheet shop, Sheet sheet) {
    List<Card.Step> steps = new ArrayList<>();
    for (String key : List.of("shop.spring", "shop.oil", "shop.gas", "shop.valving")) {
      steps.add(box(steps.size() + 1, of.words().say(key), "", values(key, sheet)));
    }
    for (Placed placed : shop.baseline()) {
      Setting setting = sheet.setting(placed.setting()).orElseThrow();
      if (setting.role().isClicker() || setting.role() == Role.SHOCK_PRELOAD) {
        String name = of.comparing().setting(setting);
        String unit = of.phrases().amounts().unit(setting.dimension());
        steps.add(box(steps.size() + 1, of.words().say("shop.reading", name), unit, List.of()));
      }
    }
    steps.add(box(steps.size() + 1, of.words().say("shop.back"), "", List.of()));
    return steps;
  }

  /** What the manual has of the gas pressure, where the sheet knows it. */
  private List<String> values(String key, Sheet sheet) {
    return sheet
        .parts()
        .shock()
        .gasPressure()
        .filter(gas -> key.equals("shop.gas"))
        .map(gas -> List.of(of.words().say("limits", of.phrases().amounts().limits(gas))))
        .orElse(List.of());
  }

  /** A box with the unit it is written in; a space stands for none, since no box is ticked here. */
  private static Card.Step box(int number, String what, String unit, List<String> values) {
    return new Card.Step(number, what, values, List.of(), List.of(unit.isEmpty() ? " " : unit), "");
  }
}
