package rutbook.offenders.ui.bike;

/** A page to be known. */
public record SomePage() {}
