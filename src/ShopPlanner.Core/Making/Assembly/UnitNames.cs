using ShopPlanner.Core.Designs.Model;

namespace ShopPlanner.Core.Making.Assembly;

/// <summary>What units are called.</summary>
internal static class UnitNames
{
    /// <summary>The name of one: <c>End</c>, <c>Door</c>, <c>Top</c>.</summary>
    public static string Of(Solids solids, Unit unit) =>
        unit.Kind switch
        {
            UnitKind.Door => "Door",
            UnitKind.Lid => "Lid",
            UnitKind.Leaf => "Leaf",
            UnitKind.Drawer => "Drawer",
            UnitKind.Wall => "Wall cleat",
            UnitKind.Cross => "Cross of " + Plural(Largest(solids, unit).Name),
            UnitKind.Fitted => Largest(solids, unit).Name + " with " + Plural(Least(solids, unit).Name),
            UnitKind.Frame => Frame(solids, unit),
            UnitKind.Panel => Panel(Largest(solids, unit)),
            UnitKind.Group => Largest(solids, unit).Name + " group",
            _ => Largest(solids, unit).Name,
        };

    /// <summary>Lowercase letters, figures and dashes of a name.</summary>
    public static string Slug(string name)
    {
        var letters = name.ToLowerInvariant().Select(one => char.IsAsciiLetterOrDigit(one) ? one : '-').ToArray();
        return string.Join('-', new string(letters).Split('-', StringSplitOptions.RemoveEmptyEntries));
    }

    /// <summary>More than one, in lowercase: <c>shelves</c>.</summary>
    public static string Plural(string name)
    {
        var word = name.ToLowerInvariant();
        if (word.EndsWith('s'))
            return word;
        if (word.EndsWith("shelf", StringComparison.Ordinal) || word.EndsWith("leaf", StringComparison.Ordinal))
            return word[..^1] + "ves";
        return word.EndsWith('x') || word.EndsWith('h') ? word + "es" : word + "s";
    }

    private static string Panel(Solid largest) => largest.Part.Assembly == "Top" ? "Top" : largest.Name + " panel";

    // A face frame has its name from its parts; posts with their rails are an end, whichever way the piece is longer.
    private static string Frame(Solids solids, Unit unit)
    {
        var assemblies = unit.Copies.Select(copy => solids.All[copy].Part.Assembly).Distinct().ToList();
        return assemblies is ["Face frame"] ? assemblies[0]
            : IsAtEnd(solids.Around(unit.Copies), solids.Piece.Outside) ? "End"
            : "Middle frame";
    }

    // In an outer third of the piece, across its own plane.
    private static bool IsAtEnd(Box frame, Box whole)
    {
        var normal = frame.Dx < frame.Dy ? Axis.X : Axis.Y;
        var (middle, third) = ((frame.Start(normal) + frame.End(normal)).Ticks / 2, whole.Extent(normal).Ticks / 3);
        return middle < whole.Start(normal).Ticks + third || middle > whole.End(normal).Ticks - third;
    }

    private static Solid Largest(Solids solids, Unit unit) =>
        unit.Copies.Select(copy => solids.All[copy]).MaxBy(one => one.Wood)!;

    private static Solid Least(Solids solids, Unit unit) => unit.Copies.Select(copy => solids.All[copy]).MinBy(one => one.Wood)!;
}
