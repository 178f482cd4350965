package org.sagwise.run;

/**
 * A coil at one moment of a run.
 *
 * @param id id of the coil
 * @param voltsV voltage across it, V
 * @param currentA current through it from its first terminal to its second, A
 * @param temperatureC its temperature, dry and in still air, °C; NaN if only its ohms are known
 * @param peakC highest temperature so far, °C; NaN if only its ohms are known
 */
public record CoilMoment(String id, double voltsV, double currentA, double temperatureC, double peakC) {

    /** Power that arrives in it, W. */
    public double powerW() {
        return voltsV * currentA;
    }
}
