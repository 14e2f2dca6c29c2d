package org.ohmloom.workbench.bench;

import java.awt.event.KeyEvent;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.desk.CalculationStatus;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.words.Words;

/** Stops the calculation under way. */
public final class StopCalculating extends Command {
    private static final Words WORDS = Words.of("commands");

    private static final long serialVersionUID = 1L;

    private final transient Bench bench;

    public StopCalculating(Bench bench) {
        super(
                "stop-calculating",
                WORDS.get("stop-calculating.stop-calculating"),
                WORDS.get("stop-calculating.stop-calculating.about"));
        this.bench = bench;
        withKeys(Keys.shift(KeyEvent.VK_F5)).withMnemonic('S');
    }

    @Override
    public void run() {
        bench.desk().stopCalculating();
    }

    @Override
    public void refresh() {
        setReady(
                bench.desk().status().kind() == CalculationStatus.Kind.CALCULATING,
                WORDS.get("stop-calculating.no-calculation-is-under"));
    }
}
