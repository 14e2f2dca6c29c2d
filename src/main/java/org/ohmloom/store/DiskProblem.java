package org.ohmloom.store;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.NoSuchFileException;
import java.nio.file.ReadOnlyFileSystemException;

/** Says in our words what the file system refused. */
final class DiskProblem {
    private DiskProblem() {}

    static String reading(IOException failed) {
        if (failed instanceof NoSuchFileException) {
            return "there is no such file";
        }
        if (failed instanceof AccessDeniedException) {
            return "the file may not be read by this user";
        }
        return "the file cannot be read: " + reason(failed);
    }

    static String writing(IOException failed) {
        if (failed instanceof AccessDeniedException) {
            return "not saved: this user may not write there; save under another name";
        }
        if (failed instanceof NoSuchFileException) {
            return "not saved: the folder is no longer there; save under another name";
        }
        return "not saved, what was on disk is unchanged: " + reason(failed);
    }

    static String writing(ReadOnlyFileSystemException failed) {
        return "not saved: the disk is read-only; save under another name";
    }

    private static String reason(IOException failed) {
        String reason = failed.getMessage();
        if (failed instanceof FileSystemException named && named.getReason() != null) {
            reason = named.getReason();
        }
        if (failed instanceof FileSystemLoopException) {
            return "its links go round in a circle";
        }
        return reason == null || reason.isBlank() ? failed.getClass().getSimpleName() : reason;
    }
}
