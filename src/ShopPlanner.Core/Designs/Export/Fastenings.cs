using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Export;

/// <summary>What holds joints together and has to be bought.</summary>
/// <param name="Name">As asked for in a store: <c>Wood glue</c>, <c>Wood screws, #8 × 1 1/4″</c>.</param>
/// <param name="Joints">How many joints it is for; how many screws each takes, the builder decides.</param>
public sealed record Fastening(string Name, int Joints);

/// <summary>Lists the screws, dowels and glue that a piece's joints take.</summary>
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
    ];

    /// <summary>Returns them by name, glue first.</summary>
    public static ImmutableArray<Fastening> Of(Piece piece)
    {
        ArgumentNullException.ThrowIfNull(piece);
        var parts = piece
            .Parts.SelectMany(part => part.Copies.Select(copy => (part, copy)))
            .ToDictionary(one => one.copy.Mark, StringComparer.Ordinal);
        var named = piece
            .Joints.Where(joint => parts.ContainsKey(joint.From) && parts.ContainsKey(joint.Into))
            .Select(joint => NameOf(joint, parts[joint.From], parts[joint.Into].copy, piece.Unit))
            .OfType<string>()
            .GroupBy(name => name)
            .OrderBy(same => same.Key, StringComparer.Ordinal)
            .Select(same => new Fastening(same.Key, same.Count()));
        var glued = piece.Joints.Count(joint => Glued.Contains(joint.Kind));
        return glued == 0 ? [.. named] : [new Fastening("Wood glue", glued), .. named];
    }

    private static string? NameOf(Joint joint, (PiecePart Part, PartCopy Copy) from, PartCopy into, LengthUnit unit) =>
        joint.Kind switch
        {
            JointKind.Screwed => Screw(from.Copy.Box.Extent(joint.Along), into.Box.Extent(joint.Along), unit),
            JointKind.PocketScrew => Pocket(from.Part.Thickness.Value, into.Box.Extent(joint.Along), unit),
            JointKind.Dowel => "Dowels",
            _ => null,
        };

    // Through the thinner part into the other, as the packet draws it.
    private static string Screw(Length from, Length into, LengthUnit unit) =>
        Choose(Length.Min(from, into), Length.Max(from, into), ScrewJoint.Face) is { } choice
            ? $"Wood screws, #{choice.Gauge.Gauge} × {Size(choice.Length.Value, unit)}"
            : "Wood screws, short";

    private static string Pocket(Length from, Length into, LengthUnit unit) =>
        Choose(from, into, ScrewJoint.Pocket) is { } choice
            ? $"Pocket screws, {Size(choice.Length.Value, unit)}"
            : "Pocket screws";

    // Screws are sold by inches; beside millimetres, the nearest whole one tells how long that is.
    private static string Size(Length screw, LengthUnit unit)
    {
        var inches = LengthFormat.WithUnit(screw, LengthUnit.Inch);
        return unit == LengthUnit.Inch
            ? inches
            : string.Create(CultureInfo.InvariantCulture, $"{inches} ({Math.Round(screw.ToMillimetres())} mm)");
    }

    private static ScrewChoice? Choose(Length near, Length into, ScrewJoint joint) =>
        ScrewChoice.Of(Working.Given("near", near), Working.Given("into", into), joint).Choice;
}
