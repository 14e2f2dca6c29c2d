package org.ohmloom.workbench.desk;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;

/** Where no person can answer: every question stays unanswered and a problem ends the task. */
public final class SilentPrompts implements Prompts {

    @Override
    public Optional<Path> fileToOpen(Optional<Path> folder) {
        return Optional.empty();
    }

    @Override
    public Optional<Path> fileToSave(Optional<Path> folder, String suggestedName) {
        return Optional.empty();
    }

    @Override
    public Optional<Path> tableToTakeIn(Optional<Path> folder) {
        return Optional.empty();
    }

    @Override
    public Optional<Path> unitSheet(Optional<Path> folder) {
        return Optional.empty();
    }

    @Override
    public Optional<Path> fileForUnitSheet(Optional<Path> folder, String suggestedName) {
        return Optional.empty();
    }

    @Override
    public Optional<Path> fileToCompare(Optional<Path> folder) {
        return Optional.empty();
    }

    @Override
    public Optional<Path> folderForChangeSheet(Optional<Path> folder) {
        return Optional.empty();
    }

    @Override
    public Optional<Path> folderForPack(Optional<Path> folder) {
        return Optional.empty();
    }

    @Override
    public Unsaved unsavedChanges(String name) {
        return Unsaved.CANCEL;
    }

    @Override
    public SideCopy sideCopy(Document copy) {
        return SideCopy.CANCEL;
    }

    @Override
    public ChangedOnDisk changedOnDisk(String name, String sentence) {
        return ChangedOnDisk.CANCEL;
    }

    @Override
    public SlowSave slowSave(String name, Consumer<Runnable> closing) {
        return SlowSave.WAIT;
    }

    @Override
    public void problem(String title, String sentence) {
        throw new IllegalStateException(title + ": " + sentence);
    }
}
