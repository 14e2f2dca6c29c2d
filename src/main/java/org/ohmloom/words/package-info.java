/**
 * Texts a person reads, from message bundles beside the code that says them, in any language.
 *
 * <p>Floor 0: imports no other package of ours.
 */
@NullMarked
package org.ohmloom.words;

import org.jspecify.annotations.NullMarked;
