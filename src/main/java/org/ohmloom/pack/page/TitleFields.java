package org.ohmloom.pack.page;

import java.util.Optional;
import org.ohmloom.model.TitleBlock;

/**
 * What the title block of a document says: the fields of ISO 7200:2004.
 *
 * @param owner              legal owner
 * @param number             identification number
 * @param revision           revision index
 * @param date               date of issue, as {@code YYYY-MM-DD}
 * @param language           language code
 * @param title              title
 * @param supplementaryTitle second line of the title
 * @param documentType       what sort of document it is
 * @param creator            who made it
 * @param approver           who approved it
 */
public record TitleFields(
        Optional<String> owner,
        String number,
        String revision,
        Optional<String> date,
        Optional<String> language,
        String title,
        Optional<String> supplementaryTitle,
        String documentType,
        Optional<String> creator,
        Optional<String> approver) {

    /** The fields of a harness's title block on a document of some sort. */
    public static TitleFields of(TitleBlock block, String documentType) {
        return new TitleFields(
                block.owner(),
                block.number(),
                block.currentRevision(),
                block.date(),
                block.language(),
                block.title(),
                block.supplementaryTitle(),
                documentType,
                block.creator(),
                block.approver());
    }
}
