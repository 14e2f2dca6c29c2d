package org.ohmloom.pack;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.Analyst;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.store.HarnessFiles;
import org.ohmloom.tables.WireTables;

/**
 * Takes the pictures of pages of the pack that the documentation shows. Needs no display:
 * {@code mvn -q compile exec:java -Dexec.mainClass=org.ohmloom.pack.PackPictures -Dexec.args=src/docs/pictures}.
 */
public final class PackPictures {

    private static final Path EXAMPLE = Path.of("examples", "star-ground.harness.json");
    private static final float DOTS_PER_INCH = 96;

    private PackPictures() {}

    /**
     * Writes {@code drawing.png} and {@code wiring-diagram.png}, the first sheets of those of an example.
     *
     * @param args the folder to write to
     * @throws IOException          when the picture cannot be written
     * @throws HarnessFileException when the example cannot be read
     * @throws PackException        when the drawing cannot be written
     */
    public static void main(String[] args) throws IOException, HarnessFileException, PackException {
        Path folder = Path.of(args.length > 0 ? args[0] : "src/docs/pictures");
        Files.createDirectories(folder);
        Analysis analysis = Analyst.analyse(HarnessFiles.read(EXAMPLE), WireTables.bundled(), Cancel.NEVER);
        picture(analysis, PackDocument.DRAWING, folder);
        picture(analysis, PackDocument.WIRING_DIAGRAM, folder);
    }

    private static void picture(Analysis analysis, PackDocument which, Path folder) throws IOException, PackException {
        Path made = Files.createTempDirectory("pack-picture");
        List<Path> files = BuildPack.write(analysis, made, PackOptions.ALL.withDocuments(which.id()), Progress.NONE);
        try (PDDocument document = Loader.loadPDF(files.get(0).toFile())) {
            BufferedImage picture = new PDFRenderer(document).renderImageWithDPI(0, DOTS_PER_INCH);
            ImageIO.write(picture, "png", folder.resolve(which.id() + ".png").toFile());
        }
        for (Path file : files) {
            Files.delete(file);
        }
        Files.delete(made);
    }
}
