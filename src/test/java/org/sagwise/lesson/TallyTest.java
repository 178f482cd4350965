package org.sagwise.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TallyTest {

    @ParameterizedTest
    @CsvSource({
        "0, 0, COUNT_FIRST",
        "2, 8, TEACH_AGAIN",
        "3, 7, TALK_AND_VOTE_AGAIN",
        "7, 3, TALK_AND_VOTE_AGAIN",
        "8, 2, EXPLAIN_AND_GO_ON"
    })
    void advice_byShareOfRightAnswers_isThatOfTheRule(int right, int wrong, Tally.Advice expected) {
        assertEquals(expected, new Tally(List.of(wrong, right)).advice(1));
    }

    @Test
    void with_count_replacesIt() {
        Tally tally = new Tally(List.of(0, 0)).with(1, 4).with(0, 1);

        assertEquals(5, tally.total());
        assertEquals(0.8, tally.share(1));
    }

    @Test
    void tally_ofFewerThanNobody_isRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Tally(List.of(-1)));
    }
}
