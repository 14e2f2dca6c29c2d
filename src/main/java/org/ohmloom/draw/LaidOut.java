package org.ohmloom.draw;

import java.util.Optional;

/**
 * A harness laid out to be looked at.
 *
 * @param scene the picture
 * @param board where things stand on the board it shows; empty when it is drawn as a circuit, where nothing has a place
 * @param scale the scale it is shaded by; empty where it is not shaded
 */
public record LaidOut(Scene scene, Optional<BoardPlaces> board, Optional<HeatScale> scale) {

    /** The same with another picture of it. */
    public LaidOut showing(Scene other) {
        return new LaidOut(other, board, scale);
    }
}
