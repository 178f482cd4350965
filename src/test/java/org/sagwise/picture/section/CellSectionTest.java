package org.sagwise.picture.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.sagwise.picture.geometry.Box;

class CellSectionTest {

    @ParameterizedTest
    @EnumSource
    void at_placeInAPiece_isThatPiece(CellSection.Piece piece) {
        Box place = CellSection.place(piece);

        assertEquals(Optional.of(piece), CellSection.at(place.middleX(), place.middleY()));
    }

    @ParameterizedTest
    @EnumSource
    void piece_inBothLanguages_saysWhatItIsForAndWhereThatIsFrom(CellSection.Piece piece) {
        for (Locale locale : new Locale[] {Locale.ENGLISH, Locale.GERMAN}) {
            assertFalse(piece.title(locale).isBlank());
            assertFalse(piece.purpose(locale).isBlank());
            assertFalse(piece.source(locale).isBlank());
        }
    }

    @Test
    void at_outside_isNothing() {
        assertEquals(Optional.empty(), CellSection.at(2, 2));
    }
}
