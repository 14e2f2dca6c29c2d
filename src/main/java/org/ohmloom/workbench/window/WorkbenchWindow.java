package org.ohmloom.workbench.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Desktop;
import java.awt.Dimension;
import java.awt.GraphicsConfiguration;
import java.awt.GraphicsDevice;
import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.awt.Window;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JFrame;
import javax.swing.WindowConstants;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Document;
import org.ohmloom.workbench.desk.Services;
import org.ohmloom.workbench.desk.Topic;
import org.ohmloom.workbench.manual.ManualDesk;
import org.ohmloom.workbench.settings.Appearance;
import org.ohmloom.workbench.settings.Look;
import org.ohmloom.workbench.settings.PreferenceStore;
import org.ohmloom.workbench.widget.AppIcon;
import org.ohmloom.workbench.words.Words;

/** The window: its title, its place on the screen, and the question before it closes. */
public final class WorkbenchWindow extends JFrame {

    private static final long serialVersionUID = 1L;
    private static final Dimension USUAL = new Dimension(1440, 900);
    private static final int SIDE = 430;

    private final transient PreferenceStore preferences;
    private final transient Runnable closed;
    private final WorkbenchView view;
    private final transient FileDrop drop;

    /**
     * A window, not shown yet.
     *
     * @param services what it is built on; its prompts are made for it
     * @param export   asks how to write the build pack and writes it
     * @param around   opens other windows and closes them all
     * @param closed   called once when the window is gone
     */
    public WorkbenchWindow(Services services, Consumer<Desk> export, WindowActions around, Runnable closed) {
        super("Ohmloom");
        this.preferences = services.preferences();
        this.closed = closed;
        ManualDesk manual = new ManualDesk(() -> this);
        this.view = new WorkbenchView(
                services,
                new WindowTasks(
                        this::putOn,
                        export,
                        () -> TextDialogs.cautions(this),
                        around,
                        HelpCommands.of(() -> this, this::view, manual)));
        Runnable deaf = manual.listen(() -> view.book().get("help-here").keys());
        this.drop = new FileDrop(view.filing()::open, around.open());
        setName("workbench");
        setIconImages(AppIcon.images());
        setJMenuBar(view.menus());
        setContentPane(view);
        drop.takeOver(view);
        setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
        addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosing(WindowEvent event) {
                askToClose(gone -> {});
            }

            @Override
            public void windowClosed(WindowEvent event) {
                deaf.run();
            }

            @Override
            public void windowActivated(WindowEvent event) {
                view.filing().watch().look();
            }
        });
        view.desk().listen(topic -> {
            if (topic == Topic.DOCUMENT || topic == Topic.HARNESS) {
                showTitle();
            }
        });
        services.documents().listen(view.desk(), this::showTitle);
        onSystemQuit(around.quit());
        place();
    }

    public WorkbenchView view() {
        return view;
    }

    private void place() {
        Rectangle screen = usable(getGraphicsConfiguration());
        Rectangle wanted = preferences
                .now()
                .window()
                .filter(WorkbenchWindow::isOnAScreen)
                .orElseGet(() -> new Rectangle(
                        screen.x,
                        screen.y,
                        Math.min(screen.width, UIScale.scale(USUAL.width)),
                        Math.min(screen.height, UIScale.scale(USUAL.height))));
        setMinimumSize(new Dimension(UIScale.scale(760), UIScale.scale(520)));
        setBounds(wanted);
        if (preferences.now().window().isEmpty()) {
            setLocationRelativeTo(null);
        }
        if (preferences.now().dividers().isEmpty()) {
            int side = getWidth() - UIScale.scale(SIDE);
            view.placeDividers(
                    Map.of("side", side, "lists", (int) (getHeight() * 0.5), "findings", (int) (getHeight() * 0.46)));
        } else {
            view.placeDividers(preferences.now().dividers());
        }
    }

    private static boolean isOnAScreen(Rectangle wanted) {
        for (GraphicsDevice device :
                GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices()) {
            Rectangle shared = device.getDefaultConfiguration().getBounds().intersection(wanted);
            if (shared.width > 100 && shared.height > 100) {
                return true;
            }
        }
        return false;
    }

    private static Rectangle usable(GraphicsConfiguration configuration) {
        return configuration == null
                ? GraphicsEnvironment.getLocalGraphicsEnvironment().getMaximumWindowBounds()
                : configuration
                        .getBounds()
                        .intersection(GraphicsEnvironment.getLocalGraphicsEnvironment()
                                .getMaximumWindowBounds());
    }

    private void putOn(Look look) {
        Appearance.install(preferences);
        for (Window each : getWindows()) {
            if (each instanceof WorkbenchWindow other && other.preferences == preferences) {
                other.view.takeUpUnits(preferences);
                // A look gives fields and lists drop targets of their own again.
                other.drop.takeOver(other.view);
            }
        }
    }

    private void showTitle() {
        Optional<Document> document = view.desk().document();
        boolean changed = document.filter(open -> open.session().isChanged()).isPresent();
        String key = view.filing().isElsewhere() ? "title.elsewhere" : "title";
        setTitle(document.map(open -> Words.of("windows").get(key, (changed ? "*" : "") + open.name()))
                .orElse("Ohmloom"));
        getRootPane().putClientProperty("Window.documentModified", changed);
    }

    private static void onSystemQuit(Runnable quit) {
        if (Desktop.isDesktopSupported() && Desktop.getDesktop().isSupported(Desktop.Action.APP_QUIT_HANDLER)) {
            Desktop.getDesktop().setQuitHandler((event, response) -> {
                response.cancelQuit();
                quit.run();
            });
        }
    }

    /**
     * Closes the window unless a person wants to stay; a save under way is waited for.
     *
     * @param answer hears whether it is closed
     */
    public void askToClose(Consumer<Boolean> answer) {
        if (!view.lists().commit()) {
            answer.accept(false);
            return;
        }
        view.filing().mayLeave(may -> {
            if (may) {
                preferences.change(before -> before.withWindow(getBounds(), view.dividerPlaces()));
                view.filing().leave();
                dispose();
                closed.run();
            }
            answer.accept(may);
        });
    }
}
