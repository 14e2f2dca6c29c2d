/**
 * DC network solution for an operating state, its residual, its status per island; sensitivities.
 *
 * <p>Floor 3. The linear algebra library is imported here only.
 */
@NullMarked
package org.ohmloom.solve;

import org.jspecify.annotations.NullMarked;
