package org.ohmloom.workbench.drafting;

import java.awt.datatransfer.Clipboard;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import org.ohmloom.draw.BoardPlaces;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Point;
import org.ohmloom.edit.Compound;
import org.ohmloom.edit.TakeOut;
import org.ohmloom.edit.board.Clip;
import org.ohmloom.edit.board.Drawn;
import org.ohmloom.edit.board.PasteClip;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Position;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.store.HarnessText;

/**
 * Copies part of the harness over the system's clipboard, as the text of a harness file of its own, so that it can be pasted into
 * another window or kept in any text. Texts are written and read away from the event thread.
 */
final class Copying {

    /** How far from the original a copy is laid, in steps of the grid. */
    private static final int STEPS_AWAY = 2;

    private final Easel easel;
    private final Supplier<Clipboard> clipboard;
    private final Executor worker;
    private final Executor eventThread;
    private int pastes;

    /**
     * Copying on an easel.
     *
     * @param clipboard   where copies go
     * @param worker      runs the writing and reading of texts
     * @param eventThread runs a task on the event thread
     */
    Copying(Easel easel, Supplier<Clipboard> clipboard, Executor worker, Executor eventThread) {
        this.easel = easel;
        this.clipboard = clipboard;
        this.worker = worker;
        this.eventThread = eventThread;
    }

    /** Puts a copy of what is selected on the clipboard. */
    void copy() {
        clip().ifPresentOrElse(this::keep, this::refuse);
    }

    /** Copies what is selected and takes it out. */
    void cut() {
        clip().ifPresentOrElse(
                        clip -> {
                            keep(clip);
                            List<ElementId> ids = easel.chosen();
                            String what = easel.called(
                                    ids.stream().map(ElementId::value).toList());
                            easel.apply(new Compound(easel.words().text("cut", what), List.of(new TakeOut(ids))));
                        },
                        this::refuse);
    }

    private void keep(Harness clip) {
        int count = easel.selected().size();
        pastes = 0;
        worker.execute(() -> {
            String text = HarnessText.write(clip);
            eventThread.execute(() -> {
                clipboard.get().setContents(new StringSelection(text), null);
                easel.say("copied", String.valueOf(count));
            });
        });
    }

    private void refuse() {
        easel.wrong(easel.words().get("copy.nothing"));
    }

    /** Lays what is on the clipboard on the board: at the pointer while that is there, otherwise beside the original. */
    void paste() {
        String text;
        try {
            text = String.valueOf(clipboard.get().getData(DataFlavor.stringFlavor));
        } catch (UnsupportedFlavorException | IOException | IllegalStateException gone) {
            easel.wrong(easel.words().get("paste.nothing"));
            return;
        }
        java.awt.Point pointer = easel.canvas().isShowing() ? easel.canvas().getMousePosition() : null;
        worker.execute(() -> {
            try {
                Harness clip = HarnessText.read(text, Path.of("clipboard"));
                eventThread.execute(() -> paste(clip, Optional.ofNullable(pointer)));
            } catch (HarnessFileException refused) {
                eventThread.execute(() -> easel.wrong(easel.words().get("paste.nothing")));
            }
        });
    }

    /** Lays a copy of what is selected beside it. */
    void duplicate() {
        clip().ifPresentOrElse(
                        clip -> {
                            double away = STEPS_AWAY * easel.grid().pitchMm();
                            lay(clip, away, away);
                        },
                        this::refuse);
    }

    private void paste(Harness clip, Optional<java.awt.Point> pointer) {
        pastes++;
        Optional<Point> centre = centre(clip);
        if (pointer.isPresent() && centre.isPresent() && easel.places().isPresent()) {
            Point there = easel.canvas()
                    .transform()
                    .toScene(pointer.get().getX(), pointer.get().getY());
            Position to = easel.grid().crossing(easel.toBoard(there));
            lay(clip, to.xMm() - centre.get().xMm(), to.yMm() - centre.get().yMm());
        } else {
            double away = STEPS_AWAY * easel.grid().pitchMm() * pastes;
            lay(clip, away, away);
        }
    }

    private void lay(Harness clip, double dxMm, double dyMm) {
        easel.harness().ifPresent(harness -> {
            boolean board = easel.places().isPresent();
            Harness laid = board ? clip : clip.withLayout(new TreeMap<>());
            Drawn drawn = PasteClip.of(harness, laid, dxMm, dyMm);
            easel.apply(drawn.edit());
            easel.pane().pick(drawn.ids());
            easel.say("pasted", String.valueOf(drawn.ids().size()));
        });
    }

    /** The middle of where a clip was copied from. */
    private static Optional<Point> centre(Harness clip) {
        List<Point> places = clip.layout().values().stream()
                .map(at -> new Point(at.xMm(), at.yMm()))
                .toList();
        return places.isEmpty()
                ? Optional.empty()
                : Optional.of(Extent.around(places).centre());
    }

    private Optional<Harness> clip() {
        return easel.harness()
                .flatMap(harness -> Clip.of(
                        harness,
                        easel.selected(),
                        easel.places().map(BoardPlaces::positions).orElse(new TreeMap<>())));
    }
}
