/**
 * Charts as scenes in millimetres: values over time, opening times over currents, bars. They know nothing of a harness; the
 * same painter draws them as the drawings. Every line has a pattern and a label of its own.
 */
@NullMarked
package org.ohmloom.draw.chart;

import org.jspecify.annotations.NullMarked;
