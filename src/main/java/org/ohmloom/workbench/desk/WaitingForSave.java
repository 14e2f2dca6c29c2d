package org.ohmloom.workbench.desk;

import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * Waits for a save before its document is left. A folder in a network that is out of reach may never answer: after a while a person
 * is asked whether to go on waiting, to leave all the same, or to stay. Belongs to the event thread.
 */
final class WaitingForSave {

    private final Prompts prompts;
    private final Executor afterAWhile;
    private final BooleanSupplier busy;
    private final String name;
    private final Consumer<Boolean> answer;
    private Optional<Runnable> question = Optional.empty();
    private boolean over;

    /**
     * Begins to wait.
     *
     * @param afterAWhile runs a task on the event thread once a person has waited long enough to wonder
     * @param busy        whether the save is under way
     * @param name        what people call the document
     * @param answer      hears whether it is left, if a person decides before the save has ended
     */
    WaitingForSave(Prompts prompts, Executor afterAWhile, BooleanSupplier busy, String name, Consumer<Boolean> answer) {
        this.prompts = prompts;
        this.afterAWhile = afterAWhile;
        this.busy = busy;
        this.name = name;
        this.answer = answer;
        waitOn();
    }

    private void waitOn() {
        afterAWhile.execute(this::wonder);
    }

    /** The save has ended: what comes next does, unless a person has decided already. */
    void ended(Runnable next) {
        if (!over) {
            over = true;
            question.ifPresent(Runnable::run);
            next.run();
        }
    }

    private void wonder() {
        if (over) {
            return;
        }
        if (!busy.getAsBoolean()) {
            // it has not begun: a person is choosing its file
            waitOn();
            return;
        }
        Prompts.SlowSave said = prompts.slowSave(name, closing -> question = Optional.of(closing));
        question = Optional.empty();
        if (over) {
            return;
        }
        if (said == Prompts.SlowSave.WAIT) {
            waitOn();
        } else {
            over = true;
            answer.accept(said == Prompts.SlowSave.LEAVE);
        }
    }
}
