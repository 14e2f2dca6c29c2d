/**
 * The views of one window taken together, and the commands that work on them.
 */
@NullMarked
package org.ohmloom.workbench.bench;

import org.jspecify.annotations.NullMarked;
