package org.ohmloom.workbench;

import java.awt.event.KeyEvent;

/** Stops the calculation under way. */
final class StopCalculating extends Command {

    private static final long serialVersionUID = 1L;

    private final transient Bench bench;

    StopCalculating(Bench bench) {
        super(
                "stop-calculating",
                "Stop calculating",
                "Stop the calculation under way; older numbers stay and are marked");
        this.bench = bench;
        withKeys(Keys.shift(KeyEvent.VK_F5)).withMnemonic('S');
    }

    @Override
    void run() {
        bench.desk().stopCalculating();
    }

    @Override
    void refresh() {
        setReady(bench.desk().status().kind() == CalculationStatus.Kind.CALCULATING, "no calculation is under way");
    }
}
