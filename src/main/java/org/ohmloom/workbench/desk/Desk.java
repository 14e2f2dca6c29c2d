package org.ohmloom.workbench.desk;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.RenameElements;
import org.ohmloom.edit.Session;
import org.ohmloom.model.Harness;
import org.ohmloom.model.StateId;
import org.ohmloom.units.ShownUnits;
import org.ohmloom.workbench.words.Words;

/**
 * What lies on the workbench: the document, its results, the selection and what is shown of it. Every view listens here
 * and changes things here only, so that they stay in step. Belongs to the event thread.
 */
public final class Desk {

    private static final Logger LOG = Logger.getLogger(Desk.class.getName());
    private static final Duration PAUSE = Duration.ofMillis(150);

    private final List<Consumer<Topic>> listeners = new ArrayList<>();
    private final LatestWins<Calculation.Question, Analysis> calculator;
    private final DutyRanges dutyRanges;
    private final Session.Listener listener = this::harnessChanged;
    private final Session.Listener ofOriginal = (before, after) -> tell(Topic.DOCUMENT);
    private Optional<Document> document = Optional.empty();
    private Optional<Analysis> originalResults = Optional.empty();
    private Optional<Document> droppedCopy = Optional.empty();
    private Results results = Results.NONE;
    private CalculationStatus status = CalculationStatus.NONE;
    private Selection selection = Selection.NONE;
    private ViewChoice view = ViewChoice.FIRST;
    private String message = "";

    /**
     * An empty desk.
     *
     * @param calculation how results are made; called on a thread of its own
     * @param eventThread runs a task on the event thread
     */
    public Desk(Calculation calculation, Executor eventThread) {
        this.calculator = new LatestWins<>("calculation", calculation::of, PAUSE, eventThread, this::receive);
        this.dutyRanges = new DutyRanges(eventThread, () -> tell(Topic.RESULTS));
    }

    /** Adds a listener; it hears of every change after it happened. */
    public void listen(Consumer<Topic> listener) {
        listeners.add(listener);
    }

    public Optional<Document> document() {
        return document;
    }

    public Optional<Harness> harness() {
        return document.map(Document::harness);
    }

    /** The latest results; those of an earlier harness until newer ones arrive. */
    public Optional<Analysis> analysis() {
        return results.latest();
    }

    /** The latest results, with older ones for what is still being worked out. */
    public Results results() {
        return results;
    }

    /** The latest findings of every rule, those marked that are being worked out again. */
    public List<Results.Standing> findings() {
        return results.findings(harness());
    }

    /** Whether the results are those of the harness as it is, be it that some studies are still under way. */
    public boolean isCurrent() {
        return analysis()
                .filter(latest ->
                        harness().filter(now -> now == latest.harness()).isPresent())
                .isPresent();
    }

    /** Whether the results are those of the harness as it is, and all studies are worked out. */
    public boolean isWhole() {
        return isCurrent() && analysis().filter(Analysis::isWhole).isPresent();
    }

    /** The loads run over the range of their duties, maybe by earlier results; empty until asked for and there. */
    public Optional<DutyRanges.Swept> dutySteps() {
        return dutyRanges.latest();
    }

    /** Begins to run the loads over the range of their duties; listeners hear when that is done. */
    public void wantDutySteps() {
        if (isWhole()) {
            analysis().ifPresent(dutyRanges::want);
        }
    }

    public CalculationStatus status() {
        return status;
    }

    public Selection selection() {
        return selection;
    }

    public ViewChoice view() {
        return view;
    }

    /** The units in which everything is shown. */
    public ShownUnits units() {
        return view.options().units();
    }

    /** Shows everything in other units; listeners hear of another view. */
    public void showIn(ShownUnits units) {
        show(view.withOptions(view.options().withUnits(units)));
    }

    /** The latest message for the status bar. */
    public String message() {
        return message;
    }

    /** Puts a document on the desk in the place of the one there. */
    public void open(Document opened) {
        open(opened, Results.NONE);
    }

    /**
     * Puts a document on the desk in the place of the one there.
     *
     * @param known its results, where another desk has them
     */
    void open(Document opened, Results known) {
        putDown(Optional.of(opened));
        droppedCopy = Optional.empty();
        originalResults = Optional.empty();
        results = known;
        dutyRanges.clear();
        selection = Selection.NONE;
        view = view.withState(Optional.empty());
        tell(Topic.DOCUMENT);
        if (isWhole()) {
            calculator.stop();
            become(CalculationStatus.UP_TO_DATE);
        } else {
            calculate(false);
        }
    }

    private void putDown(Optional<Document> changed) {
        document.ifPresent(before -> before.session().unlisten(listener));
        document.flatMap(Document::original)
                .ifPresent(before -> before.session().unlisten(ofOriginal));
        document = changed;
        document.ifPresent(now -> now.session().listen(listener));
        // It may be edited in another window: then the copy cannot be kept as it is.
        document.flatMap(Document::original).ifPresent(now -> now.session().listen(ofOriginal));
    }

    /** Whether a side copy lies on the desk: every edit goes to it, and the original stays as it is. */
    public boolean isSideCopy() {
        return document.flatMap(Document::original).isPresent();
    }

    /** The whole results of the original of the side copy on the desk, where they are known. */
    public Optional<Analysis> originalResults() {
        return originalResults;
    }

    /** Puts a side copy of the document in its place; selection, view and results stay. */
    public void beginSideCopy() {
        document.filter(open -> open.original().isEmpty()).ifPresent(open -> begin(open.sideCopy()));
    }

    private void begin(Document copy) {
        originalResults = isWhole() ? analysis() : Optional.empty();
        droppedCopy = Optional.empty();
        change(copy);
    }

    /** The side copy dropped last, as long as the document on the desk says what it said when that copy was made. */
    public Optional<Document> droppedCopy() {
        return droppedCopy
                .filter(copy -> copy.original().equals(document))
                .filter(copy -> copy.canBeKept() && copy.session().isChanged());
    }

    /** Goes on with the side copy dropped last. */
    public void takeUpSideCopy() {
        droppedCopy().ifPresent(this::begin);
    }

    /**
     * Takes the side copy over into its original, as one step that can be undone, and goes back to the original.
     *
     * @throws IllegalStateException when the original has changed since the copy was made
     */
    public void keepSideCopy() {
        document.flatMap(Document::original).ifPresent(original -> {
            Document copy = document.orElseThrow();
            original.session().unlisten(ofOriginal);
            copy.keepInOriginal();
            change(original);
            originalResults = Optional.empty();
        });
    }

    /** Goes back to the original as it is; what was done on the side copy is lost. */
    public void dropSideCopy() {
        document.flatMap(Document::original).ifPresent(original -> {
            originalResults
                    .filter(known -> known.harness() == original.harness())
                    .ifPresent(known -> results = results.with(known));
            droppedCopy = document;
            change(original);
            originalResults = Optional.empty();
        });
    }

    /** Puts a document in the place of the one it was copied from or is a copy of. */
    private void change(Document other) {
        Harness before = document.orElseThrow().harness();
        putDown(Optional.of(other));
        tell(Topic.DOCUMENT);
        if (before != other.harness()) {
            harnessChanged(before, other.harness());
        }
    }

    /** Clears the desk. */
    void close() {
        calculator.stop();
        dutyRanges.clear();
        putDown(Optional.empty());
        droppedCopy = Optional.empty();
        originalResults = Optional.empty();
        results = Results.NONE;
        selection = Selection.NONE;
        status = CalculationStatus.NONE;
        tell(Topic.DOCUMENT);
    }

    /** Applies an edit as one step that can be undone; does nothing without a document. */
    /** Applies an edit; what is selected stays so under another identity. */
    public void apply(Edit edit) {
        Selection before = selection;
        document.ifPresent(open -> open.session().apply(edit));
        if (edit instanceof RenameElements rename) {
            select(before.renamed(rename.renamed()));
        }
    }

    public void select(Selection changed) {
        if (!changed.equals(selection) || changed.centre()) {
            selection = changed;
            tell(Topic.SELECTION);
        }
    }

    public void choose(Optional<StateId> state) {
        show(view.withState(state));
    }

    public void show(ViewChoice changed) {
        if (!changed.equals(view)) {
            view = changed;
            tell(Topic.VIEW);
        }
    }

    /** Says something in the status bar. */
    public void say(String text) {
        message = text;
        tell(Topic.MESSAGE);
    }

    /** Starts the calculation anew, whatever is known. */
    public void calculateAnew() {
        calculate(true);
    }

    private void calculate(boolean anew) {
        harness().ifPresent(harness -> {
            dutyRanges.stop();
            calculator.ask(new Calculation.Question(harness, document.flatMap(Document::tablesBeside), anew));
            become(CalculationStatus.CALCULATING);
        });
    }

    /** Stops the calculation under way; the numbers on screen stay and are marked. */
    public void stopCalculating() {
        if (calculator.isBusy()) {
            calculator.stop();
            become(stopped());
        }
    }

    private CalculationStatus stopped() {
        return isWhole()
                ? CalculationStatus.UP_TO_DATE
                : isCurrent()
                        ? CalculationStatus.stopped(analysis().orElseThrow().pending())
                        : CalculationStatus.OUTDATED;
    }

    private void harnessChanged(Harness before, Harness after) {
        if (before == after) {
            tell(Topic.DOCUMENT);
            return;
        }
        selection = selection.within(after);
        view = view.withState(view.state().filter(after.states()::has));
        tell(Topic.HARNESS);
        Optional<Analysis> known = results.wholeOf(after);
        if (known.isPresent()) {
            calculator.stop();
            results = results.with(known.get());
            become(CalculationStatus.UP_TO_DATE);
        } else {
            calculate(false);
        }
    }

    private void receive(LatestWins.Outcome<Calculation.Question, Analysis> outcome) {
        if (harness().filter(now -> now == outcome.question().harness()).isEmpty()) {
            return;
        }
        if (outcome.answer().isPresent()) {
            Analysis newer = outcome.answer().get();
            results = results.with(newer);
            noteOriginal(newer);
            become(newer.isWhole() ? CalculationStatus.UP_TO_DATE : CalculationStatus.studying(newer.pending()));
            return;
        }
        Throwable failure = outcome.failure().orElseThrow();
        if (failure instanceof CancellationException) {
            become(stopped());
            return;
        }
        LOG.log(Level.WARNING, "the calculation failed", failure);
        String reason = Words.said(failure);
        become(CalculationStatus.notPossible(reason));
    }

    private void noteOriginal(Analysis newer) {
        document.flatMap(Document::original)
                .filter(original -> newer.isWhole() && newer.harness() == original.harness())
                .ifPresent(original -> originalResults = Optional.of(newer));
    }

    private void become(CalculationStatus changed) {
        status = changed;
        tell(Topic.RESULTS);
    }

    private void tell(Topic topic) {
        List.copyOf(listeners).forEach(listener -> listener.accept(topic));
    }
}
