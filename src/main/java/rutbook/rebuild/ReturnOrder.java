package rutbook.rebuild;

import java.util.List;

/**
 * Chooses the order of a return that is walked one setting and one moto at a time. It is handed the
 * settings in trade order, and must give all of them back.
 */
@FunctionalInterface
public interface ReturnOrder {
  /** As the trade goes, resting each setting on those before it. */
  ReturnOrder TRADE = settings -> settings;

  List<SettingReturn> order(List<SettingReturn> settings);
}
