package rutbook.report;

import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import rutbook.compare.Choice;
import rutbook.compare.FullComparison;
import rutbook.compare.Subject;
import rutbook.notebook.SettingId;
import rutbook.notebook.Sheet;
import rutbook.notebook.Shelf;
import rutbook.notebook.Timeline;
import rutbook.rebuild.Plan;
import rutbook.rebuild.ShopSheet;
import rutbook.words.Phrases;

/** Makes the cards of one bike in one language and the rider's units. */
public final class Cards {
  private final CardOf of;

  public Cards(Shelf shelf, Timeline timeline, Phrases phrases) {
    this.of = new CardOf(shelf, timeline, phrases);
  }

  /** Of a session with its motos; of anything else as a setup to set the bike by. */
  public Card card(Subject subject) {
    return subject.choice() instanceof Choice.OfSession session
        ? new SessionCard(of).card(subject, session)
        : new SetupCard(of).card(subject);
  }

  /**
   * Of two sides: what to change when going from the first to the second.
   *
   * @param effects what each difference does, in words, one line each
   */
  public Card card(FullComparison comparison, Map<SettingId, List<String>> effects) {
    return new ComparisonCard(of, effects)
        .card(comparison.sides(), new ComparedBlocks(of).of(comparison));
  }

  /**
   * The plan of a rebuild on paper.
   *
   * @param zone in which it is said when a step was done
   */
  public Card workSheet(Plan plan, ZoneId zone) {
    return new WorkSheet(of).card(plan, zone);
  }

  /** What goes to the shop with a shock. */
  public Card shopSheet(ShopSheet shop, Sheet sheet) {
    return new ShopCard(of).card(shop, sheet);
  }
}
