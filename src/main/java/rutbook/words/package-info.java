/**
 * The only maker of sentences: facts from the pure packages become text in the rider's units and
 * language, from resource bundles; a second language is a second set of bundles and no code.
 */
package rutbook.words;
