package org.ohmloom.store;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.CopyOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;

/** A disk that works until a given step and refuses that one, as a full or broken disk does. */
final class FailingDisk extends Disk {
    private final int failingStep;
    private final boolean movesInOneStep;
    private int step;

    /**
     * A disk that refuses one step.
     *
     * @param failingStep    which step fails, counted from 0; -1 for none
     * @param movesInOneStep whether it can move a file in one step
     */
    FailingDisk(int failingStep, boolean movesInOneStep) {
        this.failingStep = failingStep;
        this.movesInOneStep = movesInOneStep;
    }

    /** Count of steps asked for. */
    int steps() {
        return step;
    }

    @Override
    void create(Path file, byte[] content) throws IOException {
        if (step++ == failingStep) {
            Files.write(file, Arrays.copyOf(content, content.length / 2));
            throw new IOException("No space left on device");
        }
        super.create(file, content);
    }

    @Override
    void move(Path from, Path to, CopyOption... options) throws IOException {
        boolean oneStep = Arrays.asList(options).contains(StandardCopyOption.ATOMIC_MOVE);
        if (oneStep && !movesInOneStep) {
            throw new AtomicMoveNotSupportedException(from.toString(), to.toString(), "no");
        }
        if (step++ == failingStep) {
            if (!oneStep) {
                // The worst a move in two steps can do: the old file is gone, the new one not there yet.
                Files.deleteIfExists(to);
            }
            throw new IOException("Input/output error");
        }
        super.move(from, to, options);
    }
}
