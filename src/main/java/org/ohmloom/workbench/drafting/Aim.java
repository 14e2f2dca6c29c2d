package org.ohmloom.workbench.drafting;

import org.ohmloom.draw.Point;
import org.ohmloom.model.Position;

/**
 * Where a tool is pointed at, by the mouse or by the arrow keys.
 *
 * @param board the place on the board, drawn to the grid; in a circuit the point of the scene
 * @param scene the point of the scene itself
 */
record Aim(Position board, Point scene) {}
