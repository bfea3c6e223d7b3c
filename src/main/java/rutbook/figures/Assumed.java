package rutbook.figures;

/** What a figure takes for granted; each makes it an estimate until somebody measures. */
public enum Assumed {
  /** Chamber volume reckoned from the manual's greatest fill; exact once it is measured. */
  CHAMBER_FROM_GREATEST_FILL,
  /** Chamber volume on the sheet, but not measured. */
  CHAMBER_NOT_MEASURED,
  /** The cartridge rod counts as displacing nothing; its diameter makes it exact. */
  CARTRIDGE_ROD_LEFT_OUT,
  /** The spring's steel counts as nothing; about 70 mL of it can double the end force. */
  SPRING_STEEL_LEFT_OUT,
  /** The fork spring's preload counts as none; its length makes it exact. */
  FORK_PRELOAD_NONE,
  /** The oil of an open bath went in by volume; its level makes it exact. */
  OPEN_BATH_BY_VOLUME,
  /** The negative chamber fills from the main one at full extension, over the same area. */
  NEGATIVE_EQUAL_AT_EXTENSION,
  /** The air was closed in at sea level; the altitude makes it exact. */
  SEA_LEVEL,
  /** The rake is taken as 27°. */
  RAKE_TYPICAL,
  /** The rear wheel is taken to carry {@link SagFigures#REAR_SHARE} of the rider: our choice. */
  REAR_SHARE_OF_RIDER,
  /** The sheet has no window for this sag: the trade's for full-size motocross stands in. */
  SAG_WINDOW_OF_THE_TRADE,
  /** The oil is taken to be as warm as {@link OilFigures#RIDING}: our choice. */
  OIL_TEMPERATURE,
  /** A blend by the rule for mineral oils; a measured blend makes it exact. */
  BLEND_RULE,
  /** The sheet's geometry is taken to be that of today's height. */
  GEOMETRY_OF_TODAY,
  /** The temperature is taken not to have changed. */
  SAME_TEMPERATURE,
  /** The altitude is taken not to have changed. */
  SAME_ALTITUDE,
  /** The index comes from between the carried rows of the standard's table. */
  INDEX_BETWEEN_ROWS
}
