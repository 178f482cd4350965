package org.sagwise;

import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;
import java.util.Set;

/** Finds code that helps itself to a clock or to chance instead of being handed one. */
final class ChanceAndClock extends ArchCondition<JavaClass> {

    private static final Set<String> CLASSES =
            Set.of("java.util.Random", "java.util.concurrent.ThreadLocalRandom", "java.security.SecureRandom");

    private static final Set<String> CALLS = Set.of(
            "java.lang.Math.random",
            "java.lang.StrictMath.random",
            "java.lang.System.currentTimeMillis",
            "java.lang.System.nanoTime",
            "java.util.UUID.randomUUID",
            "java.util.Date.<init>",
            "java.util.SplittableRandom.<init>");

    private ChanceAndClock() {
        super("reach for a clock or for chance");
    }

    static ArchCondition<JavaClass> reachForOne() {
        return new ChanceAndClock();
    }

    @Override
    public void check(JavaClass inspected, ConditionEvents events) {
        for (JavaAccess<?> access : inspected.getAccessesFromSelf()) {
            boolean found = reaches(access.getTarget());
            events.add(new SimpleConditionEvent(access, found, access.getDescription()));
        }
    }

    private static boolean reaches(AccessTarget target) {
        String owner = target.getOwner().getFullName();
        return CLASSES.contains(owner)
                || CALLS.contains(owner + "." + target.getName())
                        && !List.of("long").equals(parameters(target))
                || owner.startsWith("java.time.") && target.getName().equals("now")
                || owner.equals("java.time.Clock") && target.getName().startsWith("system");
    }

    /** A date or a generator made from a given number is handed in, not taken. */
    private static List<String> parameters(AccessTarget target) {
        return target instanceof AccessTarget.CodeUnitAccessTarget call
                ? call.getRawParameterTypes().stream()
                        .map(JavaClass::getFullName)
                        .toList()
                : List.of();
    }
}
