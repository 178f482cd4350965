package org.sagwise.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.sagwise.part.Catalogue;
import org.sagwise.part.key.Keys;
import org.sagwise.quantity.Unit;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.TerminalRef;

/** Makes the joints of a bench of a recipe, and remembers what decided each. */
final class JointBuilder {

    private final Recipe recipe;
    private final Catalogue catalogue;
    private final Set<Assumed> assumed;
    private final List<Link> links = new ArrayList<>();
    private final List<Slot> slots = new ArrayList<>();

    /**
     * @param assumed takes what the recipe did not say
     */
    JointBuilder(Recipe recipe, Catalogue catalogue, Set<Assumed> assumed) {
        this.recipe = recipe;
        this.catalogue = catalogue;
        this.assumed = assumed;
    }

    /**
     * What decides how a joint is.
     *
     * @param role what kind of joint it is
     * @param place where a wire or a charger's clip is; empty for others
     * @param index which cell or coil, from 0; -1 for others
     */
    record Slot(Role role, String place, int index) {}

    /** Kinds of joint, by what decides them. */
    enum Role {
        /** Any two things of the pack that touch. */
        CONTACT,
        /** The joint of one cell towards plus. */
        CELL,
        /** The joint of one coil. */
        COIL,
        /** Two coils in one screw. */
        POST,
        /** A wire, or the joint in its place. */
        WIRE,
        /** A clip of the charger. */
        CHARGER,
        /** The ends of what shorts. */
        CLIP
    }

    List<Link> links() {
        return links;
    }

    /** What decides each joint, in the order of the links. */
    List<Slot> slots() {
        return slots;
    }

    private double contactMohm() {
        if (recipe.contactMohm().isEmpty() && !recipe.isIdeal()) {
            double usual = Usual.contactMohm(catalogue);
            assumed.add(Assumed.of("contacts", Assumed.Detail.of(usual / 1000, Unit.OHM)));
            return usual;
        }
        return recipe.contactMohm().orElse(0.0);
    }

    double jointOf(int cell) {
        return recipe.cellJoints().containsKey(cell) ? recipe.cellJoints().get(cell) : contactMohm();
    }

    double at(String place) {
        return recipe.joints().containsKey(place) ? recipe.joints().get(place) : contactMohm();
    }

    double legOf(int coil) {
        return recipe.coilJoints().containsKey(coil) ? recipe.coilJoints().get(coil) : Usual.postMohm(catalogue);
    }

    void contact(TerminalRef from, TerminalRef to) {
        touch(from, to, contactMohm(), new Slot(Role.CONTACT, "", -1));
    }

    void touch(TerminalRef from, TerminalRef to, double mohm, Slot slot) {
        add(recipe.isIdeal() ? Link.ideal(from, to) : Link.touch(from, to, mohm), slot);
    }

    void add(Link link, Slot slot) {
        links.add(link);
        slots.add(slot);
    }

    /** A wire, or the joint that somebody says is in its place. */
    void wire(TerminalRef from, TerminalRef to, String place) {
        boolean atCell = place.equals(WirePlace.PLUS) || place.equals(WirePlace.MINUS);
        Slot slot = new Slot(Role.WIRE, place, -1);
        if (recipe.isIdeal()) {
            add(Link.ideal(from, to), slot);
            return;
        }
        Optional<Double> joint = jointInPlace(place);
        boolean said = recipe.wires().containsKey(place);
        if (joint.isPresent() && !said) {
            add(Link.touch(from, to, joint.get()), slot);
            return;
        }
        Keys own = said ? recipe.wires().get(place) : recipe.wire();
        tell(own);
        Keys jumper = Usual.wire(own);
        double contacts = joint.orElseGet(() -> atCell && !jumper.has("contacts_mohm") ? contactMohm() : 0);
        Keys whole = contacts > 0 ? jumper.with("contacts_mohm", contacts) : jumper;
        add(Link.of(Keys.of("from", from.toString(), "to", to.toString(), "jumper", whole)), slot);
    }

    /** The plus and minus joint may also be called after the cell at that end. */
    private Optional<Double> jointInPlace(String place) {
        if (recipe.joints().containsKey(place)) {
            return Optional.of(recipe.joints().get(place));
        }
        return place.equals(WirePlace.PLUS)
                ? Optional.ofNullable(recipe.cellJoints().get(recipe.hub(0)))
                : Optional.empty();
    }

    private void tell(Keys wire) {
        boolean thick = wire.has("awg") || wire.has("diameter_mm") || wire.has("area_mm2");
        Assumed.Detail awg = Assumed.Detail.of(String.valueOf(Usual.AWG));
        Assumed.Detail length = Assumed.Detail.of(Usual.LENGTH_MM / 1000, Unit.METRE);
        if (!thick && !wire.has("length_mm")) {
            assumed.add(Assumed.of("wire", awg, length));
        } else if (!thick) {
            assumed.add(Assumed.of("wire.thick", awg));
        } else if (!wire.has("length_mm")) {
            assumed.add(Assumed.of("wire.length", length));
        }
    }
}
