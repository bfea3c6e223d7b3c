package rutbook.json;

import java.util.List;
import java.util.Optional;
import rutbook.compare.Choice;
import rutbook.compare.Comparison;
import rutbook.compare.FeelRow;
import rutbook.compare.FullComparison;
import rutbook.compare.SagKind;
import rutbook.compare.SagRow;
import rutbook.compare.Subject;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.Section;
import rutbook.notebook.Symptom;
import rutbook.notebook.Track;
import rutbook.reasoning.MoveEffect;
import rutbook.reasoning.MoveEffects;

/**
 * What {@code compare} answers: two subjects, and their settings, sag, feel, laps and curves side
 * by side; for two tracks all their sessions.
 */
public final class CompareAnswer {
  private static final Facts<Subject> SUBJECT =
      Facts.of(Subject.class)
          .with("chosen", Texts.TEXT, subject -> chosen(subject.choice()))
          .with("day", Texts.DAY, Subject::day)
          .ifKnown("track", Texts.TEXT, subject -> track(subject.choice()).map(Track::name))
          .ifKnown("entry", Ids.ENTRY, subject -> entry(subject.choice()).map(Entry::id))
          .ifKnown("moto", Numbers.WHOLE, subject -> moto(subject.choice()))
          .ifKnown("trust", Numbers.WHOLE, subject -> RideFacts.whole(subject.trust()))
          .with("conditions", RideFacts.CONDITIONS, Subject::conditions);

  private static final Facts<SagRow> SAG =
      Facts.line(SagRow.class)
          .with("end", Words.of(End.class), SagRow::end)
          .with("kind", Words.of(SagKind.class), SagRow::kind)
          .ifKnown("from", AmountFacts.AMOUNT, SagRow::from)
          .ifKnown("to", AmountFacts.AMOUNT, SagRow::to)
          .ifKnown("by", AmountFacts.STEP, SagRow::by)
          .ifKnown("window", AmountFacts.LIMITS, SagRow::window);

  private static final Facts<FeelRow> FEEL =
      Facts.line(FeelRow.class)
          .with("end", Words.of(End.class), FeelRow::end)
          .with("section", Words.of(Section.class), row -> row.key().section())
          .with("symptom", Words.of(Symptom.class), row -> row.key().symptom())
          .ifKnown("from", Numbers.WHOLE, row -> RideFacts.whole(row.from()))
          .ifKnown("to", Numbers.WHOLE, row -> RideFacts.whole(row.to()));

  /** A comparison and what its differences do. */
  record Explained(FullComparison whole, List<MoveEffect> effects) {
    Comparison sides() {
      return whole.sides();
    }
  }

  static final Facts<Explained> COMPARISON =
      Facts.of(Explained.class)
          .with("from", SUBJECT, found -> found.sides().from())
          .with("to", SUBJECT, found -> found.sides().to())
          .list("settings", SettingFacts.DIFFERENCE, found -> found.sides().settings().rows())
          .list("effects", EffectFacts.EFFECT, Explained::effects)
          .list("sag", SAG, found -> found.sides().sag())
          .list("feel", FEEL, found -> found.sides().feel())
          .list("explains", ExplainFacts.EXPLANATION, found -> found.whole().explained())
          .with("laps", ComparedFacts.LAPS, found -> found.whole().laps())
          .with("curves", ComparedFacts.CURVES, found -> found.whole().curves())
          .ifKnown("tracks", ComparedFacts.TRACKS, found -> found.whole().tracks());

  private CompareAnswer() {}

  public static Reply of(FullComparison comparison, MoveEffects effects) {
    return Reply.of(
        "compare",
        COMPARISON,
        new Explained(comparison, EffectFacts.of(comparison.sides(), effects)));
  }

  private static String chosen(Choice choice) {
    if (choice instanceof Choice.OfBaseline) {
      return "baseline";
    } else if (choice instanceof Choice.OfSession) {
      return "session";
    } else if (choice instanceof Choice.OfMoto) {
      return "moto";
    }
    return choice instanceof Choice.BestOf ? "best-of-track" : planned(choice);
  }

  private static String planned(Choice choice) {
    if (choice instanceof Choice.StartAt) {
      return "start-at-track";
    } else if (choice instanceof Choice.OfAdvice) {
      return "advice";
    }
    return choice instanceof Choice.OfHandedOver ? "handed-over" : "now";
  }

  private static Optional<Track> track(Choice choice) {
    if (choice instanceof Choice.OfSession it) {
      return Optional.of(it.track());
    } else if (choice instanceof Choice.OfMoto it) {
      return Optional.of(it.track());
    } else if (choice instanceof Choice.StartAt it) {
      return Optional.of(it.track());
    }
    return choice instanceof Choice.BestOf it ? Optional.of(it.track()) : Optional.empty();
  }

  private static Optional<Entry> entry(Choice choice) {
    if (choice instanceof Choice.OfBaseline it) {
      return Optional.of(it.baseline());
    } else if (choice instanceof Choice.OfSession it) {
      return Optional.of(it.session());
    } else if (choice instanceof Choice.OfMoto it) {
      return Optional.of(it.session());
    } else if (choice instanceof Choice.OfAdvice it) {
      return Optional.of(it.advice());
    } else if (choice instanceof Choice.OfHandedOver it) {
      return Optional.of(it.handedOver());
    }
    return choice instanceof Choice.BestOf it ? Optional.of(it.session()) : Optional.empty();
  }

  /** Counted from 1, as in a reference. */
  private static Optional<Integer> moto(Choice choice) {
    if (choice instanceof Choice.OfMoto it) {
      return Optional.of(it.moto() + 1);
    }
    return choice instanceof Choice.BestOf it ? Optional.of(it.moto() + 1) : Optional.empty();
  }
}
