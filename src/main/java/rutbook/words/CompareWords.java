package rutbook.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.compare.Choice;
import rutbook.compare.FeelRow;
import rutbook.compare.Finding;
import rutbook.compare.Group;
import rutbook.compare.LegDifference;
import rutbook.compare.SagKind;
import rutbook.compare.SagRow;
import rutbook.compare.SettingDifference;
import rutbook.notebook.Conditions;
import rutbook.notebook.Feel;
import rutbook.notebook.Setting;

/** What a comparison and a check of the bike say. */
public final class CompareWords {
  private static final String AREA = "Compare";

  private final Phrases phrases;
  private final ReadingWords readings;
  private final ChangeWords changes;

  public CompareWords(Phrases phrases) {
    this.phrases = phrases;
    this.readings = new ReadingWords(phrases);
    this.changes = new ChangeWords(phrases).spelled();
  }

  public String group(Group group) {
    return phrases.say(AREA, "group." + group.name());
  }

  /** What was chosen, as a heading. */
  public String choice(Choice choice) {
    if (choice instanceof Choice.OfBaseline it) {
      return phrases.say(AREA, "choice.baseline", it.baseline().day());
    } else if (choice instanceof Choice.OfSession it) {
      return phrases.say(AREA, "choice.session", it.track().name(), it.session().day());
    } else if (choice instanceof Choice.OfMoto it) {
      return phrases.say(AREA, "choice.moto", it.track().name(), it.session().day(), it.moto() + 1);
    } else if (choice instanceof Choice.BestOf it) {
      return phrases.say(AREA, "choice.best", it.track().name(), it.session().day(), it.moto() + 1);
    }
    return planned(choice);
  }

  private String planned(Choice choice) {
    if (choice instanceof Choice.StartAt it) {
      return phrases.say(AREA, "choice.start", it.track().name());
    } else if (choice instanceof Choice.OfAdvice it) {
      return phrases.say(AREA, "choice.advice", it.advice().day(), it.advice().proposals().size());
    } else if (choice instanceof Choice.OfHandedOver it) {
      return phrases.say(AREA, "choice.handed", it.handedOver().day());
    }
    return phrases.say(AREA, "choice.now");
  }

  public String setting(Setting setting) {
    return phrases.sentence(readings.setting(setting));
  }

  /** The difference of a setting with its sense, each leg apart where they moved differently. */
  public List<String> difference(SettingDifference row) {
    if (row.onlyBefore() || row.onlyAfter()) {
      String key = row.onlyBefore() ? "only-before" : "only-after";
      var standing = row.onlyBefore() ? row.from() : row.to();
      return List.of(
          phrases.say(
              AREA, key, readings.reading(row.setting(), standing.orElseThrow().reading())));
    }
    List<String> said = new ArrayList<>();
    for (LegDifference leg : row.legsMoveAlike() ? row.legs().subList(0, 1) : row.legs()) {
      String change = changes.change(row.setting(), leg.from(), leg.to());
      boolean apart = !row.legsMoveAlike() && leg.leg().isPresent();
      said.add(apart ? changes.ofLeg(leg.leg().get(), change) : change);
    }
    return said;
  }

  public String sag(SagRow row) {
    if (row.isSame()) {
      return phrases.say(
          AREA, "sag.same", sagName(row.kind()), phrases.name(row.end()), amount(row.from()));
    }
    return phrases.say(
        AREA,
        "sag",
        sagName(row.kind()),
        phrases.name(row.end()),
        amount(row.from()),
        amount(row.to()));
  }

  private String amount(Optional<rutbook.units.Amount> amount) {
    return amount.map(phrases.amounts()::amount).orElseGet(() -> phrases.say(AREA, "unknown"));
  }

  private String sagName(SagKind kind) {
    return phrases.say(AREA, "sag." + kind.name());
  }

  public String feel(FeelRow row) {
    return phrases.say(AREA, "feel", feel(row.key()), severity(row.from()), severity(row.to()));
  }

  public String feel(Feel.Key key) {
    return phrases.say(AREA, "feel.key", key.end(), key.symptom(), key.section());
  }

  private String severity(java.util.OptionalInt severity) {
    return severity.isPresent()
        ? String.valueOf(severity.getAsInt())
        : phrases.say(AREA, "not-mentioned");
  }

  /** Ground, moisture, roughness and air, as far as noted; empty when nothing is. */
  public String conditions(Conditions conditions) {
    List<String> said = new ArrayList<>();
    conditions.ground().ifPresent(it -> said.add(phrases.name(it)));
    conditions.moisture().ifPresent(it -> said.add(phrases.name(it)));
    conditions
        .roughness()
        .ifPresent(it -> said.add(phrases.say(AREA, "roughness", String.valueOf(it))));
    conditions.air().ifPresent(it -> said.add(phrases.amounts().amount(it)));
    return String.join(", ", said);
  }

  public String finding(Finding finding) {
    if (finding instanceof Finding.OutsideLimits it) {
      return phrases.say(
          AREA,
          "outside",
          setting(it.setting()),
          readings.reading(it.setting(), it.reading()),
          phrases.amounts().limits(it.limits()));
    } else if (finding instanceof Finding.LegsApart it) {
      return phrases.say(
          AREA, "legs", setting(it.setting()), readings.reading(it.setting(), it.reading()));
    } else if (finding instanceof Finding.NotKnown it) {
      return phrases.say(
          AREA, "not-known", setting(it.setting()), readings.reading(it.setting(), it.reading()));
    } else if (finding instanceof Finding.NoReading it) {
      return phrases.say(AREA, "no-reading", setting(it.setting()));
    } else if (finding instanceof Finding.BrokenChain it) {
      return phrases.say(AREA, "broken", it.at().session().day(), rows(it.at().rows()));
    }
    return sagOrService(finding);
  }

  private String rows(List<SettingDifference> rows) {
    List<String> said = new ArrayList<>();
    for (SettingDifference row : rows) {
      said.add(readings.setting(row.setting()) + " " + String.join(", ", difference(row)));
    }
    return String.join("; ", said);
  }

  private String sagOrService(Finding finding) {
    if (finding instanceof Finding.SagOut it) {
      return phrases.say(
          AREA,
          "sag-out",
          sagName(it.kind()),
          phrases.name(it.end()),
          it.measured(),
          it.window(),
          it.day());
    } else if (finding instanceof Finding.SagNotMeasured it) {
      return phrases.say(AREA, "sag-not-measured", sagName(it.kind()), phrases.name(it.end()));
    } else if (finding instanceof Finding.ServiceDue it) {
      return phrases.say(
          AREA,
          it.everDone() ? "service-due" : "service-never",
          it.item().name(),
          hours(it.hours()),
          it.item().interval());
    }
    Finding.ServiceNear near = (Finding.ServiceNear) finding;
    return phrases.say(
        AREA, "service-near", near.item().name(), hours(near.hours()), near.item().interval());
  }

  private String hours(double hours) {
    return phrases.amounts().number(hours, 1);
  }
}
