package rutbook.cli;

import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import rutbook.compare.SettingHistory;
import rutbook.json.HistoryAnswer;
import rutbook.notebook.Setting;

/** How each setting moved, with rebuilds, sheets and baselines. */
@Command(
    name = "history",
    description = "Print how each setting moved, with rebuilds, sheets and baselines beside it.")
final class HistoryCommand extends OnNotebook {
  @Option(
      names = "--setting",
      defaultValue = "",
      paramLabel = "NAME",
      description = "Only this setting, by its name.")
  private String setting;

  @Override
  public Integer call() {
    OpenedNotebook opened = opened();
    List<SettingHistory> histories =
        setting.isEmpty()
            ? SettingHistory.of(opened.timeline())
            : List.of(SettingHistory.of(opened.timeline(), setting(opened)));
    return answer(
        opened,
        Exit.DONE,
        HistoryAnswer.of(histories),
        pages -> histories.forEach(new ComparedPages(opened, terminal())::history));
  }

  private Setting setting(OpenedNotebook opened) {
    List<Setting> all = opened.bike().latestSheet().settings();
    return all.stream()
        .filter(each -> each.name().equalsIgnoreCase(setting) || each.id().text().equals(setting))
        .findFirst()
        .orElseThrow(
            () ->
                Refusal.use(
                    opened.say(
                        "no-setting",
                        setting,
                        String.join(", ", all.stream().map(Setting::name).toList()))));
  }
}
