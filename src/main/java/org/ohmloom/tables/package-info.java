/**
 * Published reference data read from {@code wire-tables/}, each value with source, edition, table, status.
 *
 * <p>Floor 1. commons-csv is imported here, in {@code store} and in {@code pack} only.
 */
@NullMarked
package org.ohmloom.tables;

import org.jspecify.annotations.NullMarked;
