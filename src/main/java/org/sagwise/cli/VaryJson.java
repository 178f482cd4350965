package org.sagwise.cli;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.sagwise.plan.vary.BuildSpread;
import org.sagwise.plan.vary.BuildSpread.Percentiles;
import org.sagwise.plan.vary.VariedCurve;
import org.sagwise.plan.vary.VariedField;
import org.sagwise.scenario.Finding;

/** What varying a bench shows, as JSON: values as the file writes them, readings in their unit. */
final class VaryJson {

    private VaryJson() {}

    static void write(CallContext call, VariedCurve curve, double[] places, List<Percentiles> along) {
        JsonWriter.write(
                call.out(),
                call.signs(),
                json -> json.object(() -> {
                    json.text("value", curve.variable().toString());
                    json.text("reading", curve.reading().toString());
                    json.number("now", curve.now().orElse(Double.NaN));
                    json.number("limit", curve.limit().orElse(Double.NaN));
                    json.objects("points", curve.points(), point -> {
                        json.number("at", point.at());
                        json.number("reading", point.reading());
                        json.texts(
                                "refused",
                                point.refused().stream().map(VaryJson::problem).toList());
                        json.texts(
                                "notices",
                                point.notices().stream()
                                        .map(notice -> Words.of(notice.kind()))
                                        .toList());
                    });
                    json.objects("cautions", curve.cautions(), span -> {
                        json.text("id", span.caution().id());
                        json.text("signal", span.caution().signal().name());
                        json.texts("parts", span.caution().parts());
                        json.number("from", span.from());
                        json.number("to", span.to());
                        json.flag("begins_within", span.beginsWithin());
                        json.flag("ends_within", span.endsWithin());
                    });
                    json.objects(
                            "bands", IntStream.range(0, along.size()).boxed().toList(), i -> {
                                json.number("at", places[i]);
                                percentiles(json, along.get(i));
                            });
                }));
    }

    private static String problem(Finding finding) {
        return finding.sentence(Locale.ROOT);
    }

    private static void percentiles(JsonWriter json, Percentiles range) {
        json.number("p5", range.low());
        json.number("p50", range.middle());
        json.number("p95", range.high());
    }

    static void write(CallContext call, VariedField field) {
        JsonWriter.write(
                call.out(),
                call.signs(),
                json -> json.object(() -> {
                    json.text("value", field.x().toString());
                    json.text("and", field.y().toString());
                    json.text("reading", field.reading().toString());
                    json.objects(
                            "rows",
                            IntStream.range(0, field.ys().length).boxed().toList(),
                            row -> {
                                json.number("and", field.ys()[row]);
                                json.objects(
                                        "points",
                                        IntStream.range(0, field.xs().length)
                                                .boxed()
                                                .toList(),
                                        column -> {
                                            json.number("at", field.xs()[column]);
                                            json.number("reading", field.values()[row][column]);
                                        });
                            });
                }));
    }

    static void write(CallContext call, BuildSpread spread) {
        JsonWriter.write(
                call.out(),
                call.signs(),
                json -> json.object(() -> {
                    json.text("reading", spread.reading().toString());
                    json.number("printed", spread.printed());
                    json.whole("builds", spread.builds());
                    percentiles(json, spread.range());
                    json.number("mean", spread.mean());
                    json.number("deviation", spread.deviation());
                    json.number("over_limit_share", spread.overLimit().orElse(Double.NaN));
                    json.objects("ranking", spread.ranking(), rank -> {
                        json.text("value", rank.variable().toString());
                        json.number("printed", rank.printed());
                        json.text("shape", Words.of(rank.tolerance().shape()));
                        json.number("within", rank.tolerance().within());
                        json.text("basis", rank.tolerance().basis().word());
                        json.number("first", rank.first());
                        json.number("total", rank.total());
                    });
                    json.whole("judged", spread.judged());
                    json.objects("cautions", spread.cautions(), odds -> {
                        json.text("id", odds.caution().id());
                        json.text("signal", odds.caution().signal().name());
                        json.number("share", odds.share());
                    });
                }));
    }
}
