package org.ohmloom.workbench;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.ohmloom.workbench.desk.Document;
import org.ohmloom.workbench.desk.Prompts;

/** Answers every question as it was told beforehand, and keeps what it was asked. */
public final class ScriptedPrompts implements Prompts {

    public final List<String> asked = new ArrayList<>();
    public Optional<Path> target = Optional.empty();
    public Unsaved unsaved = Unsaved.CANCEL;
    public SideCopy sideCopy = SideCopy.CANCEL;
    public SlowSave slowSave = SlowSave.WAIT;
    public Runnable duringSlowSave = () -> {};
    public ChangedOnDisk changedOnDisk = ChangedOnDisk.CANCEL;

    @Override
    public Optional<Path> fileToOpen(Optional<Path> folder) {
        asked.add("open");
        return target;
    }

    @Override
    public Optional<Path> fileToSave(Optional<Path> folder, String suggestedName) {
        asked.add("save " + suggestedName);
        return target;
    }

    @Override
    public Optional<Path> tableToTakeIn(Optional<Path> folder) {
        asked.add("values");
        return target;
    }

    @Override
    public Optional<Path> unitSheet(Optional<Path> folder) {
        asked.add("unit sheet");
        return target;
    }

    @Override
    public Optional<Path> fileForUnitSheet(Optional<Path> folder, String suggestedName) {
        asked.add("write unit sheet " + suggestedName);
        return target;
    }

    @Override
    public Optional<Path> fileToCompare(Optional<Path> folder) {
        asked.add("compare");
        return target;
    }

    @Override
    public Optional<Path> folderForChangeSheet(Optional<Path> folder) {
        asked.add("change sheet");
        return target;
    }

    @Override
    public Optional<Path> folderForPack(Optional<Path> folder) {
        asked.add("pack");
        return target;
    }

    @Override
    public Unsaved unsavedChanges(String name) {
        asked.add("unsaved " + name);
        return unsaved;
    }

    @Override
    public SideCopy sideCopy(Document copy) {
        asked.add("side copy of " + copy.original().orElseThrow().name());
        return sideCopy;
    }

    @Override
    public ChangedOnDisk changedOnDisk(String name, String sentence) {
        asked.add("changed " + name + ": " + sentence);
        return changedOnDisk;
    }

    @Override
    public SlowSave slowSave(String name, Consumer<Runnable> closing) {
        asked.add("slow save of " + name);
        closing.accept(() -> asked.add("saved meanwhile"));
        duringSlowSave.run();
        return slowSave;
    }

    @Override
    public void problem(String title, String sentence) {
        asked.add(title + ": " + sentence);
    }
}
