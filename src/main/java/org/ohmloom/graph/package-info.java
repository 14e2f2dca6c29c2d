/**
 * The harness as graphs: electrical multigraph, return network, bundle tree; loops, routes, shared paths, islands.
 *
 * <p>Floor 2. JGraphT is imported here and in {@code signal} only.
 */
@NullMarked
package org.ohmloom.graph;

import org.jspecify.annotations.NullMarked;
