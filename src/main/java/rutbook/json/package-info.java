/**
 * Text to values and back: the notebook's file, and the answers of the command line. The only
 * package that knows Jackson; it touches no disk and makes no sentences.
 */
package rutbook.json;
