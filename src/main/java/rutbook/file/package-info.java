/**
 * Bytes to disk and back: the only package that touches the disk. It knows nothing of what the
 * bytes mean; whoever calls it says whether they can be read.
 */
package rutbook.file;
