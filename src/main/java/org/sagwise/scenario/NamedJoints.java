package org.sagwise.scenario;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.sagwise.part.Catalogue;
import org.sagwise.part.Gauge;
import org.sagwise.part.JumperSpec;
import org.sagwise.part.WireSize;
import org.sagwise.part.key.Keys;

/**
 * Joints that a link names by the {@code model} of a contact or a jumper.
 *
 * @param catalogue where they are looked up
 */
record NamedJoints(Catalogue catalogue) {

    private static final double SAME_SIZE = 1e-9;

    /** Every name that a link may give. */
    Set<String> ids() {
        Set<String> ids = new TreeSet<>(catalogue.contacts().ids());
        ids.addAll(catalogue.jumpers().ids());
        return ids;
    }

    /** A link cannot be of a model and be joined in another way than that. */
    List<Finding> clashes(Keys link, String place) {
        Optional<String> way =
                model(link).map(Keys::names).flatMap(names -> names.stream().findFirst());
        return way.stream()
                .flatMap(is -> Stream.of("ideal", "contact_mohm", "jumper").filter(other -> !other.equals(is)))
                .filter(link::has)
                .map(other -> Finding.of(place, Problem.CLASH, "model, " + other))
                .toList();
    }

    /** The link with what its model says, where it does not say that itself. */
    Keys filled(Keys link) {
        Keys filled = link;
        for (var entry : model(link).orElse(Keys.NONE).values().entrySet()) {
            filled = filled.has(entry.getKey()) ? filled : filled.with(entry.getKey(), entry.getValue());
        }
        return filled;
    }

    private Optional<Keys> model(Keys link) {
        return link.text("model").flatMap(this::keys);
    }

    private Optional<Keys> keys(String id) {
        return catalogue
                .contacts()
                .find(id)
                .map(contact -> Keys.of("contact_mohm", contact.ohm() * 1000))
                .or(() -> catalogue.jumpers().find(id).map(NamedJoints::jumper));
    }

    private static Keys jumper(JumperSpec jumper) {
        Keys wire = Keys.of("length_mm", jumper.wire().lengthM() * 1000, "contacts_mohm", jumper.contactsOhm() * 1000);
        return Keys.of("jumper", width(jumper.wire().size(), wire));
    }

    /** By its gauge, as people say it, where it is one. */
    private static Keys width(WireSize size, Keys wire) {
        Gauge nearest = Gauge.nearest(size.diameterM());
        boolean isGauge = nearest.number() >= 0 && Math.abs(nearest.size().areaM2() / size.areaM2() - 1) < SAME_SIZE;
        return isGauge ? wire.with("awg", (double) nearest.number()) : wire.with("diameter_mm", size.diameterMm());
    }
}
