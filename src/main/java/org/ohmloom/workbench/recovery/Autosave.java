package org.ohmloom.workbench.recovery;

import java.awt.EventQueue;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.ohmloom.model.Harness;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.store.RecoveryFolder;
import org.ohmloom.store.RecoverySnapshot;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Document;
import org.ohmloom.workbench.desk.Saves;
import org.ohmloom.workbench.desk.Topic;
import org.ohmloom.workbench.words.Words;

/**
 * Keeps the harness on a desk aside at once after every change, and forgets it as soon as it is saved, discarded or closed, so
 * that a program that is stopped loses the last edit at most. What is changed while a copy is still being written goes into one
 * copy after it: a slow disk makes copies rarer, never a queue of them. While a side copy is worked on, the original stays kept
 * as it is and the copy is kept beside it under a key and a name of its own, so that the two cannot be taken for each other.
 * Belongs to the event thread; only the writing is done elsewhere, in the order it was asked for.
 */
public final class Autosave {

    private static final Logger LOG = Logger.getLogger(Autosave.class.getName());

    private final Desk desk;
    private final Saves saves;
    private final RecoveryFolder folder;
    private final Executor writer;
    private final Clock clock;
    private final String window;
    private Optional<Document> document = Optional.empty();
    private Optional<Harness> kept = Optional.empty();
    private Optional<Harness> keptOriginal = Optional.empty();
    private int changes;
    private int leftBehind;
    private int writing;
    private boolean closed;

    /**
     * Begins to listen at a desk.
     *
     * @param saves  the saves that may still be under way when a document is left
     * @param folder where snapshots are kept
     * @param writer runs the writing, one after the other
     * @param number number of the window in this program
     */
    public Autosave(Desk desk, Saves saves, RecoveryFolder folder, Executor writer, Clock clock, int number) {
        this.desk = desk;
        this.saves = saves;
        this.folder = folder;
        this.writer = writer;
        this.clock = clock;
        this.window = RecoveryPlace.owner().replace('@', '-') + "-" + number;
        desk.listen(this::changed);
    }

    /**
     * Stops, and forgets what is kept: the document was saved or its changes are not wanted. One that was left while it was being
     * saved stays kept until it is.
     */
    public void close() {
        leave();
        closed = true;
    }

    private void leave() {
        document.filter(saves::isBusy).ifPresentOrElse(this::leaveBehind, this::forget);
        if (keptOriginal.isPresent()) {
            keptOriginal = Optional.empty();
            String written = original();
            writer.execute(() -> folder.forget(written));
        }
    }

    private void leaveBehind(Document open) {
        keep();
        String written = key();
        Harness before = open.session().saved();
        saves.afterwards(open, () -> {
            if (open.session().saved() != before) {
                writer.execute(() -> folder.forget(written));
            }
        });
        kept = Optional.empty();
        leftBehind++;
    }

    private String original() {
        return leftBehind == 0 ? window : window + "-" + leftBehind;
    }

    private String key() {
        return isSideCopy() ? original() + "-side-copy" : original();
    }

    private boolean isSideCopy() {
        return document.flatMap(Document::original).isPresent();
    }

    /** Another document lies on the desk. */
    private void change(Optional<Document> now) {
        if (document.isPresent() && now.flatMap(Document::original).equals(document)) {
            keep();
            keptOriginal = kept;
            kept = Optional.empty();
            document = now;
        } else if (isSideCopy() && now.equals(document.flatMap(Document::original))) {
            forget();
            document = now;
            kept = keptOriginal;
            keptOriginal = Optional.empty();
        } else {
            leave();
            document = now;
        }
        changes = now.map(open -> open.session().stepsDone()).orElse(0);
    }

    private void changed(Topic topic) {
        if (closed) {
            return;
        }
        if (topic == Topic.DOCUMENT) {
            if (!desk.document().equals(document)) {
                change(desk.document());
            }
            if (!isChanged()) {
                changes = 0;
            }
        } else if (topic == Topic.HARNESS) {
            changes++;
        } else {
            return;
        }
        if (!isChanged()) {
            forget();
        } else if (writing == 0) {
            keep();
        }
    }

    private boolean isChanged() {
        return document.filter(open -> open.session().isChanged()).isPresent();
    }

    private void keep() {
        document.filter(open -> open.session().isChanged()).ifPresent(open -> {
            Harness harness = open.harness();
            if (kept.filter(before -> before == harness).isPresent()) {
                return;
            }
            kept = Optional.of(harness);
            RecoverySnapshot snapshot = new RecoverySnapshot(
                    key(),
                    RecoveryPlace.owner(),
                    open.name(),
                    open.tablesBeside(),
                    Math.max(1, changes),
                    clock.instant());
            writing++;
            writer.execute(() -> {
                try {
                    folder.keep(snapshot, harness);
                    EventQueue.invokeLater(this::written);
                } catch (HarnessFileException refused) {
                    LOG.log(Level.WARNING, "not kept for recovery: {0}", refused.getMessage());
                    EventQueue.invokeLater(() -> notKept(harness, Words.said(refused)));
                }
            });
        });
    }

    /** Keeps what was changed while it was written. */
    private void written() {
        writing--;
        if (writing == 0 && !closed) {
            keep();
        }
    }

    /** Says so, and tries again after the next change. */
    private void notKept(Harness harness, String why) {
        writing--;
        if (kept.filter(before -> before == harness).isPresent()) {
            kept = Optional.empty();
            desk.say(Words.of("recovery").get("not-kept", why));
        }
    }

    private void forget() {
        if (kept.isPresent()) {
            kept = Optional.empty();
            String written = key();
            writer.execute(() -> folder.forget(written));
        }
    }
}
