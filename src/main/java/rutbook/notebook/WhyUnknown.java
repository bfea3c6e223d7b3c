package rutbook.notebook;

/** Why a reading is not known. */
public enum WhyUnknown {
  NOT_NOTED,
  NOT_COUNTED,
  STRIPPED,
  NOT_FITTED
}
