/**
 * What can be learned from few and noisy numbers: summaries, comparisons, regressions with what was
 * known before. Pure functions of doubles that know no notebook. A number outside a stated range is
 * refused with an {@link IllegalArgumentException} that carries it; whatever is accepted gives
 * finite answers, and an empty one where there is nothing to say.
 */
package rutbook.stats;
