/**
 * Time: states of cells, coils and wires, presses and rests, charge and heat, events and traces.
 * The one place that carries state from one moment to the next.
 *
 * <p>Entry points: {@link org.sagwise.run.Runner} runs a {@link org.sagwise.run.RunPlan} to its end
 * and leaves a {@link org.sagwise.run.Trace}; {@link org.sagwise.run.Stepper} goes on from a {@link
 * org.sagwise.run.RunState} for as long as somebody wants, for a clock that is pressed by hand;
 * {@link org.sagwise.run.Forecast} tells what goes wrong, and how soon, if nobody does anything;
 * {@link org.sagwise.run.LifeTogether} runs a pack down again and again. States are values: keep
 * them, go back to them, go on from them twice. Every reading of a state is had from {@link
 * org.sagwise.reading.Bench#at} with {@link org.sagwise.run.RunState#states} and {@link
 * org.sagwise.run.RunState#press}.
 *
 * <p>How a step is made is told at {@code Integrator}; how events are found, at {@code Segment}.
 *
 * <p>May use {@code reading}.
 */
package org.sagwise.run;
