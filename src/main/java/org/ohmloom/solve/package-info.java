/**
 * DC network solution for an operating state, its residual, its status per island; sensitivities.
 *
 * <p>Floor 3. Start at {@link org.ohmloom.solve.NetworkSolver}, which names the steps from the outside in; one file per
 * step. The linear network is solved by an elimination of its own, {@code StarMesh}; why, and what was tried before, is
 * in {@code src/docs/design-notes.md}. A linear algebra library may be imported here and nowhere else.
 */
@NullMarked
package org.ohmloom.solve;

import org.jspecify.annotations.NullMarked;
