/**
 * What is wrong, where, by how much, by which source, and what mends it.
 */
@NullMarked
package org.ohmloom.workbench.findings;

import org.jspecify.annotations.NullMarked;
