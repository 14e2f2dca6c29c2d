package org.ohmloom.tables;

import java.util.Optional;

/**
 * The factor of one row of a bundle table.
 *
 * @param upToConductors the most conductors it holds for; {@link Integer#MAX_VALUE} for "and more"
 * @param factor         the factor on the current of each conductor, more than 0, at most 1
 * @param largeFactor    the factor for large conductors, where the table tells them apart
 */
public record BundleRow(int upToConductors, CitedValue factor, Optional<CitedValue> largeFactor) {}
