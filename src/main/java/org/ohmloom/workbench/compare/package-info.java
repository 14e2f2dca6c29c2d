/**
 * The compare tab: what differs between two revisions, and what that does to the results.
 */
@NullMarked
package org.ohmloom.workbench.compare;

import org.jspecify.annotations.NullMarked;
