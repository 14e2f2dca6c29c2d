package org.ohmloom.workbench.recovery;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.ohmloom.store.RecoveryFolder;

/** Where snapshots lie: in the user's data folder, never beside the file. */
public final class RecoveryPlace {

    /** System property that names another folder for the program's own data. */
    public static final String PROPERTY = "ohmloom.data";

    private RecoveryPlace() {}

    /** The folder of this user. */
    public static RecoveryFolder ofUser() {
        return new RecoveryFolder(data().resolve("recovery"), RecoveryPlace::runs);
    }

    /** The name of this running program. */
    static String owner() {
        return nameOf(ProcessHandle.current());
    }

    private static String nameOf(ProcessHandle program) {
        return program.pid() + "@"
                + program.info()
                        .startInstant()
                        .map(instant -> String.valueOf(instant.toEpochMilli()))
                        .orElse("");
    }

    /** Whether the program of that name runs: the same number given to a later program does not count. */
    static boolean runs(String owner) {
        try {
            return ProcessHandle.of(Long.parseLong(owner.substring(0, owner.indexOf('@'))))
                    .filter(program -> program.isAlive() && nameOf(program).equals(owner))
                    .isPresent();
        } catch (NumberFormatException | StringIndexOutOfBoundsException damaged) {
            return false;
        }
    }

    private static Path data() {
        String named = System.getProperty(PROPERTY, "");
        if (!named.isBlank()) {
            return Path.of(named);
        }
        String home = System.getProperty("user.home", ".");
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        if (system.startsWith("windows")) {
            return environment("APPDATA").orElse(Path.of(home)).resolve("Ohmloom");
        }
        return system.startsWith("mac")
                ? Path.of(home, "Library", "Application Support", "Ohmloom")
                : environment("XDG_DATA_HOME")
                        .orElse(Path.of(home, ".local", "share"))
                        .resolve("ohmloom");
    }

    private static Optional<Path> environment(String name) {
        return Optional.ofNullable(System.getenv(name))
                .filter(value -> !value.isBlank())
                .map(Path::of);
    }
}
