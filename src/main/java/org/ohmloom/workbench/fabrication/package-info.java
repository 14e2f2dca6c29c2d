/**
 * The fabrication tab: lengths, coverings, routes, allowances and splices as the shop makes them.
 */
@NullMarked
package org.ohmloom.workbench.fabrication;

import org.jspecify.annotations.NullMarked;
