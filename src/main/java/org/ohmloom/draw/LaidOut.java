package org.ohmloom.draw;

import java.util.Optional;

/**
 * A harness laid out to be looked at.
 *
 * @param scene the picture
 * @param board where things stand on the board it shows; empty when it is drawn as a circuit, where nothing has a place
 */
public record LaidOut(Scene scene, Optional<BoardPlaces> board) {}
