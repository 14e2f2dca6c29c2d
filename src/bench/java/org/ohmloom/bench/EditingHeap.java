package org.ohmloom.bench;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.ohmloom.analysis.ShipHarness;
import org.ohmloom.edit.Session;
import org.ohmloom.edit.SetWireGauge;
import org.ohmloom.edit.SetWireLength;
import org.ohmloom.model.Harness;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Gauge;

/**
 * The heap that a session of random edits takes, and how it grows: sizes, lengths, undo and redo.
 * Arguments: count of wires, count of edits. Prints what lives after a full collection at each tenth of the way.
 */
public final class EditingHeap {

    private static final long SEED = 8;
    private static final double MEGABYTE = 1 << 20;
    private static final int LOOKS = 10;

    private final Random random = new Random(SEED);
    private final Session session;
    private final List<WireId> wires;

    private EditingHeap(Harness harness) {
        this.session = new Session(harness, Optional.empty());
        this.wires = List.copyOf(harness.wires().ids());
    }

    /** Edits and prints. */
    public static void main(String[] arguments) {
        int edits = Integer.parseInt(arguments[1]);
        EditingHeap run = new EditingHeap(ShipHarness.ofWires(Integer.parseInt(arguments[0])));
        System.out.printf(Locale.ROOT, "%s wires%n%8d edits %8.1f MB%n", arguments[0], 0, livingMegabytes());
        for (int edit = 1; edit <= edits; edit++) {
            run.edit();
            if (edit % (edits / LOOKS) == 0) {
                System.out.printf(
                        Locale.ROOT,
                        "%8d edits %8.1f MB, %d steps kept, %d dropped%n",
                        edit,
                        livingMegabytes(),
                        run.session.steps().size(),
                        run.session.stepsDropped());
            }
        }
    }

    private static double livingMegabytes() {
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        return (runtime.totalMemory() - runtime.freeMemory()) / MEGABYTE;
    }

    private void edit() {
        WireId id = wires.get(random.nextInt(wires.size()));
        switch (random.nextInt(10)) {
            case 0 -> session.undo();
            case 1 -> session.redo();
            case 2, 3, 4 -> session.apply(
                    new SetWireLength(List.of(id), OptionalDouble.of(0.1 + random.nextInt(90) / 10.0)));
            default -> session.apply(SetWireGauge.of(
                    id, Gauge.metric(List.of(0.5, 1.0, 2.5, 6.0, 16.0).get(random.nextInt(5)))));
        }
    }
}
