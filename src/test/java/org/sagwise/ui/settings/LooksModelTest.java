package org.sagwise.ui.settings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class LooksModelTest {

    private final PreferencesModel preferences = new PreferencesModel(new NoSettings());
    private final LooksModel looks = new LooksModel(preferences);

    @Test
    void projector_turnedOn_enlargesOnlyWhatAClassSees() {
        looks.fit(1000);
        AppliedLooks before = looks.get();

        looks.toggleProjector();

        assertEquals(150, looks.get().textPercent());
        assertEquals(2, looks.get().lineScale());
        assertEquals(before, looks.nearProperty().get());
        looks.toggleProjector();
        assertEquals(before, looks.get());
    }

    /** 125 % of 14 px are 2.4 % of 720 px; 150 % are 1.9 % of 1080 px. */
    @Test
    void projector_inLowWindow_leavesRoomForTheQuestion() {
        looks.toggleProjector();
        looks.fit(700);
        assertEquals(125, looks.get().textPercent());

        looks.fit(1000);
        assertEquals(150, looks.get().textPercent());
    }

    @Test
    void projector_largerTextChosen_keepsIt() {
        preferences.change(now -> now.withTextPercent(200));
        looks.fit(700);
        looks.toggleProjector();

        assertEquals(200, looks.get().textPercent());
        assertEquals(200, looks.nearProperty().get().textPercent());
    }

    private static final class NoSettings implements SettingsStore {

        @Override
        public Preferences load() {
            return Preferences.fresh();
        }

        @Override
        public void save(Preferences preferences) {}
    }
}
