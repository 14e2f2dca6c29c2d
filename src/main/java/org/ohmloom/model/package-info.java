/**
 * The harness as immutable records with typed ids; refuses the impossible, allows the unfinished.
 *
 * <p>Floor 0: may use {@code units} and {@code words} and nothing else of ours.
 */
@NullMarked
package org.ohmloom.model;

import org.jspecify.annotations.NullMarked;
