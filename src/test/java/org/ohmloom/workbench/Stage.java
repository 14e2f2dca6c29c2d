package org.ohmloom.workbench;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.OpenDocuments;
import org.ohmloom.workbench.desk.Services;
import org.ohmloom.workbench.manual.ManualDesk;
import org.ohmloom.workbench.settings.Look;
import org.ohmloom.workbench.settings.PreferenceStore;
import org.ohmloom.workbench.settings.Preferences;
import org.ohmloom.workbench.window.HelpCommands;
import org.ohmloom.workbench.window.WindowActions;
import org.ohmloom.workbench.window.WindowTasks;
import org.ohmloom.workbench.window.WorkbenchView;

/** A workbench without a window, for tests that need no display. */
public final class Stage {

    public final ScriptedPrompts prompts = new ScriptedPrompts();
    public final PreferenceStore preferences = PreferenceStore.inMemory(Preferences.DEFAULT);
    public final WorkbenchView view;
    private volatile Services services;

    public Stage() {
        this(results -> results);
    }

    /** A workbench beside others whose documents it knows. */
    public Stage(OpenDocuments documents) {
        view = OnEventThread.get(() -> make(results -> results, documents));
    }

    /**
     * A workbench whose results are not all its own.
     *
     * @param changed what becomes of the results
     */
    public Stage(UnaryOperator<Analysis> changed) {
        view = OnEventThread.get(() -> make(changed, new OpenDocuments()));
    }

    /** A workbench built on other services, such as a disk that takes its time. */
    public static Stage builtOn(UnaryOperator<Services> services) {
        return new Stage(results -> results, services);
    }

    private Stage(UnaryOperator<Analysis> changed, UnaryOperator<Services> other) {
        view = OnEventThread.get(() -> make(changed, new OpenDocuments(), other));
    }

    private WorkbenchView make(UnaryOperator<Analysis> changed, OpenDocuments documents) {
        return make(changed, documents, services -> services);
    }

    private WorkbenchView make(
            UnaryOperator<Analysis> changed, OpenDocuments documents, UnaryOperator<Services> other) {
        Look.LIGHT.install();
        Services own = Workbench.services(preferences, prompts);
        KnownExamples calculation = new KnownExamples(own.calculation());
        services = other.apply(new Services(
                (question, cancel, soFar) -> changed.apply(
                        calculation.of(question, cancel, results -> soFar.accept(changed.apply(results)))),
                own.layout(),
                own.painter(),
                own.preferences(),
                own.prompts(),
                inTurn(),
                own.eventThread(),
                documents,
                own.saves()));
        List<Command> help = HelpCommands.of(() -> null, () -> null, new ManualDesk(() -> null));
        return new WorkbenchView(services, new WindowTasks(look -> {}, desk -> {}, () -> {}, WindowActions.NONE, help));
    }

    /** Reads in the order asked for, so that a test knows what was read once something later was. */
    private static Executor inTurn() {
        return Executors.newSingleThreadExecutor(task -> {
            Thread thread = new Thread(task, "reader");
            thread.setDaemon(true);
            return thread;
        });
    }

    /** What it is built on. */
    public Services services() {
        return services;
    }

    /** What reads files. */
    public Executor reader() {
        return services.reader();
    }

    public Desk desk() {
        return view.desk();
    }

    /** Opens an example and waits for its results. */
    public Stage openExample(String name) {
        OnEventThread.run(() -> view.filing().openExample(name));
        awaitResults();
        return this;
    }

    /** Waits until the results are those of the harness, all of them. */
    public void awaitResults() {
        OnEventThread.await("results", () -> desk().isWhole());
    }

    /** Asks something that is answered on the event thread, maybe later, and waits for the answer. */
    public boolean answer(Consumer<Consumer<Boolean>> question) {
        AtomicReference<Optional<Boolean>> answer = new AtomicReference<>(Optional.empty());
        OnEventThread.run(() -> question.accept(said -> answer.set(Optional.of(said))));
        OnEventThread.await("an answer", () -> answer.get().isPresent());
        return answer.get().orElseThrow();
    }
}
