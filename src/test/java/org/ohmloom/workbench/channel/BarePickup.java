package org.ohmloom.workbench.channel;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.ohmloom.edit.TakeOut;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.store.HarnessFiles;

/** The example of the rescue pickup before its sensors are planned. */
final class BarePickup {

    private static final Set<SignalClass> SIGNALS = EnumSet.of(
            SignalClass.REFERENCE_SUPPLY,
            SignalClass.REFERENCE_RETURN,
            SignalClass.ANALOGUE_SIGNAL,
            SignalClass.PULSE_SIGNAL,
            SignalClass.DATA_BUS);

    private BarePickup() {}

    /** With its units, without the wires of its sensors and its data bus. */
    static Harness withUnits() throws HarnessFileException {
        Harness harness = HarnessFiles.read(Path.of("examples", "rescue-pickup" + HarnessFiles.ENDING));
        List<ElementId> gone = new ArrayList<>(harness.cables().ids());
        for (Wire wire : harness.wires().all()) {
            if (SIGNALS.contains(wire.signalClass())) {
                gone.add(wire.id());
                for (WireEnd end : wire.ends()) {
                    if (end instanceof WireEnd.AtSplice at) {
                        gone.add(at.splice());
                    }
                }
            }
        }
        return new TakeOut(gone.stream().distinct().toList()).apply(harness);
    }
}
