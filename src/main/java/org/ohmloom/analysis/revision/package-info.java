/** Two revisions of one harness held side by side: what was added, removed and changed, and what that does to the results. */
@NullMarked
package org.ohmloom.analysis.revision;

import org.jspecify.annotations.NullMarked;
