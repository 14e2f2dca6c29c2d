/**
 * The one place that changes: the open document, its results, the selection, and who is told of it.
 */
@NullMarked
package org.ohmloom.workbench.desk;

import org.jspecify.annotations.NullMarked;
