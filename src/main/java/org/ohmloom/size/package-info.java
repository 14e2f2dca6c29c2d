/**
 * Choice of conductor and protective device, and why.
 *
 * <p>Floor 4.
 */
@NullMarked
package org.ohmloom.size;

import org.jspecify.annotations.NullMarked;
