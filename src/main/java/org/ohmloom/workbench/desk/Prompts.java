package org.ohmloom.workbench.desk;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;

/** The questions the workbench asks a person. Every one may be left unanswered. */
public interface Prompts {

    /** What to do with changes that are not saved. */
    enum Unsaved {
        SAVE,
        DISCARD,
        CANCEL
    }

    /** What to do when a file was changed on disk by somebody else. */
    enum ChangedOnDisk {
        /** Write over it; what is there stays beside it as a backup. */
        REPLACE,
        SAVE_UNDER_ANOTHER_NAME,
        /** Take over what is on disk, as a step that can be undone. */
        READ_AGAIN,
        /** Show what differs before deciding. */
        COMPARE,
        CANCEL
    }

    /** What to do about a save that takes long, before its document is left. */
    enum SlowSave {
        WAIT,
        /** Leave at once; what was to be saved is kept aside and offered at the next start. */
        LEAVE,
        STAY
    }

    /** What becomes of a side copy. */
    enum SideCopy {
        KEEP,
        DROP,
        CANCEL
    }

    /** Which file to open. */
    Optional<Path> fileToOpen(Optional<Path> folder);

    /** Where to save; asks by itself before an existing file is replaced. */
    Optional<Path> fileToSave(Optional<Path> folder, String suggestedName);

    /** Which filled-in table of a test sheet to take values from. */
    Optional<Path> tableToTakeIn(Optional<Path> folder);

    /** Which sheet of a control unit to read. */
    Optional<Path> unitSheet(Optional<Path> folder);

    /** Where to write the sheet of a control unit; asks by itself before an existing file is replaced. */
    Optional<Path> fileForUnitSheet(Optional<Path> folder, String suggestedName);

    /** Which harness file to compare with. */
    Optional<Path> fileToCompare(Optional<Path> folder);

    /** Into which folder to write a change sheet. */
    Optional<Path> folderForChangeSheet(Optional<Path> folder);

    /** Into which folder to write a build pack. */
    Optional<Path> folderForPack(Optional<Path> folder);

    /** Whether to save, discard or keep working on a document that has changes. */
    Unsaved unsavedChanges(String name);

    /** Whether to keep, drop or go on with a side copy that has changes; keeping is only offered where it can be done. */
    SideCopy sideCopy(Document copy);

    /** What to do now that saving was refused. */
    ChangedOnDisk changedOnDisk(String name, String sentence);

    /**
     * Whether to wait for a save that takes long.
     *
     * @param closing takes what closes the question, run when the save has ended meanwhile
     */
    SlowSave slowSave(String name, Consumer<Runnable> closing);

    /** Says in one plain sentence what did not work. */
    void problem(String title, String sentence);
}
