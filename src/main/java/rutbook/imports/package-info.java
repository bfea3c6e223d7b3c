/**
 * Laps and setups that other programs left behind: from bytes to a plan of what would be taken, row
 * by row, and one edit. It touches no disk and makes no sentence.
 */
package rutbook.imports;
