package org.ohmloom.workbench.recovery;

import java.awt.EventQueue;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.Executors;
import org.ohmloom.edit.SetWireLength;
import org.ohmloom.model.WireId;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Document;
import org.ohmloom.workbench.desk.Saves;

/** A program that edits a harness without end, to be killed while it does. */
final class AutosaveRun {

    private static final int PAUSE_MILLIS = 50;
    private static final int BETWEEN_EDITS_MILLIS = 10;

    private AutosaveRun() {}

    /**
     * Edits until it is killed.
     *
     * @param arguments the harness file; where its own data lies is the system property
     */
    public static void main(String[] arguments) throws Exception {
        Document document = Document.read(Path.of(arguments[0]));
        EventQueue.invokeAndWait(() -> {
            Desk desk = new Desk(
                    (question, cancel, soFar) -> {
                        throw new IllegalStateException("nothing is calculated here");
                    },
                    EventQueue::invokeLater);
            new Autosave(
                    desk,
                    new Saves(Runnable::run, Runnable::run, Runnable::run),
                    RecoveryPlace.ofUser(),
                    Executors.newSingleThreadExecutor(),
                    Clock.systemUTC(),
                    1,
                    PAUSE_MILLIS);
            desk.open(document);
        });
        for (int k = 1; ; k++) {
            double metres = 1 + k / 1000.0;
            EventQueue.invokeAndWait(() ->
                    document.session().apply(new SetWireLength(List.of(new WireId("W4")), OptionalDouble.of(metres))));
            Thread.sleep(BETWEEN_EDITS_MILLIS);
        }
    }
}
