package org.ohmloom.store;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** A small disk of its own in a folder, where the machine lets one mount it; else the test is skipped. */
final class Mount implements AutoCloseable {

    private final Path folder;

    Mount(Path folder, String options) throws IOException, InterruptedException {
        this.folder = Files.createDirectories(folder);
        assumeTrue(
                isDone("mount", "-t", "tmpfs", "-o", options, "tmpfs", folder.toString()),
                "no disk can be mounted here");
    }

    /** Mounts it anew with other options. */
    void again(String options) throws IOException, InterruptedException {
        assumeTrue(isDone("mount", "-o", "remount," + options, folder.toString()), "no disk can be mounted anew here");
    }

    @Override
    public void close() throws IOException, InterruptedException {
        if (!isDone("umount", folder.toString())) {
            throw new IOException("still mounted: " + folder);
        }
    }

    private static boolean isDone(String... command) throws InterruptedException {
        try {
            return new ProcessBuilder(List.of(command))
                            .redirectErrorStream(true)
                            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                            .start()
                            .waitFor()
                    == 0;
        } catch (IOException none) {
            return false;
        }
    }

    /** Names of all that lies in a folder, in order. */
    static List<String> names(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(each -> each.getFileName().toString()).sorted().toList();
        }
    }
}
