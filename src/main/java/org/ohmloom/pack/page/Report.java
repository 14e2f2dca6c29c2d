package org.ohmloom.pack.page;

import java.util.List;

/**
 * A document of texts and tables.
 *
 * @param blocks its content from top to bottom
 * @param remark what must be known on every sheet, at most three short lines beside the title block
 */
public record Report(List<Block> blocks, String remark) {
    public Report {
        blocks = List.copyOf(blocks);
    }
}
