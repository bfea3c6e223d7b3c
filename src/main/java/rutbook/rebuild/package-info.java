/**
 * The rebuild as a graph of steps, the return to baseline, its confirmation, and service hours:
 * pure functions of the notebook that return facts, never sentences.
 */
package rutbook.rebuild;
