package org.ohmloom.workbench;

import java.util.List;

/** A workbench without a window, for tests that need no display. */
final class Stage {

    final ScriptedPrompts prompts = new ScriptedPrompts();
    final PreferenceStore preferences = PreferenceStore.inMemory(Preferences.DEFAULT);
    final WorkbenchView view = OnEventThread.get(this::make);

    private WorkbenchView make() {
        Look.LIGHT.install();
        Command quit = new PlainCommand("quit", "Quit", "Close the program", Keys.menu('Q'), 'Q', () -> {});
        List<Command> help = HelpCommands.of(() -> null, () -> null);
        return new WorkbenchView(
                Workbench.services(preferences, prompts),
                new WindowTasks(look -> {}, desk -> {}, () -> {}, quit, help));
    }

    Desk desk() {
        return view.desk();
    }

    /** Opens an example and waits for its results. */
    Stage openExample(String name) {
        OnEventThread.run(() -> view.filing().openExample(name));
        awaitResults();
        return this;
    }

    /** Waits until the results are those of the harness. */
    void awaitResults() {
        OnEventThread.await("results", () -> desk().isCurrent());
    }
}
