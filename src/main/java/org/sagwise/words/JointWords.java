package org.sagwise.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Joint;
import org.sagwise.words.JointBuilder.Role;
import org.sagwise.words.JointBuilder.Slot;

/** Writes the joints that a bench has into its recipe: what most have for all, the others by their place. */
final class JointWords {

    private final Recipe recipe;
    private final List<Slot> slots;
    private final List<Joint> joints;

    /**
     * @param slots what decides each joint
     * @param joints the joints, in the same order
     */
    JointWords(Recipe recipe, List<Slot> slots, List<Joint> joints) {
        this.recipe = recipe;
        this.slots = slots;
        this.joints = joints;
    }

    void read() {
        double contact = contact();
        recipe.touch(contact);
        List<Keys> jumpers = new ArrayList<>();
        for (int i = 0; i < slots.size(); i++) {
            if (joints.get(i) instanceof Joint.Jumper jumper && slots.get(i).role() == Role.WIRE) {
                jumpers.add(said(jumper, slots.get(i), contact));
            }
        }
        Optional<Keys> most = commonest(jumpers);
        most.ifPresent(recipe::sayOfWires);
        for (int i = 0; i < slots.size(); i++) {
            read(slots.get(i), joints.get(i), contact, most);
        }
    }

    private void read(Slot slot, Joint joint, double contact, Optional<Keys> most) {
        Optional<Double> mohm = mohm(joint);
        if (joint instanceof Joint.Jumper jumper && slot.role() == Role.WIRE) {
            Keys said = said(jumper, slot, contact);
            if (!Optional.of(said).equals(most)) {
                recipe.wires().put(slot.place(), said);
            }
        } else if (mohm.isPresent()) {
            switch (slot.role()) {
                case CELL -> other(recipe.cellJoints(), slot.index(), mohm.get(), contact);
                case COIL -> other(recipe.coilJoints(), slot.index(), mohm.get(), Double.NaN);
                case WIRE -> recipe.joints().put(slot.place(), mohm.get());
                case CHARGER -> {
                    if (mohm.get() != contact) {
                        recipe.joints().put(slot.place(), mohm.get());
                    }
                }
                case CONTACT, POST, CLIP -> {}
            }
        }
    }

    private static void other(Map<Integer, Double> own, int index, double mohm, double usual) {
        if (mohm != usual || own.containsKey(index)) {
            own.put(index, mohm);
        }
    }

    /** What most touches of the pack have that cannot be said one by one; else its joints and its wires' ends, mΩ. */
    private double contact() {
        List<Double> contacts = new ArrayList<>();
        List<Double> joints = new ArrayList<>();
        List<Double> ends = new ArrayList<>();
        for (int i = 0; i < slots.size(); i++) {
            Role role = slots.get(i).role();
            Optional<Double> mohm = mohm(this.joints.get(i));
            if (mohm.isPresent() && role == Role.CONTACT) {
                contacts.add(mohm.get());
            } else if (mohm.isPresent() && (role == Role.CELL || role == Role.CHARGER)) {
                joints.add(mohm.get());
            } else if (this.joints.get(i) instanceof Joint.Jumper jumper && isAtCell(slots.get(i))) {
                ends.add(jumper.contactsMohm());
            }
        }
        ends.addAll(joints);
        return commonest(contacts).or(() -> commonest(ends)).orElse(0.0);
    }

    private static boolean isAtCell(Slot slot) {
        return slot.place().equals(WirePlace.PLUS) || slot.place().equals(WirePlace.MINUS);
    }

    /** A wire as a line says it; its ends where they are not as all contacts are. */
    private static Keys said(Joint.Jumper jumper, Slot slot, double contact) {
        Keys keys = width(jumper.width()).with("length_mm", jumper.lengthMm());
        double expected = isAtCell(slot) ? contact : 0;
        return jumper.contactsMohm() == expected ? keys : keys.with("contacts_mohm", jumper.contactsMohm());
    }

    private static Keys width(Joint.Width width) {
        if (width instanceof Joint.Awg awg) {
            return Keys.of("awg", awg.number());
        }
        return width instanceof Joint.DiameterMm diameter
                ? Keys.of("diameter_mm", diameter.mm())
                : Keys.of("area_mm2", ((Joint.AreaMm2) width).mm2());
    }

    /** Resistance of what is no wire, mΩ. */
    private static Optional<Double> mohm(Joint joint) {
        if (joint instanceof Joint.Touch touch) {
            return Optional.of(touch.mohm());
        }
        return joint instanceof Joint.Ideal ? Optional.of(0.0) : Optional.empty();
    }

    /** Whether two joints are the same: a touch without resistance is an ideal one. */
    static boolean same(Joint one, Joint other) {
        Optional<Double> mohm = mohm(one);
        return mohm.isPresent() ? mohm.equals(mohm(other)) : one.equals(other);
    }

    /** What stands there most often; of as many the first. */
    static <T> Optional<T> commonest(List<T> all) {
        return all.stream()
                .collect(Collectors.groupingBy(Function.identity(), LinkedHashMap::new, Collectors.counting()))
                .entrySet()
                .stream()
                .max(Comparator.comparingLong(Map.Entry::getValue))
                .map(Map.Entry::getKey);
    }
}
