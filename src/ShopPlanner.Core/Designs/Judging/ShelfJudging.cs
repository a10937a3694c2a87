using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Judging;

/// <summary>How shelves, decks and slats bend, each taken to rest at its ends and on what touches it from below.</summary>
internal static class ShelfJudging
{
    /// <summary>The load that is reckoned with.</summary>
    private static readonly SourceNote Books = new(
        "Common practice: 25 lb per square foot, a row of books on a shelf 12 in deep",
        Certainty.CommonPractice
    );

    // Half of what a foot of span may show (common practice, as for the sag of a shelf by itself).
    private static readonly Length SeenPerFoot = Length.FromInches(0.02m);

    private static readonly string[] Assemblies = ["Shelves", "Decks", "Slats"];

    public static IEnumerable<PieceWarning> Of(Piece piece)
    {
        var copies = piece.Parts.SelectMany(part => part.Copies).ToImmutableArray();
        var shelves = piece.Parts.Where(part => !part.Copies.IsEmpty && IsShelf(part)).ToList();
        var unknown = shelves.Where(part => part.Strength() is null).ToList();
        return shelves
            .Except(unknown)
            .Select(part => Judge(part, part.Strength()!, copies, EdgeStrip.Of(piece, part)))
            .OfType<PieceWarning>()
            .Concat(unknown.Select(Unknown));
    }

    private static bool IsShelf(PiecePart part) =>
        part.Copies[0].Flat == Axis.Z
        && (Assemblies.Contains(part.Assembly) || part.Name.Contains("shelf", StringComparison.OrdinalIgnoreCase));

    /// <summary>Says that a part's sag cannot be worked out.</summary>
    public static PieceWarning Unknown(PiecePart part) =>
        new(
            Severity.Watch,
            $"Sag of the {part.Name.ToLowerInvariant()} isn't checked: the stiffness of {part.Material.Name} isn't known.",
            part.Id,
            null
        );

    private static PieceWarning? Judge(PiecePart part, Strength row, ImmutableArray<PartCopy> copies, EdgeStrip? strip)
    {
        var span = Working.Given("Span", part.Copies.Max(copy => Support.Span(copy, copies)));
        if (!span.Value.IsPositive)
            return null;
        var shelf = Loaded(part, row, strip);
        var years = shelf.Years(span);
        var foot = (decimal)span.Value.Ticks / Length.TicksPerFoot;
        if (!shelf.Holds(span.Value))
            return new(
                Severity.Fails,
                $"{part.Name} will sag more than it should over the years. Use a shorter span, a thicker shelf, an edge strip "
                    + $"or a center support.",
                part.Id,
                years
            );
        return years.Value.Ticks > SeenPerFoot.Ticks * foot
            ? new(
                Severity.Watch,
                $"{part.Name} will sag visibly over time under a full row of books. An edge strip or a shorter "
                    + $"span keeps it straight.",
                part.Id,
                years
            )
            : null;
    }

    // What is loaded is the shelf with the strip in front of it.
    private static Shelf Loaded(PiecePart part, Strength row, EdgeStrip? strip) =>
        new(
            strip?.Elasticity(row) ?? StrengthTable.Elasticity(row),
            part.Width,
            part.Thickness,
            false,
            strip is { } stiff
                ? Sag.EdgeStrip(part.Width, part.Thickness, stiff.High, stiff.Thick)
                : Working.Given("Edge strip", 1, QuantityKind.Bare, 0),
            Sag.Creep(row),
            span => Load(span, strip?.Loaded(part.Width) ?? part.Width),
            span => Weigh(span, part, row, strip)
        );

    // A strip counts with the density of the shelf.
    private static Working<double> Weigh(Working<Length> span, PiecePart part, Strength row, EdgeStrip? strip)
    {
        var density = Weight.Density(row, Weight.Indoors);
        var section = Area.Of(part.Width.Value, part.Thickness.Value);
        if (strip is not null)
            section += Area.Of(strip.High.Value, strip.Thick.Value);
        return Weight.Of(section * span.Value, density);
    }

    /// <summary>What stands on a shelf or a top, kg.</summary>
    public static Working<double> Load(Working<Length> span, Working<Length> depth)
    {
        var each = Working.Looked("Load", QuantityKind.AreaLoad.ToMetric(25, LengthUnit.Inch), QuantityKind.AreaLoad, 0, Books);
        var area = (double)Area.Of(span.Value, depth.Value).ToSquareMetres();
        return Working.Of(
            "Load on the shelf",
            each.Value * area,
            QuantityKind.Mass,
            0,
            "{each} × {span} × {depth}",
            Working.Geometry,
            ("each", each),
            ("span", span),
            ("depth", depth)
        );
    }
}
