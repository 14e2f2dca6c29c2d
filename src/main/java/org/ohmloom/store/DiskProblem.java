package org.ohmloom.store;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.NoSuchFileException;
import java.nio.file.ReadOnlyFileSystemException;
import org.ohmloom.words.Refusals;
import org.ohmloom.words.Text;

/** Says in our words what the file system refused. */
final class DiskProblem {
    private DiskProblem() {}

    static Text reading(IOException failed) {
        if (failed instanceof NoSuchFileException) {
            return Refusals.text("there is no such file");
        }
        if (failed instanceof AccessDeniedException) {
            return Refusals.text("the file may not be read by this user");
        }
        return Refusals.text("the file cannot be read: %s", reason(failed));
    }

    static Text writing(IOException failed) {
        if (failed instanceof AccessDeniedException) {
            return Refusals.text("not saved: this user may not write there; save under another name");
        }
        if (failed instanceof NoSuchFileException) {
            return Refusals.text("not saved: the folder is no longer there; save under another name");
        }
        return Refusals.text("not saved, what was on disk is unchanged: %s", reason(failed));
    }

    static Text writing(ReadOnlyFileSystemException failed) {
        return Refusals.text("not saved: the disk is read-only; save under another name");
    }

    private static Text reason(IOException failed) {
        String reason = failed.getMessage();
        if (failed instanceof FileSystemException named && named.getReason() != null) {
            reason = named.getReason();
        }
        if (failed instanceof FileSystemLoopException) {
            return Refusals.text("its links go round in a circle");
        }
        return Text.of(reason == null || reason.isBlank() ? failed.getClass().getSimpleName() : reason);
    }
}
