package org.sagwise.part;

/**
 * The kinds of lithium-ion cell, by the three letters that are printed on round cells: the letter
 * for lithium-ion and the active metal of the positive electrode, then R for round (IEC 61960
 * designation, except NCR, which is the trade's).
 */
public enum Chemistry {
    /**
     * Lithium cobalt oxide. 3.7 V nominal: type label in the open data of the Battery Testing
     * Consortium, Oxford Brookes University. Lowest voltage 2.75 V: seen on a data sheet of a 4.2 V
     * cell; 3.0 V is also in use (from memory, no source at hand). Runaway near 150 °C: from memory
     * of Golubkov et al., RSC Adv. 4 (2014) 3633, not at hand.
     */
    ICR(
            'C',
            new Volts(4.20, 3.7, 3.2, 2.75),
            RestVoltageTables.icr(4.20),
            Distress.ofRoundCell(new Band(140, 170), 4.30)),
    /**
     * Lithium manganese oxide. All its voltages but the end of charge, its curve and its runaway
     * near 250 °C are from memory, no source at hand.
     */
    IMR(
            'M',
            new Volts(4.20, 3.7, 3.2, 2.5),
            RestVoltageTables.imr(4.20),
            Distress.ofRoundCell(new Band(230, 270), 4.30)),
    /**
     * Lithium nickel manganese cobalt oxide. 4.20 V full and 2.5 V lowest: data sheet of a 2.5 Ah
     * high-drain 18650; 3.6 V nominal: open data of the Battery Testing Consortium, Oxford Brookes
     * University. Runaway at 170–210 °C: from memory of Golubkov et al., RSC Adv. 4 (2014) 3633,
     * not at hand.
     */
    INR(
            'N',
            new Volts(4.20, 3.6, 3.2, 2.5),
            RestVoltageTables.inr(4.20),
            Distress.ofRoundCell(new Band(170, 210), 4.30)),
    /**
     * Lithium nickel cobalt aluminium oxide: much charge, less current. Voltages as for INR (from
     * memory, no source at hand), curve of the nearest cell with open data; runaway at 150–190 °C
     * from memory, no source at hand.
     */
    NCR(
            'N',
            new Volts(4.20, 3.6, 3.2, 2.5),
            RestVoltageTables.ncr(4.20),
            Distress.ofRoundCell(new Band(150, 190), 4.30)),
    /**
     * Lithium iron phosphate. Charged to 3.65 V, 2.5 V lowest, 3.2 V nominal: seen on a data sheet. 2.8 V
     * for use is this program's choice: there the flat part of the curve is over and about 1.5 % of
     * charge is left. The letter F is later practice, not in the list of IEC 61960:2011 (from
     * memory, no source at hand), and so is the runaway at 195–270 °C, milder than the others'.
     */
    IFR(
            'F',
            new Volts(3.65, 3.2, 2.8, 2.5),
            RestVoltageTables.ifr(3.65),
            Distress.ofRoundCell(new Band(195, 270), 3.80));

    private final char metalLetter;
    private final Volts volts;
    private final RestVoltageCurve restCurve;
    private final Distress distress;

    Chemistry(char metalLetter, Volts volts, RestVoltageCurve restCurve, Distress distress) {
        this.metalLetter = metalLetter;
        this.volts = volts;
        this.restCurve = restCurve;
        this.distress = distress;
    }

    /** Second letter of an IEC 61960 designation: the metal of the positive electrode. */
    public char metalLetter() {
        return metalLetter;
    }

    /** Voltage (V) at which charging ends. */
    public double fullV() {
        return volts.full;
    }

    /** Voltage (V) at which a full cell of this kind rests. */
    public double restedFullV() {
        return restCurve.voltsAt(1);
    }

    /** Voltage (V) by which the kind is named. */
    public double nominalV() {
        return volts.nominal;
    }

    /**
     * Terminal voltage under load (V) at which a person should stop. 3.2 V for the 4.2 V kinds is
     * common practice, no source.
     */
    public double useCutoffV() {
        return volts.use;
    }

    /** Terminal voltage (V) below which makers do not allow a discharge. */
    public double lowestV() {
        return volts.lowest;
    }

    /** Rest voltage against charge. */
    public RestVoltageCurve restCurve() {
        return restCurve;
    }

    /**
     * The same for a cell whose charge ends elsewhere. A kind that rests below the voltage at which
     * its charge ends does so wherever that is.
     *
     * @param fullV voltage at which charging ends (V), above 0
     */
    public RestVoltageCurve restCurve(double fullV) {
        boolean restsThere = restedFullV() == fullV();
        return restCurve.withFull(restsThere ? fullV : Math.min(restedFullV(), fullV));
    }

    /** From where on a cell of this kind is in trouble. */
    public Distress distress() {
        return distress;
    }

    private record Volts(double full, double nominal, double use, double lowest) {}
}
