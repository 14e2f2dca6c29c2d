package org.ohmloom.solve;

import java.util.ArrayList;
import java.util.List;

/**
 * A few moments that tell the mean of everything nearly: one in which every clock is in its longest part, and from there every
 * other part of each clock alone. mean = f0 + sum over clocks and parts of share x (f - f0), which leaves out what only two
 * clocks together do. Enough to see which way relays go; what they come to rest at is checked with all moments.
 *
 * @param moments the part each clock is in
 * @param weights weight of each moment; they sum to 1, that of the first may be negative
 */
record RestingMoments(List<List<Part>> moments, List<Double> weights) {

    static RestingMoments of(List<List<Part>> parts) {
        List<Part> longest = new ArrayList<>();
        for (List<Part> own : parts) {
            Part most = own.get(0);
            for (Part each : own) {
                most = each.shareFraction() > most.shareFraction() ? each : most;
            }
            longest.add(most);
        }
        List<List<Part>> moments = new ArrayList<>(List.of(longest));
        List<Double> weights = new ArrayList<>(List.of(1.0));
        for (int clock = 0; clock < parts.size(); clock++) {
            for (Part part : parts.get(clock)) {
                if (part != longest.get(clock)) {
                    List<Part> moment = new ArrayList<>(longest);
                    moment.set(clock, part);
                    moments.add(moment);
                    weights.add(part.shareFraction());
                    weights.set(0, weights.get(0) - part.shareFraction());
                }
            }
        }
        return new RestingMoments(moments, weights);
    }
}
