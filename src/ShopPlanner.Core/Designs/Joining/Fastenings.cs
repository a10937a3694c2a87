using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Joining;

/// <summary>What holds joints together and has to be bought.</summary>
/// <param name="Name">As asked for in a store: <c>Wood screws, #8 × 1 1/4″</c>.</param>
/// <param name="Quantity">How many; of glue, bottles.</param>
/// <param name="Joints">How many joints it is for.</param>
public sealed record Fastening(string Name, int Quantity, int Joints);

/// <summary>What one joint takes beside glue.</summary>
/// <param name="Name">As asked for in a store.</param>
/// <param name="Count">How many.</param>
internal sealed record JointItem(string Name, int Count)
{
    /// <summary>Where screws stand along the longer side of the face in which the parts meet; empty for all else.</summary>
    public ImmutableArray<Length> Places { get; init; } = [];
}

/// <summary>Lists the screws, dowels, brads, top fasteners and glue that a piece's joints take, by size and count.</summary>
public static class Fastenings
{
    // Common practice: these are glued. A panel in a groove is left free to move; screws hold without glue.
    private static readonly JointKind[] Glued =
    [
        JointKind.Glued,
        JointKind.Dado,
        JointKind.Rabbet,
        JointKind.MortiseAndTenon,
        JointKind.Dovetail,
        JointKind.Dowel,
        JointKind.HalfLap,
        JointKind.Bridle,
        JointKind.Miter,
    ];

    // Common practice: brads 4 in apart hold what is glued in a rabbet until the glue is hard.
    private static readonly Length BradsApart = Length.FromInches(4);

    // Common practice: through a glass stop, short of the face of the frame.
    private static readonly Length StopBrad = Length.FromInches(0.5m);

    // One for each strip of the top (common practice).
    private const string BreadboardPins = "Dowel pins for breadboard ends, 3/8 in × 1 in";

    /// <summary>Returns them by name, glue first.</summary>
    public static ImmutableArray<Fastening> Of(Piece piece)
    {
        ArgumentNullException.ThrowIfNull(piece);
        var fits = JointFit.Of(piece).Where(fit => fit.Meeting is not null).ToList();
        var glued = fits.Where(fit => Glued.Contains(fit.Joint.Kind)).ToList();
        var named = fits.Select(fit => Of(fit, piece.Unit))
            .OfType<JointItem>()
            .GroupBy(one => one.Name)
            .OrderBy(same => same.Key, StringComparer.Ordinal)
            .Select(same => new Fastening(same.Key, same.Sum(one => one.Count), same.Count()));
        return glued.Count == 0 ? [.. named] : [GlueBottle.For(glued), .. named];
    }

    /// <summary>Whether a joint of this kind is glued.</summary>
    internal static bool IsGlued(JointKind kind) => Glued.Contains(kind);

    /// <summary>What one joint takes beside glue, by the name under which <see cref="Of(Piece)"/> lists it; null for
    /// nothing.</summary>
    internal static JointItem? Of(JointFit fit, LengthUnit unit) =>
        fit.Joint.Kind switch
        {
            JointKind.Screwed => Screws(fit, "Wood screws", unit),
            JointKind.PocketScrew => Screws(fit, "Pocket screws", unit),
            JointKind.Dowel => fit.Dowels() is { } dowels ? new(Name(dowels, fit, unit), dowels.Places.Value.Length) : null,
            JointKind.Rabbet => new($"Brads, 18 gauge × {Size(Length.FromInches(1), unit)}", Apart(fit.Long, BradsApart)),
            JointKind.Pinned when fit.Long >= BradsApart => new(
                $"Brads, 18 gauge × {Size(StopBrad, unit)}",
                Apart(fit.Long, BradsApart)
            ),
            JointKind.Breadboard => new(BreadboardPins, 1),
            JointKind.Slotted => new(
                "Top fasteners (clips, buttons or figure-eights) with screws",
                TopFastening.Places("Fasteners", Working.Given("rail", fit.Long)).Value.Length
            ),
            _ => null,
        };

    /// <summary>Returns the centers of a joint's screws, from one end of the face in which its parts meet.</summary>
    internal static ImmutableArray<Length> Places(JointFit fit, ScrewChoice screw) =>
        new ScrewPlaces(screw.Gauge, PilotWood.Softwood, ScrewJoint.Edge).Along(Working.Given("joint", fit.Long)).Value;

    private static JointItem? Screws(JointFit fit, string what, LengthUnit unit)
    {
        if (fit.Screw().Choice is not { } choice)
            return null;
        var places = Places(fit, choice);
        var gauge = fit.Joint.Kind == JointKind.Screwed ? $"#{choice.Gauge.Gauge} × " : "";
        return new($"{what}, {gauge}{Size(choice.Length.Value, unit)}", places.Length) { Places = places };
    }

    // Where a hole may not be as deep as usual, the dowel is cut shorter: 1/8 in of wood stays beyond it.
    private static string Name(Dowels dowels, JointFit fit, LengthUnit unit)
    {
        var length = dowels.DowelLength.Value - (dowels.HoleDepth.Value - fit.DowelHole(dowels));
        return $"Dowels, {Size(dowels.Diameter.Value, unit)} × {Size(length, unit)}";
    }

    private static int Apart(Length run, Length apart) => Math.Max(2, 1 + (int)((run.Ticks + apart.Ticks - 1) / apart.Ticks));

    // They are sold by inches; beside millimetres, the nearest whole one tells how long that is.
    private static string Size(Length size, LengthUnit unit)
    {
        var inches = LengthFormat.WithUnit(size, LengthUnit.Inch);
        return unit == LengthUnit.Inch
            ? inches
            : string.Create(CultureInfo.InvariantCulture, $"{inches} ({Math.Round(size.ToMillimetres())} mm)");
    }
}
