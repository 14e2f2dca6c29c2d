package org.ohmloom.draw;

import java.util.List;
import java.util.Map;
import org.ohmloom.model.WireId;

/** How thick bundles and strands are drawn: growing with the count of wires, not to scale. */
final class Thickness {

    private static final double STRAND_MM = 0.45;
    private static final double PITCH_MM = 0.75;
    private static final int WIDE_STRANDS = 12;
    private static final double NARROW_PITCH_MM = 0.1;
    private static final double MOST_PLAIN_MM = 5;

    private final Map<String, List<WireId>> wiresOf;
    private final boolean wires;

    Thickness(Map<String, List<WireId>> wiresOf, boolean wires) {
        this.wiresOf = wiresOf;
        this.wires = wires;
    }

    /** Width of the body of what carries that many wires, mm. */
    double bodyMm(int count) {
        if (!wires) {
            return Math.min(MOST_PLAIN_MM, 0.7 + 0.5 * Math.sqrt(count));
        }
        return strandsMm(count) + 0.9;
    }

    double bodyMm(String run) {
        return bodyMm(count(run));
    }

    int count(String run) {
        return wiresOf.getOrDefault(run, List.of()).size();
    }

    private static double strandsMm(int count) {
        return count <= WIDE_STRANDS
                ? count * PITCH_MM
                : WIDE_STRANDS * PITCH_MM + (count - WIDE_STRANDS) * NARROW_PITCH_MM;
    }

    /** Distance between the middles of neighbouring strands, mm. */
    static double pitchMm(int count) {
        return strandsMm(count) / Math.max(1, count);
    }

    /** Width of one strand, mm. */
    static double strandMm(int count) {
        return Math.min(STRAND_MM, pitchMm(count) * 0.7);
    }

    /** How far the strand of a rank lies from the middle of its run, mm. */
    static double offsetMm(int rank, int count) {
        return (rank - (count - 1) / 2.0) * pitchMm(count);
    }
}
