package rutbook.ui.controls;

import java.util.ArrayList;
import java.util.List;
import rutbook.notebook.Bounds;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Sheet;
import rutbook.words.SettingWords;
import rutbook.words.WindowWords;

/** What a screen reader says for a ruler. */
public final class RulerSentence {
  private RulerSentence() {}

  public static String of(
      WindowWords words,
      SettingWords settingWords,
      Sheet sheet,
      Setting setting,
      Reading reading,
      List<String> marks) {
    List<String> sentences = new ArrayList<>();
    sentences.add(
        words.text(
            "ruler.value",
            setting.name(),
            settingWords.reading(setting, reading),
            settingWords.limits(sheet.limits(setting))));
    sentences.addAll(marks);
    if (reading.legsDiffer()) {
      sentences.add(words.text("ruler.legs"));
    }
    if (!Bounds.isInside(sheet, setting, reading)) {
      sentences.add(words.text("ruler.outside"));
    } else if (reading.amounts().stream()
        .anyMatch(amount -> Bounds.isNearStop(sheet, setting, amount))) {
      sentences.add(words.text("ruler.near"));
    }
    return String.join(" ", sentences);
  }
}
