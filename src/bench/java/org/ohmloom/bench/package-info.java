/** Benchmarks: how long reading, saving, solving, analysing, routing and drawing take. Time is measured here alone. */
@NullMarked
package org.ohmloom.bench;

import org.jspecify.annotations.NullMarked;
