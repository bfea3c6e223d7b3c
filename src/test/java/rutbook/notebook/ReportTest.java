package rutbook.notebook;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ReportTest {
  private final Feel harsh = Feel.of(End.FRONT, Section.RUTS, Symptom.HARSH, 3);
  private final Feel rear = Feel.of(End.REAR, Section.RUTS, Symptom.HARSH, 1);
  private final Report told = Report.EMPTY.with(harsh).with(rear);

  @Test
  void whatIsFeltIsFoundByEndSectionAndSymptom() {
    assertThat(told.feel()).containsExactly(harsh, rear);
    assertThat(told.feel(harsh.key())).contains(harsh);
    assertThat(told.feel(rear.key())).contains(rear);
    assertThat(told.feel(new Feel.Key(End.FRONT, Section.LANDING, Symptom.HARSH))).isEmpty();
  }

  @Test
  void aFeelSaidAgainStandsWhereItStood() {
    assertThat(told.with(harsh.withSeverity(5)).feel())
        .containsExactly(harsh.withSeverity(5), rear);
    assertThat(told.with(rear.withSeverity(0)).feel()).containsExactly(harsh, rear.withSeverity(0));
  }

  @Test
  void aFeelTakenBackLeavesTheOthers() {
    assertThat(told.without(harsh.key()).feel()).containsExactly(rear);
    assertThat(told.without(rear.key()).without(harsh.key())).isEqualTo(Report.EMPTY);
  }
}
