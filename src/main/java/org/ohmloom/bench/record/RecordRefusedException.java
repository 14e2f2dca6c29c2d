package org.ohmloom.bench.record;

import java.util.List;

/** Thrown when a filled-in sheet cannot be taken; it has one line for each cell that is wrong, and nothing was taken. */
public final class RecordRefusedException extends Exception {

    private static final long serialVersionUID = 1L;

    private final List<String> lines;

    RecordRefusedException(List<String> lines) {
        super(String.join("\n", lines));
        this.lines = List.copyOf(lines);
    }

    /** What is wrong, each with file, line and column. */
    public List<String> lines() {
        return lines;
    }
}
