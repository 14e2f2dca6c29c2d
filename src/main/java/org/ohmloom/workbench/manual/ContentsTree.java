package org.ohmloom.workbench.manual;

import java.util.Enumeration;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JTree;
import javax.swing.tree.DefaultMutableTreeNode;
import javax.swing.tree.DefaultTreeCellRenderer;
import javax.swing.tree.DefaultTreeModel;
import javax.swing.tree.TreeNode;
import javax.swing.tree.TreePath;
import javax.swing.tree.TreeSelectionModel;
import org.ohmloom.manual.Chapter;
import org.ohmloom.manual.Manual;
import org.ohmloom.manual.Page;

/** The contents of the manual as a tree. */
final class ContentsTree extends JTree {

    private static final long serialVersionUID = 1L;

    private boolean following;

    private record Entry(Page page) {
        @Override
        public String toString() {
            return page.title();
        }
    }

    /**
     * A tree without pages.
     *
     * @param name   what it is called for readers of the screen
     * @param chosen takes the page somebody chooses
     */
    ContentsTree(String name, Consumer<Page> chosen) {
        super(new DefaultTreeModel(new DefaultMutableTreeNode()));
        setName("manual-contents");
        getAccessibleContext().setAccessibleName(name);
        setRootVisible(false);
        setShowsRootHandles(true);
        getSelectionModel().setSelectionMode(TreeSelectionModel.SINGLE_TREE_SELECTION);
        dress();
        addTreeSelectionListener(event -> {
            if (!following) {
                chosen().ifPresent(chosen);
            }
        });
    }

    @Override
    public void updateUI() {
        super.updateUI();
        dress();
    }

    private void dress() {
        DefaultTreeCellRenderer plain = new DefaultTreeCellRenderer();
        plain.setLeafIcon(null);
        plain.setOpenIcon(null);
        plain.setClosedIcon(null);
        setCellRenderer(plain);
    }

    private Optional<Page> chosen() {
        return getLastSelectedPathComponent() instanceof DefaultMutableTreeNode node
                        && node.getUserObject() instanceof Entry entry
                ? Optional.of(entry.page())
                : Optional.empty();
    }

    /** Lists a manual. */
    void list(Manual manual) {
        DefaultMutableTreeNode root = new DefaultMutableTreeNode();
        for (Chapter chapter : manual.chapters()) {
            DefaultMutableTreeNode node = new DefaultMutableTreeNode(new Entry(chapter.page()));
            chapter.below().forEach(page -> node.add(new DefaultMutableTreeNode(new Entry(page))));
            root.add(node);
        }
        setModel(new DefaultTreeModel(root));
    }

    /** Marks the page in front. */
    void follow(Page page) {
        following = true;
        try {
            Optional<TreePath> place = place(page);
            if (place.isPresent()) {
                setSelectionPath(place.get());
                scrollPathToVisible(place.get());
            } else {
                clearSelection();
            }
        } finally {
            following = false;
        }
    }

    private Optional<TreePath> place(Page page) {
        DefaultMutableTreeNode root = (DefaultMutableTreeNode) getModel().getRoot();
        for (Enumeration<TreeNode> nodes = root.preorderEnumeration(); nodes.hasMoreElements(); ) {
            DefaultMutableTreeNode node = (DefaultMutableTreeNode) nodes.nextElement();
            if (node.getUserObject() instanceof Entry entry && entry.page().id().equals(page.id())) {
                return Optional.of(new TreePath(node.getPath()));
            }
        }
        return Optional.empty();
    }
}
