/**
 * One class per rule, one list of all rules, findings with optional fix.
 *
 * <p>Floor 5.
 */
@NullMarked
package org.ohmloom.review;

import org.jspecify.annotations.NullMarked;
