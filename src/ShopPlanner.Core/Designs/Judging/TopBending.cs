using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Judging;

/// <summary>
/// Whether a top bends under what stands on it, and breaks under a person where it is low enough to sit or stand on. It spans
/// between its rails; held on all four sides, strips along and across the grain share the load.
/// </summary>
internal static class TopBending
{
    private static readonly SourceNote Crossing = new(
        "Statics: strips that cross in the middle bend alike, so each carries its share (Grashof)",
        Certainty.Derived
    );

    private static readonly SourceNote AcrossGrain = new(
        "Wood Handbook, FPL-GTR-190, Table 5-1: across the grain solid wood has 4 to 9% of its stiffness; half for plywood is "
            + "common practice",
        Certainty.FromMemory
    );

    private static readonly SourceNote OnePerson = new(
        "Common practice: one person of 250 lb on 12 in of the top's width; EN 1725:2023 assumes persons to 110 kg (its scope, "
            + "as quoted)",
        Certainty.CommonPractice
    );

    // Lower than this it is sat and stood on (common practice).
    private static readonly Length Low = Length.FromInches(24);
    private static readonly Length Sits = Length.FromInches(12);

    public static IEnumerable<PieceWarning> Of(Piece piece)
    {
        if (TopSpans.Of(piece) is not { } top || Spanned(top) is not { Span.IsPositive: true } way)
            yield break;
        if (top.Part.Strength() is not { } row)
        {
            yield return ShelfJudging.Unknown(top.Part);
            yield break;
        }

        if (Sags(top, way, row) is { } sags)
            yield return sags;
        if (piece.Outside.Dz <= Low && Breaks(top, way, row) is { } breaks)
            yield return breaks;
    }

    // The way in which it spans, and the other one where it is held there too.
    private static Way? Spanned(TopSpans top) =>
        (top.Along, top.Across) switch
        {
            ({ } along, { } across) => along.IsPositive && across.IsPositive ? new(along, across, true) : null,
            ({ } along, null) => new(along, null, true),
            (null, { } across) => new(across, null, false),
            _ => new(top.Run, null, true),
        };

    private static PieceWarning? Sags(TopSpans top, Way way, Strength row)
    {
        var shelf = Loaded(top, way, row);
        var once = shelf with { Creep = Working.Given("Creep factor", 1, QuantityKind.Bare, 0) };
        var span = Working.Given("Span", way.Span);
        if (!once.Holds(way.Span))
            return new(
                Severity.Fails,
                "Top will sag more than it should under a full load. Use thicker wood, or a rail under the middle.",
                top.Part.Id,
                shelf.Years(span)
            );
        return shelf.Holds(way.Span)
            ? null
            : new(
                Severity.Watch,
                "Top will sag visibly over time if it is loaded like a full bookshelf. A rail under the middle keeps it "
                    + "straight.",
                top.Part.Id,
                shelf.Years(span)
            );
    }

    private static Shelf Loaded(TopSpans top, Way way, Strength row)
    {
        var (width, thickness) = (
            Working.Given("Width of the top", way.IsAlong ? top.Width : top.Run),
            Working.Given("Thickness", top.Thickness)
        );
        var stiffness = StrengthTable.Elasticity(row);
        return new(
            way.IsAlong ? stiffness : Across(stiffness, row),
            width,
            thickness,
            false,
            Stiffer(way, row, 4),
            Sag.Creep(row),
            span => ShelfJudging.Load(span, width),
            span => Weight.Of(Area.Of(width.Value, thickness.Value) * span.Value, Density(row))
        );
    }

    private static Working<double> Density(Strength row) => Weight.Density(row, Weight.Indoors);

    private static Working<double> Across(Working<double> along, Strength row) =>
        Working.Of(
            "Stiffness across the grain",
            along.Value * Share(row).Value,
            QuantityKind.Modulus,
            2,
            "{along} × {share}",
            AcrossGrain,
            ("along", along),
            ("share", Share(row))
        );

    private static Working<double> Share(Strength row) =>
        Working.Looked(
            "Stiffness across the grain, of that along it",
            row switch
            {
                { IsPanel: false } => 0.04,
                _ when row.Id.StartsWith("plywood", StringComparison.Ordinal) => 0.5,
                _ => 1,
            },
            QuantityKind.Bare,
            2,
            AcrossGrain
        );

    // How much stiffer it is for being held the other way too: a load over the whole top goes by the fourth power of the spans,
    // one in the middle by the third.
    private static Working<double> Stiffer(Way way, Strength row, int power)
    {
        if (way.Other is not { } other)
            return Working.Given("Held the other way", 1, QuantityKind.Bare, 0);
        var ratio = (double)way.Span.Ticks / other.Ticks;
        return Working.Of(
            "Stiffness with the other way, times",
            1 + (Share(row).Value * Math.Pow(ratio, power)),
            QuantityKind.Bare,
            2,
            power == 4 ? "1 + {share} × ({span} ÷ {other})⁴" : "1 + {share} × ({span} ÷ {other})³",
            Crossing,
            ("share", Share(row)),
            ("span", Working.Given("Span along the grain", way.Span)),
            ("other", Working.Given("Span across it", other))
        );
    }

    // What spans across the grain alone is judged by its sag: it bends long before it splits.
    private static PieceWarning? Breaks(TopSpans top, Way way, Strength row)
    {
        if (!way.IsAlong || BendingTable.All.FirstOrDefault(one => one.Id == row.Id) is not { } wood)
            return null;
        var stress = Stress(top, way, row);
        if (stress.Value > wood.Rupture / PeopleBeam.Clear)
            return new(
                Severity.Fails,
                "A person can break the top. Use thicker wood, a shorter span or a rail under the middle.",
                top.Part.Id,
                stress
            );
        return stress.Value > wood.Rupture / PeopleBeam.Knotty
            ? new(
                Severity.Watch,
                "For the top, pick straight-grained boards without knots in the middle third: only those carry a person safely.",
                top.Part.Id,
                stress
            )
            : null;
    }

    private static Working<double> Stress(TopSpans top, Way way, Strength row)
    {
        var alone = PeopleBeam.Bends(
            Working.Looked("One person", QuantityKind.Mass.ToMetric(250, LengthUnit.Inch), QuantityKind.Mass, 0, OnePerson),
            Working.Given("People", 1, QuantityKind.Bare, 0),
            Working.Given("Span", way.Span),
            Working.Given("Width that carries", Length.Min(Sits, top.Width)),
            Working.Given("Thickness", top.Thickness)
        );
        var stiffer = Stiffer(way, row, 3);
        return Working.Of(
            "Bending stress in the top",
            alone.Value / stiffer.Value,
            QuantityKind.Pressure,
            0,
            "{alone} ÷ {stiffer}",
            Crossing,
            ("alone", alone),
            ("stiffer", stiffer)
        );
    }

    /// <summary>How a top spans.</summary>
    /// <param name="Span">The longest stretch that nothing carries.</param>
    /// <param name="Other">The stretch the other way, where it is held there too.</param>
    /// <param name="IsAlong">Whether it spans along its grain.</param>
    private sealed record Way(Length Span, Length? Other, bool IsAlong);
}
