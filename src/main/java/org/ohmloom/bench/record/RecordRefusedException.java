package org.ohmloom.bench.record;

import java.util.List;
import org.ohmloom.words.Text;
import org.ohmloom.words.WordedException;

/** Thrown when a filled-in sheet cannot be taken; it has one line for each cell that is wrong, and nothing was taken. */
public final class RecordRefusedException extends WordedException {

    private static final long serialVersionUID = 1L;

    private final transient List<Text> lines;

    RecordRefusedException(List<? extends Text> lines) {
        super(Text.joined("\n", lines), null);
        this.lines = List.copyOf(lines);
    }

    /** What is wrong, each with file, line and column. */
    public List<Text> lines() {
        return lines == null ? List.of(words()) : lines;
    }
}
