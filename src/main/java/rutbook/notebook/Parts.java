package rutbook.notebook;

/** What is built into the bike: fork, shock, geometry and the sag it is meant to have. */
public record Parts(ForkParts fork, ShockParts shock, Geometry geometry, SagWindows sag) {}
