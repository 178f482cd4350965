package org.sagwise.network;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Against exact sums. */
class DoubledSumTest {

    @Test
    void addProduct_keepsWhatRoundingCutsOff_asAFusedMultiplyAddDoes() {
        Random random = new Random(3);
        for (int i = 0; i < 20_000; i++) {
            double a = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(40) - 20);
            double b = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(40) - 20);
            DoubledSum sum = new DoubledSum();
            sum.addProduct(a, b);
            sum.add(-(a * b));

            assertEquals(Math.fma(a, b, -(a * b)), sum.value());
        }
    }

    @Test
    void value_ofProductsThatCancel_isRight() {
        Random random = new Random(4);
        for (int i = 0; i < 2000; i++) {
            DoubledSum sum = new DoubledSum();
            BigDecimal exact = BigDecimal.ZERO;
            for (int term = 0; term < 10; term++) {
                double a = random.nextGaussian() * 1e7;
                double b = term == 9 ? -exact.doubleValue() / a : random.nextGaussian() * 1e-7;
                sum.addProduct(a, b);
                exact = exact.add(new BigDecimal(a).multiply(new BigDecimal(b)));
            }

            assertEquals(exact.doubleValue(), sum.value(), 1e-30);
        }
    }
}
