package org.sagwise.ui.sound;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;

/**
 * The loudspeaker of the machine. Where there is none, or another program keeps it to itself, nothing
 * is heard and nothing else happens. It is opened when there is something to hear, and let go of when
 * all is quiet.
 */
public final class Loudspeaker implements Speaker, AutoCloseable {

    private static final AudioFormat FORMAT = new AudioFormat(Tones.RATE, 16, 1, true, false);

    /** What is mixed at a time, in samples: short enough for a click to seem to come at once. */
    private static final int BLOCK = Tones.RATE / 50;

    /** Sounds that wait; whoever turns the button faster than that needs to hear no more of it. */
    private static final int MOST_WAITING = 3;

    private final Deque<double[]> waiting = new ArrayDeque<>();
    private Thread player;
    private double loudness;
    private boolean closed;

    @Override
    public synchronized void play(double[] samples) {
        if (waiting.size() < MOST_WAITING) {
            waiting.add(samples);
        }
        wake();
    }

    @Override
    public synchronized void hum(double wanted) {
        loudness = wanted;
        if (wanted > 0) {
            wake();
        }
    }

    @Override
    public synchronized void close() {
        closed = true;
        waiting.clear();
        loudness = 0;
    }

    private void wake() {
        if (player == null && !closed) {
            player = new Thread(this::playAll, "sound");
            player.setDaemon(true);
            player.start();
        }
    }

    /** Plays until all is quiet. */
    private void playAll() {
        Optional<SourceDataLine> line = line();
        Hum hum = new Hum();
        Mix mix = new Mix();
        do {
            double[] block = new double[BLOCK];
            hum.addTo(block, line.isPresent() ? wanted() : 0);
            mix.addTo(block);
            line.ifPresent(open -> open.write(bytes(block), 0, 2 * BLOCK));
        } while (!isQuiet(hum, mix));
        line.ifPresent(open -> {
            open.drain();
            open.close();
        });
    }

    private synchronized double wanted() {
        return loudness;
    }

    /** Whether all was played; the next sound then wakes another player. */
    private synchronized boolean isQuiet(Hum hum, Mix mix) {
        boolean quiet = closed || (hum.isOver() && mix.isOver() && waiting.isEmpty());
        if (quiet) {
            player = null;
        }
        return quiet;
    }

    private synchronized Optional<double[]> next() {
        return Optional.ofNullable(waiting.poll());
    }

    private static Optional<SourceDataLine> line() {
        try {
            SourceDataLine line = AudioSystem.getSourceDataLine(FORMAT);
            line.open(FORMAT, 8 * BLOCK);
            line.start();
            return Optional.of(line);
        } catch (LineUnavailableException | IllegalArgumentException | SecurityException noneToBeHad) {
            return Optional.empty();
        }
    }

    static byte[] bytes(double[] samples) {
        byte[] bytes = new byte[2 * samples.length];
        for (int i = 0; i < samples.length; i++) {
            int value = (int) Math.round(Short.MAX_VALUE * Math.max(-1, Math.min(1, samples[i])));
            bytes[2 * i] = (byte) value;
            bytes[2 * i + 1] = (byte) (value >> 8);
        }
        return bytes;
    }

    /** Sounds one after the other. */
    private final class Mix {

        private double[] now = new double[0];
        private int at;

        void addTo(double[] block) {
            for (int i = 0; i < block.length; i++) {
                if (at == now.length) {
                    Optional<double[]> next = next();
                    if (next.isEmpty()) {
                        return;
                    }
                    now = next.get();
                    at = 0;
                }
                block[i] += now[at++];
            }
        }

        boolean isOver() {
            return at == now.length;
        }
    }
}
