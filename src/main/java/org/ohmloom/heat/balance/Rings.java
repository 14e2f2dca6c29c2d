package org.ohmloom.heat.balance;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Wires around a wire in the middle, in rings: the one that makes most heat for its room innermost, each ring a hollow cylinder
 * through which the heat from inside and its own flow outward.
 *
 * <p>A ring of room s and heat h, outside room S with heat H in it, adds (H - h S/s) ln((S + s)/S) + h over 4 pi times the
 * conductivity. Seen from the wire in the middle, a ring that comes after its own turn has around it what any other wire in the
 * middle has there, so those terms are summed once for all; of a ring before its turn, S depends on the middle through its room
 * alone and H through its heat, linearly. So one pass over the rings with one pair of running sums for each different room gives
 * the rise of every wire, instead of one pass for each wire.
 */
final class Rings {

    private static final int MOST_MOVES = 8;

    private final double[] squareMm2;
    private final double[] roomsMm2;
    private final int[] room;

    /** Rings of wires whose outside diameters squared are given, mm2. */
    Rings(double[] squareMm2) {
        this.squareMm2 = squareMm2;
        this.roomsMm2 = Arrays.stream(squareMm2).sorted().distinct().toArray();
        this.room = Arrays.stream(squareMm2)
                .mapToInt(each -> Arrays.binarySearch(roomsMm2, each))
                .toArray();
    }

    /**
     * Rise from the bundle's edge to the outside of each wire, were it the one in the middle, K.
     *
     * @param heat                   what each wire makes, W/m
     * @param wattsPerMetrePerKelvin conductivity of the rings
     * @param order                  the rings in the order of the round before; brought into this round's
     */
    double[] riseKelvin(double[] heat, double wattsPerMetrePerKelvin, int[] order) {
        arrange(order, heat);
        double[] rise = before(order, heat);
        double[] ring = asSeenFromWithin(order, heat);
        double after = 0;
        for (int place = order.length - 1; place >= 0; place--) {
            int middle = order[place];
            rise[middle] = (rise[middle] + after) / (4 * Math.PI * wattsPerMetrePerKelvin);
            after += ring[place];
        }
        return rise;
    }

    /** The rings' order where nothing is known of it: as the wires were given. */
    int[] anyOrder() {
        return IntStream.range(0, squareMm2.length).toArray();
    }

    /** Brings rings into order, most heat for its room first, of equal ones the first given. From round to round few change places. */
    private void arrange(int[] order, double[] heat) {
        double[] perRoom = new double[heat.length];
        for (int i = 0; i < heat.length; i++) {
            perRoom[i] = heat[i] / squareMm2[i];
        }
        int moves = 0;
        for (int place = 1; place < order.length; place++) {
            int ring = order[place];
            int to = place;
            while (to > 0 && isBefore(ring, order[to - 1], perRoom)) {
                order[to] = order[to - 1];
                to--;
            }
            order[to] = ring;
            moves += place - to;
            if (moves > MOST_MOVES * order.length) {
                sortAnew(order, perRoom);
                return;
            }
        }
    }

    private static void sortAnew(int[] order, double[] perRoom) {
        int[] sorted = IntStream.range(0, order.length)
                .boxed()
                .sorted(Comparator.comparingDouble((Integer i) -> -perRoom[i]))
                .mapToInt(Integer::intValue)
                .toArray();
        System.arraycopy(sorted, 0, order, 0, order.length);
    }

    private static boolean isBefore(int one, int other, double[] perRoom) {
        return perRoom[one] > perRoom[other] || (perRoom[one] == perRoom[other] && one < other);
    }

    /** For each wire in the middle, the terms of the rings whose turn comes before its own. */
    private double[] before(int[] order, double[] heat) {
        double[] sum = new double[heat.length];
        double[] withoutMiddle = new double[roomsMm2.length];
        double[] perMiddleHeat = new double[roomsMm2.length];
        double insideMm2 = 0;
        double insideHeat = 0;
        for (int i : order) {
            sum[i] = withoutMiddle[room[i]] + heat[i] * perMiddleHeat[room[i]];
            for (int k = 0; k < roomsMm2.length; k++) {
                double square = roomsMm2[k] + insideMm2;
                double across = Math.log((square + squareMm2[i]) / square);
                withoutMiddle[k] += (insideHeat - heat[i] * square / squareMm2[i]) * across + heat[i];
                perMiddleHeat[k] += across;
            }
            insideMm2 += squareMm2[i];
            insideHeat += heat[i];
        }
        return sum;
    }

    /** The term of each ring, in their order, with all those before it inside. */
    private double[] asSeenFromWithin(int[] order, double[] heat) {
        double[] ring = new double[order.length];
        double insideMm2 = 0;
        double insideHeat = 0;
        for (int place = 0; place < order.length; place++) {
            int i = order[place];
            if (place > 0) {
                double across = Math.log((insideMm2 + squareMm2[i]) / insideMm2);
                ring[place] = (insideHeat - heat[i] * insideMm2 / squareMm2[i]) * across + heat[i];
            }
            insideMm2 += squareMm2[i];
            insideHeat += heat[i];
        }
        return ring;
    }
}
