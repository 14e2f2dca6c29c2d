package org.ohmloom.workbench.recovery;

import java.awt.EventQueue;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.ohmloom.Victim;
import org.ohmloom.edit.SetWireLength;
import org.ohmloom.model.Harness;
import org.ohmloom.model.WireId;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Document;
import org.ohmloom.workbench.desk.Saves;

/** Windows in which harnesses are edited without end, to be killed; says of each edit that it is made, and that it is kept. */
final class AutosaveRun {

    private static final WireId EDITED = new WireId("W4");
    /** Edits before it is ready, so that a cold start is not taken for a slow disk. */
    private static final int PRACTICE = 5;

    private static final int SHORTEST_PAUSE_MILLIS = 20;
    private static final int LONGEST_PAUSE_MILLIS = 80;

    private AutosaveRun() {}

    /**
     * Edits until it is killed.
     *
     * @param arguments a number that decides the pauses, and the harness files; where its own data lies is the system property
     */
    public static void main(String[] arguments) throws Exception {
        Random random = new Random(Long.parseLong(arguments[0]));
        ExecutorService writer = Executors.newSingleThreadExecutor();
        List<Document> documents = new ArrayList<>();
        for (int k = 1; k < arguments.length; k++) {
            Document document = Document.read(Path.of(arguments[k]));
            documents.add(document);
            EventQueue.invokeAndWait(() -> open(document, documents.size(), writer));
        }
        for (int k = 1; k <= PRACTICE; k++) {
            for (Document document : documents) {
                apply(document, k);
            }
            // Behind all that is being written, and what is to be kept after it has been asked for.
            for (int look = 0; look < 2; look++) {
                writer.submit(() -> {}).get();
                EventQueue.invokeAndWait(() -> {});
            }
        }
        Victim.ready();
        for (int k = PRACTICE + 1; ; k++) {
            for (Document document : documents) {
                apply(document, k);
                Thread.sleep(SHORTEST_PAUSE_MILLIS + random.nextInt(LONGEST_PAUSE_MILLIS - SHORTEST_PAUSE_MILLIS));
            }
        }
    }

    private static void apply(Document document, int number) throws Exception {
        EventQueue.invokeAndWait(() -> {
            document.session().apply(new SetWireLength(List.of(EDITED), OptionalDouble.of(1 + number / 1000.0)));
            say("made", document, number);
        });
    }

    /** The number of the last edit in a harness, 0 where it is as it was. */
    static int lastEdit(Harness harness) {
        return (int) Math.round((harness.wires().get(EDITED).lengthMetres().orElseThrow() - 1) * 1000);
    }

    private static void open(Document document, int window, ExecutorService writer) {
        Desk desk = new Desk(
                (question, cancel, soFar) -> {
                    throw new IllegalStateException("nothing is calculated here");
                },
                EventQueue::invokeLater);
        new Autosave(
                desk,
                new Saves(Runnable::run, Runnable::run, Runnable::run),
                RecoveryPlace.ofUser(),
                // Asked on the event thread, when the harness to be written is settled.
                task -> {
                    int number = lastEdit(document.harness());
                    writer.execute(() -> {
                        task.run();
                        say("kept", document, number);
                    });
                },
                Clock.systemUTC(),
                window);
        desk.open(document);
    }

    private static void say(String what, Document document, int number) {
        try {
            Victim.say(what + " " + document.name() + " " + number);
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        }
    }
}
