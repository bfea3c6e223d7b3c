package rutbook.json;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rutbook.compare.Group;
import rutbook.compare.LapComparison;
import rutbook.compare.Room;
import rutbook.compare.SagKind;
import rutbook.compare.SettingHistory;
import rutbook.compare.TrackDifference;
import rutbook.compare.WithoutDrift;
import rutbook.figures.Assumed;
import rutbook.figures.FillKind;
import rutbook.figures.FillRoom;
import rutbook.figures.GasFigures;
import rutbook.figures.LegFigures;
import rutbook.figures.Need;
import rutbook.figures.Quantity;
import rutbook.imports.NotTaken;
import rutbook.notebook.Bite;
import rutbook.notebook.End;
import rutbook.notebook.Fastener;
import rutbook.notebook.ForkKind;
import rutbook.notebook.Gate;
import rutbook.notebook.Ground;
import rutbook.notebook.How;
import rutbook.notebook.Moisture;
import rutbook.notebook.MotoKind;
import rutbook.notebook.Ready;
import rutbook.notebook.Renewed;
import rutbook.notebook.Role;
import rutbook.notebook.Scope;
import rutbook.notebook.Section;
import rutbook.notebook.Sense;
import rutbook.notebook.Shared;
import rutbook.notebook.Side;
import rutbook.notebook.Symptom;
import rutbook.notebook.When;
import rutbook.notebook.WhyUnknown;
import rutbook.notebook.Work;
import rutbook.physics.IndexAnswer;
import rutbook.physics.SpringVerdict;
import rutbook.physics.ViscosityIndex;
import rutbook.reasoning.NextChange;
import rutbook.reasoning.SectionGroup;
import rutbook.reasoning.StartAtTrack;
import rutbook.rebuild.Ask;
import rutbook.rebuild.Caution;
import rutbook.rebuild.DoneWhen;
import rutbook.rebuild.Place;
import rutbook.rebuild.Remark;
import rutbook.rebuild.ReturnItem;
import rutbook.rebuild.StepKind;
import rutbook.rebuild.Tool;
import rutbook.share.ChosenSetup;
import rutbook.share.Standing;
import rutbook.units.Unit;

/** The words of the answers' schema are those of the program, also where no test sees them said. */
class AnswersWordsTest {
  /** By the definition, or the property of one, that lists the words. */
  private static final Map<String, Class<? extends Enum<?>>> WORDS =
      Map.ofEntries(
          entry("action", ReturnItem.Action.class),
          entry("assumed", Assumed.class),
          entry("basis", Remark.Basis.class),
          entry("bite", Bite.class),
          entry("caution", Caution.class),
          entry("chamberFrom", LegFigures.ChamberFrom.class),
          entry("doneWhen", DoneWhen.class),
          entry("driftTaken", WithoutDrift.Drift.class),
          entry("end", End.class),
          entry("fastener", Fastener.class),
          entry("fillKind", FillKind.class),
          entry("forkKind", ForkKind.class),
          entry("form", Ask.Form.class),
          entry("gasBody", GasFigures.Body.class),
          entry("ground", Ground.class),
          entry("group", Group.class),
          entry("how", How.class),
          entry("indexProcedure", ViscosityIndex.Procedure.class),
          entry("jsonExpected", JsonFault.Expected.class),
          entry("jsonFaultKind", JsonFault.Kind.class),
          entry("leg", Side.class),
          entry("moisture", Moisture.class),
          entry("motoKind", MotoKind.class),
          entry("needWhy", Need.Why.class),
          entry("noIndexWhy", IndexAnswer.Why.class),
          entry("noViscosityWhy", Remark.NoViscosity.Why.class),
          entry("place", Place.class),
          entry("proposalStanding", Standing.class),
          entry("quantity", Quantity.class),
          entry("ready", Ready.class),
          entry("renewed", Renewed.class),
          entry("role", Role.class),
          entry("room", Room.class),
          entry("notTaken.why", NotTaken.Why.class),
          entry("roomVerdict", FillRoom.Verdict.class),
          entry("sagKind", SagKind.class),
          entry("scope", Scope.class),
          entry("section", Section.class),
          entry("sense", Sense.class),
          entry("shared", Shared.class),
          entry("springVerdict", SpringVerdict.class),
          entry("stepKind", StepKind.class),
          entry("symptom", Symptom.class),
          entry("tool", Tool.class),
          entry("when", When.class),
          entry("whyUnknown", WhyUnknown.class),
          entry("answerNext.kind", NextChange.Kind.class),
          entry("complaint.group", SectionGroup.class),
          entry("explanation.kind", ExplainFacts.Kind.class),
          entry("gateCard.gate", Gate.class),
          entry("handedSetup.what", ChosenSetup.What.class),
          entry("historyMark.kind", SettingHistory.Kind.class),
          entry("lapComparison.state", LapComparison.State.class),
          entry("settingAtTracks.verdict", TrackDifference.Verdict.class),
          entry("startSetting.basis", StartAtTrack.Basis.class),
          entry("suggestion.work", Work.class));

  /** No words of an enum: exit codes, signs of units, grades as printed, what was chosen. */
  private static final List<String> OTHERS = List.of("exit", "unit", "isoGrade", "subject.chosen");

  private final JsonNode definitions = PublishedSchema.ANSWERS.tree().path("$defs");

  @Test
  void everyListOfWordsIsThatOfItsEnum() {
    WORDS.forEach(
        (place, type) ->
            assertThat(words(place))
                .as(place)
                .containsExactlyInAnyOrderElementsOf(
                    Stream.of(type.getEnumConstants()).map(Words::word).toList()));
    assertThat(words("unit")).isEqualTo(Unit.all().stream().map(Unit::symbol).toList());
  }

  @Test
  void noListOfWordsIsForgottenHere() {
    TreeSet<String> places = new TreeSet<>();
    for (Map.Entry<String, JsonNode> definition : definitions.properties()) {
      if (definition.getValue().has("enum")) {
        places.add(definition.getKey());
      }
      for (Map.Entry<String, JsonNode> property :
          definition.getValue().path("properties").properties()) {
        if (property.getValue().has("enum")) {
          places.add(definition.getKey() + "." + property.getKey());
        }
      }
    }
    List<String> known = new ArrayList<>(WORDS.keySet());
    known.addAll(OTHERS);
    assertThat(places).containsExactlyInAnyOrderElementsOf(known);
  }

  private List<String> words(String place) {
    String[] names = place.split("\\.");
    JsonNode at = definitions.path(names[0]);
    JsonNode list = names.length == 1 ? at : at.path("properties").path(names[1]);
    List<String> words = new ArrayList<>();
    list.path("enum").forEach(word -> words.add(word.asText()));
    return words;
  }
}
