/** Tables of other programs on their way into the notebook: what each column is, what is taken. */
package rutbook.ui.imports;
