package org.sagwise.quantity;

/**
 * Rounds by doubles alone, wherever they leave no doubt what exact arithmetic would say: not close to a half or to a
 * power of ten, and not of too many digits. A bench prints some hundred numbers for each picture, and exact decimals
 * are slow in a browser.
 */
final class QuickDigits {

    /** Beyond these, exact arithmetic is asked. */
    private static final int MOST_DECIMALS = 9;

    private static final double MOST = 1e9;

    /** A double of this size is off by less than a third of this, after a few sums and products. */
    private static final double DOUBT = 1e-6;

    private static final double[] TENS = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9};

    private QuickDigits() {}

    /**
     * The number with a point and, if it is below zero and not rounded to zero, a hyphen.
     *
     * @param value finite, in the scale in which it is printed, right but for its last digits
     * @return empty if it has to be done exactly
     */
    static String of(double value, Digits digits) {
        double size = Math.abs(value);
        if (digits.rule() == Digits.Rule.ALL || size >= MOST) {
            return "";
        }
        boolean isSignificant = digits.rule() == Digits.Rule.SIGNIFICANT;
        int decimals = isSignificant ? digits.count() - before(size) : digits.count();
        if (decimals > MOST_DECIMALS || decimals < -MOST_DECIMALS) {
            return "";
        }
        double scaled = decimals < 0 ? size / TENS[-decimals] : size * TENS[decimals];
        double whole = Math.floor(scaled);
        double rest = scaled - whole;
        if (scaled >= MOST || Math.abs(rest - 0.5) < DOUBT || isSignificant && isNearTen(size)) {
            return "";
        }
        double parts = rest > 0.5 ? whole + 1 : whole;
        // 99.96 has become 100.0.
        boolean isOneMore = isSignificant && parts == TENS[Math.min(MOST_DECIMALS, digits.count())];
        return isOneMore
                ? written(value, parts / 10, decimals - 1, digits.zeros())
                : written(value, parts, decimals, digits.zeros());
    }

    /** How many digits stand before the point; none or fewer below one tenth, one of zero. */
    private static int before(double size) {
        if (size == 0) {
            return 1;
        }
        int before = 0;
        double bound = 1;
        while (size >= bound) {
            bound *= 10;
            before++;
        }
        while (before > -2 * MOST_DECIMALS && size < bound / 10) {
            bound /= 10;
            before--;
        }
        return before;
    }

    private static boolean isNearTen(double size) {
        if (size == 0) {
            return false;
        }
        double scaled = size;
        while (scaled >= 10) {
            scaled /= 10;
        }
        while (scaled < 1) {
            scaled *= 10;
        }
        return scaled - 1 < DOUBT || 10 - scaled < DOUBT;
    }

    private static String written(double value, double parts, int decimals, Digits.Zeros zeros) {
        StringBuilder written = new StringBuilder();
        if (value < 0 && parts > 0) {
            written.append('-');
        }
        if (decimals <= 0) {
            return written.append((int) (parts * TENS[-decimals])).toString();
        }
        int all = (int) parts;
        int unit = (int) TENS[decimals];
        written.append(all / unit).append('.');
        int rest = all % unit;
        for (int digit = unit / 10; digit > 0; digit /= 10) {
            written.append((char) ('0' + rest / digit));
            rest %= digit;
        }
        int end = written.length();
        if (zeros == Digits.Zeros.DROPPED) {
            while (written.charAt(end - 1) == '0') {
                end--;
            }
            end = written.charAt(end - 1) == '.' ? end - 1 : end;
        }
        return written.substring(0, end);
    }
}
