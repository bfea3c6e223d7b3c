/**
 * The one place where a bike and its setup become SI numbers for physics, and where results come
 * back as amounts: facts and figures, each with what was assumed for it or what it needs; no
 * sentences.
 */
package rutbook.figures;
