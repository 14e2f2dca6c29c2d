package org.ohmloom.workbench.bench;

import java.awt.event.KeyEvent;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.desk.CalculationStatus;
import org.ohmloom.workbench.widget.Keys;

/** Stops the calculation under way. */
public final class StopCalculating extends Command {

    private static final long serialVersionUID = 1L;

    private final transient Bench bench;

    public StopCalculating(Bench bench) {
        super(
                "stop-calculating",
                "Stop calculating",
                "Stop the calculation under way; older numbers stay and are marked");
        this.bench = bench;
        withKeys(Keys.shift(KeyEvent.VK_F5)).withMnemonic('S');
    }

    @Override
    public void run() {
        bench.desk().stopCalculating();
    }

    @Override
    public void refresh() {
        setReady(bench.desk().status().kind() == CalculationStatus.Kind.CALCULATING, "no calculation is under way");
    }
}
