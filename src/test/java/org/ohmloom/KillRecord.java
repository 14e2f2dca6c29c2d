package org.ohmloom;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.stream.IntStream;

/** What came of each kill of a campaign, a line each in a file: a campaign that was stopped goes on after the last line. */
public final class KillRecord {

    private final Path file;

    /**
     * A record, begun when there is none.
     *
     * @param head names of the columns; the first is the number of the kill
     */
    public KillRecord(Path file, String head) throws IOException {
        this.file = file;
        if (!Files.exists(file)) {
            Files.writeString(file, head + "\n");
        }
    }

    /** One kill of a campaign. */
    public interface Kill {
        /** Kills and returns the line of what came of it; throws where that is not as it must be. */
        String of(int number) throws Exception;
    }

    /** Kills until it tells of so many. */
    public void upTo(int kills, Kill kill) throws Exception {
        for (int number = done(); number < kills; number++) {
            Files.writeString(file, kill.of(number) + "\n", StandardOpenOption.APPEND);
        }
    }

    /** How many kills it tells of. */
    public int done() throws IOException {
        return rows().size();
    }

    /** In how many rows a column says 0, 1, 2 and more. */
    public List<Long> counts(int column) throws IOException {
        List<Integer> values = rows().stream()
                .map(row -> Integer.valueOf(row.split(",")[column]))
                .toList();
        return IntStream.range(0, 4)
                .mapToObj(k ->
                        values.stream().filter(each -> Math.min(3, each) == k).count())
                .toList();
    }

    private List<String> rows() throws IOException {
        List<String> lines = Files.readAllLines(file);
        return lines.subList(1, lines.size());
    }
}
