/**
 * The manual's window: contents, search and pages.
 *
 * <p>Part of floor 8. What the pages are and how they are found is in {@code org.ohmloom.manual}.
 */
@NullMarked
package org.ohmloom.workbench.manual;

import org.jspecify.annotations.NullMarked;
