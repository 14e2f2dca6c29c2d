package org.ohmloom.manual;

import java.util.ArrayList;
import java.util.List;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.CustomBlock;
import org.commonmark.node.CustomNode;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Heading;
import org.commonmark.node.Image;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;

/** Reads the Markdown of pages: CommonMark with tables. */
final class Markdown {

    private static final Parser PARSER =
            Parser.builder().extensions(List.of(TablesExtension.create())).build();

    private Markdown() {}

    static Node read(String markdown) {
        return PARSER.parse(markdown);
    }

    /** The first heading; the first words where there is none. */
    static String title(Node page) {
        String[] found = {""};
        page.accept(new AbstractVisitor() {
            @Override
            public void visit(Heading heading) {
                if (found[0].isEmpty()) {
                    found[0] = plainText(heading).strip();
                }
            }
        });
        return found[0].isEmpty() ? plainText(page).lines().findFirst().orElse("") : found[0];
    }

    /** Links and pictures in their order. */
    static List<PageLink> links(String from, Node page) {
        List<PageLink> links = new ArrayList<>();
        page.accept(new AbstractVisitor() {
            @Override
            public void visit(Link link) {
                links.add(new PageLink(link.getDestination(), from, false));
                visitChildren(link);
            }

            @Override
            public void visit(Image image) {
                links.add(new PageLink(image.getDestination(), from, true));
            }
        });
        return links;
    }

    /** What stands there without marks; every paragraph, heading, cell and line of code ends a line. */
    static String plainText(Node node) {
        StringBuilder text = new StringBuilder();
        node.accept(new PlainText(text));
        return text.toString();
    }

    private static final class PlainText extends AbstractVisitor {

        private final StringBuilder text;

        PlainText(StringBuilder text) {
            this.text = text;
        }

        @Override
        public void visit(Text words) {
            text.append(words.getLiteral());
        }

        @Override
        public void visit(Code code) {
            text.append(code.getLiteral());
        }

        @Override
        public void visit(FencedCodeBlock code) {
            text.append(code.getLiteral()).append('\n');
        }

        @Override
        public void visit(IndentedCodeBlock code) {
            text.append(code.getLiteral()).append('\n');
        }

        @Override
        public void visit(SoftLineBreak end) {
            text.append(' ');
        }

        @Override
        public void visit(Paragraph paragraph) {
            visitChildren(paragraph);
            text.append('\n');
        }

        @Override
        public void visit(Heading heading) {
            visitChildren(heading);
            text.append('\n');
        }

        @Override
        public void visit(Image image) {
            // What it shows stands below it or is said in the text.
        }

        @Override
        public void visit(CustomNode node) {
            visitChildren(node);
            if (node instanceof TableCell) {
                text.append('\n');
            }
        }

        @Override
        public void visit(CustomBlock block) {
            visitChildren(block);
            if (block instanceof TableBlock) {
                text.append('\n');
            }
        }
    }
}
