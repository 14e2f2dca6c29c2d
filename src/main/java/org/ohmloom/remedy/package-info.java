/**
 * Tries a change on a copy and reports the difference.
 *
 * <p>Floor 5.
 */
@NullMarked
package org.ohmloom.remedy;

import org.jspecify.annotations.NullMarked;
