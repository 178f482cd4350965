package org.sagwise.ui;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;

/**
 * What frames took: the time from each to the next, and the processor time that the thread of the
 * window and the one that renders spent in between. Processor time says what a frame costs even
 * where other programs take turns on the machine.
 */
final class FrameLog {

    /** No frame should keep the thread of the window for longer, ms. */
    private static final double LONGEST_WORK_MS = 4;

    private static final String RENDERER = "QuantumRenderer";
    private static final double NS_A_MS = 1e6;

    /** One frame, all in ms. */
    private record Frame(double interval, double work, double rendering) {}

    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    private final long renderer = renderer();
    private final List<Frame> frames = new ArrayList<>();
    private long lastNs;
    private long lastWorkNs;
    private long lastRenderingNs;

    private long renderer() {
        return Arrays.stream(threads.getThreadInfo(threads.getAllThreadIds()))
                .filter(info -> info != null && info.getThreadName().startsWith(RENDERER))
                .findFirst()
                .orElseThrow()
                .getThreadId();
    }

    /**
     * A frame begins. To be called on the thread of the window.
     *
     * @param counts whether the frame that ends here is one of those asked about
     */
    void frame(long nowNs, boolean counts) {
        long work = threads.getCurrentThreadCpuTime();
        long rendering = threads.getThreadCpuTime(renderer);
        if (lastNs != 0 && counts) {
            frames.add(new Frame(
                    (nowNs - lastNs) / NS_A_MS,
                    (work - lastWorkNs) / NS_A_MS,
                    (rendering - lastRenderingNs) / NS_A_MS));
        }
        lastNs = nowNs;
        lastWorkNs = work;
        lastRenderingNs = rendering;
    }

    /** Forgets all frames so far: what comes now is another task, or the machine was warming up. */
    void restart() {
        frames.clear();
        lastNs = 0;
    }

    static String heading() {
        return String.format(
                Locale.ROOT,
                "%-18s %6s %6s | %21s | %28s | %21s",
                "task",
                "frames",
                "per s",
                "interval ms 50/95/max",
                "window thread ms 50/95/max >4",
                "renderer ms 50/95/max");
    }

    String summary(String task) {
        double totalMs = frames.stream().mapToDouble(Frame::interval).sum();
        double[] work = sorted(frames.stream().mapToDouble(Frame::work));
        long late = Arrays.stream(work).filter(each -> each > LONGEST_WORK_MS).count();
        return String.format(
                Locale.ROOT,
                "%-18s %6d %6.1f | %21s | %23s %5d | %21s",
                task,
                frames.size(),
                1000 * frames.size() / totalMs,
                spread(sorted(frames.stream().mapToDouble(Frame::interval))),
                spread(work),
                late,
                spread(sorted(frames.stream().mapToDouble(Frame::rendering))));
    }

    private static double[] sorted(DoubleStream numbers) {
        return numbers.sorted().toArray();
    }

    private static String spread(double[] sorted) {
        return String.format(
                Locale.ROOT,
                "%.2f %.2f %.2f",
                sorted[sorted.length / 2],
                sorted[(int) (0.95 * (sorted.length - 1))],
                sorted[sorted.length - 1]);
    }
}
