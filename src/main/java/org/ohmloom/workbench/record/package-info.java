/**
 * The as-built tab: measured values, entered by hand or taken in from filled-in test sheets.
 */
@NullMarked
package org.ohmloom.workbench.record;

import org.jspecify.annotations.NullMarked;
