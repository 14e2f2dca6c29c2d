package org.ohmloom.workbench.whatif;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.model.Harness;
import org.ohmloom.workbench.compare.Compared;
import org.ohmloom.workbench.desk.Calculation;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Document;
import org.ohmloom.workbench.desk.LatestWins;
import org.ohmloom.workbench.desk.Services;
import org.ohmloom.workbench.desk.Topic;
import org.ohmloom.workbench.words.Words;

/**
 * What the side copy on a desk changes in the results. Held against the original whenever new results are whole, on a thread
 * of its own, the latest alone; the original is calculated only where its results are not known already. Belongs to the
 * event thread.
 */
public final class WhatIf {

    private final Desk desk;
    private final Services services;
    private final LatestWins<Asked, Compared> comparer;
    private final List<Runnable> listeners = new ArrayList<>();
    private Optional<Analysis> asked = Optional.empty();
    private Optional<Compared> shown = Optional.empty();
    private String problem = "";

    /**
     * What is to be compared.
     *
     * @param name   what people call the original
     * @param base   the original
     * @param place  the file beside which tables of the builder's own may lie
     * @param before results of the original, where they are known
     * @param after  results of the copy
     */
    private record Asked(String name, Harness base, Optional<Path> place, Optional<Analysis> before, Analysis after) {}

    public WhatIf(Desk desk, Services services) {
        this.desk = desk;
        this.services = services;
        this.comparer = new LatestWins<>(
                "what if",
                (question, cancel, soFar) -> compared(question, cancel),
                Duration.ZERO,
                services.eventThread(),
                this::receive);
        desk.listen(this::hear);
    }

    /** Calls a listener when a comparison is there or has failed; what changes on the desk, the desk tells. */
    public void listen(Runnable listener) {
        listeners.add(listener);
    }

    /** What differs from the original, maybe of an earlier state of the copy. */
    public Optional<Compared> shown() {
        return shown;
    }

    /** Whether what is shown is of the copy as it is now. */
    public boolean isCurrent() {
        return shown.filter(each -> desk.harness()
                        .filter(now -> now == each.comparison().after().harness())
                        .isPresent())
                .isPresent();
    }

    /** Whether the copy says the same as the original. */
    public boolean isUntouched() {
        return copy().filter(copy -> !copy.session().isChanged()).isPresent();
    }

    /** Whether the two are being compared. */
    public boolean isBusy() {
        return comparer.isBusy();
    }

    /** Why nothing could be compared; empty when it could. */
    public String problem() {
        return problem;
    }

    /** The side copy on the desk. */
    public Optional<Document> copy() {
        return desk.document().filter(open -> open.original().isPresent());
    }

    private void hear(Topic topic) {
        switch (topic) {
            case DOCUMENT, HARNESS, RESULTS -> compare();
            case SELECTION, VIEW, MESSAGE -> {}
        }
    }

    private void compare() {
        Optional<Document> copy = copy();
        if (copy.isEmpty() || isUntouched()) {
            comparer.stop();
            asked = Optional.empty();
            shown = Optional.empty();
            problem = "";
        } else if (desk.isWhole()) {
            Analysis after = desk.analysis().orElseThrow();
            if (asked.filter(before -> before == after).isEmpty()) {
                asked = Optional.of(after);
                comparer.ask(question(copy.get(), after));
            }
        }
    }

    private Asked question(Document copy, Analysis after) {
        Harness base = copy.session().saved();
        Optional<Analysis> known = shown.map(each -> each.comparison().before())
                .or(desk::originalResults)
                .filter(each -> each.harness() == base);
        return new Asked(copy.original().orElseThrow().name(), base, copy.tablesBeside(), known, after);
    }

    private Compared compared(Asked question, Cancel cancel) {
        Analysis before = question.before().orElseGet(() -> services.calculation()
                .of(new Calculation.Question(question.base(), question.place()), cancel, soFar -> {}));
        cancel.check();
        return Compared.of(question.name(), before, question.after());
    }

    private void receive(LatestWins.Outcome<Asked, Compared> outcome) {
        if (outcome.answer().isPresent()) {
            shown = outcome.answer();
            problem = "";
        } else if (outcome.failure()
                .filter(CancellationException.class::isInstance)
                .isEmpty()) {
            problem = Words.said(outcome.failure().orElseThrow());
        }
        listeners.forEach(Runnable::run);
    }
}
