/**
 * The file format: versions, migration, atomic save, recovery; CSV and spreadsheet exchange; offers a JSON writer to
 * later rows.
 *
 * <p>Floor 1. Jackson is imported here only.
 */
@NullMarked
package org.ohmloom.store;

import org.jspecify.annotations.NullMarked;
