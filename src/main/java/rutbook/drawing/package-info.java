/** Pictures without a toolkit: shapes that the window, the printed card and HTML draw alike. */
package rutbook.drawing;
