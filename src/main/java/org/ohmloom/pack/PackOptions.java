package org.ohmloom.pack;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;
import org.ohmloom.draw.Paper;
import org.ohmloom.draw.form.BoardSize;

/**
 * What to write and how.
 *
 * @param documents  documents wanted, in the order of the pack
 * @param paper      sheet size of the drawing and of the tiles of form boards; tables are set on A4, or on ANSI A when it is a size of ASME Y14.1
 * @param monochrome whether only black and greys are used
 * @param remedies   whether remedies are tried for the findings on returns and stand in the calculation; that takes many analyses
 * @param perAssembly whether each assembly gets a pack of its own as well, in a folder named by its number
 * @param board      how form boards are laid and printed
 * @param pictures   as what pictures the drawing is written beside its PDF
 */
public record PackOptions(
        Set<PackDocument> documents,
        Paper paper,
        boolean monochrome,
        boolean remedies,
        boolean perAssembly,
        BoardOptions board,
        PictureOptions pictures) {

    /** Every document, the drawing on A3, in colour. */
    public static final PackOptions ALL = new PackOptions(
            EnumSet.allOf(PackDocument.class), Paper.A3, false, false, false, BoardOptions.USUAL, PictureOptions.USUAL);

    public PackOptions {
        Set<PackDocument> copy = EnumSet.noneOf(PackDocument.class);
        copy.addAll(documents);
        documents = Collections.unmodifiableSet(copy);
    }

    /**
     * These options with the documents of a list as typed: {@code wire-list,drawing}.
     *
     * @throws PackException when a name in it is no document
     */
    public PackOptions withDocuments(String list) throws PackException {
        Set<PackDocument> wanted = EnumSet.noneOf(PackDocument.class);
        for (String name : list.split(",", -1)) {
            wanted.add(PackDocument.find(name)
                    .orElseThrow(() -> new PackException(
                            "'%s' is no document of the pack; choose from %s",
                            name.strip(),
                            Arrays.stream(PackDocument.values())
                                    .map(PackDocument::id)
                                    .collect(Collectors.joining(", ")))));
        }
        return new PackOptions(wanted, paper, monochrome, remedies, perAssembly, board, pictures);
    }

    /**
     * These options with the drawing on a paper as typed: {@code A3}, {@code ANSI B}.
     *
     * @throws PackException when there is no such paper
     */
    public PackOptions withPaper(String name) throws PackException {
        Paper found = Paper.named(name)
                .orElseThrow(() -> new PackException(
                        "'%s' is no paper of the pack; choose from %s",
                        name.strip(),
                        Arrays.stream(Paper.values()).map(Paper::label).collect(Collectors.joining(", "))));
        return new PackOptions(documents, found, monochrome, remedies, perAssembly, board, pictures);
    }

    /**
     * These options with the largest form board as typed, in mm: {@code 2440x1220}.
     *
     * @throws PackException when that is no size
     */
    public PackOptions withBoard(String typed) throws PackException {
        BoardSize size = BoardSize.parsed(typed)
                .orElseThrow(() -> new PackException(
                        "'%s' is no size of a board; write width and height in mm, each 300 to 50000, as in 2440x1220",
                        typed.strip()));
        return new PackOptions(
                documents, paper, monochrome, remedies, perAssembly, new BoardOptions(size, board.whole()), pictures);
    }

    /** These options with form boards each whole on one sheet of its own size, or in tiles. */
    public PackOptions withWholeBoards(boolean changed) {
        BoardOptions options = new BoardOptions(board.size(), changed);
        return new PackOptions(documents, paper, monochrome, remedies, perAssembly, options, pictures);
    }

    /**
     * These options with pictures of the drawing of the kinds of a list as typed: {@code svg,png} or {@code none}.
     *
     * @throws PackException when one is no kind of picture
     */
    public PackOptions withPictures(String list) throws PackException {
        return withPictures(pictures.of(list));
    }

    /** These options with those pictures of the drawing. */
    public PackOptions withPictures(PictureOptions changed) {
        return new PackOptions(documents, paper, monochrome, remedies, perAssembly, board, changed);
    }

    /**
     * These options with PNG pictures at so many dots to the inch.
     *
     * @throws PackException when that is not 20 to 1200
     */
    public PackOptions withDots(int dotsPerInch) throws PackException {
        if (dotsPerInch < 20 || dotsPerInch > 1200) {
            throw new PackException("'%s' dots to the inch cannot be drawn; choose 20 to 1200", dotsPerInch);
        }
        return withPictures(new PictureOptions(pictures.svg(), pictures.png(), dotsPerInch));
    }

    /** These options in black and greys only, or in colour. */
    public PackOptions withMonochrome(boolean changed) {
        return new PackOptions(documents, paper, changed, remedies, perAssembly, board, pictures);
    }

    /** These options with remedies tried, or not. */
    public PackOptions withRemedies(boolean changed) {
        return new PackOptions(documents, paper, monochrome, changed, perAssembly, board, pictures);
    }

    /** These options with a pack of each assembly beside, or without. */
    public PackOptions withPerAssembly(boolean changed) {
        return new PackOptions(documents, paper, monochrome, remedies, changed, board, pictures);
    }
}
