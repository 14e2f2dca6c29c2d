package org.ohmloom;

import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Libraries whose own jar holds no licence text have it in META-INF/licenses by hand; the others are copied there by the
 * build. A library that is no longer used must leave this list.
 */
class LicencesTest {

    @ParameterizedTest
    @CsvSource({
        "jgrapht, org.jgrapht.Graph, Eclipse Public License - v 2.0",
        "miglayout, net.miginfocom.layout.LC, 'Copyright (c) 2004, Mikael Grev'",
        "apfloat, org.apfloat.Apfloat, MIT License"
    })
    void aLibraryWithoutALicenceInItsJarHasItHere(String folder, String usedClass, String says)
            throws IOException, ClassNotFoundException {
        assertNotNull(Class.forName(usedClass, false, getClass().getClassLoader()));
        try (InputStream text = getClass().getResourceAsStream("/META-INF/licenses/" + folder + "/LICENSE")) {
            assertNotNull(text, "no licence text for " + folder);
            assertTrue(new String(text.readAllBytes(), StandardCharsets.UTF_8).contains(says));
        }
    }

    @org.junit.jupiter.api.Test
    void ourOwnLicenceIsApache20() throws IOException {
        assertTrue(Files.readString(Path.of("LICENSE")).contains("Version 2.0, January 2004"));
    }
}
