using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Sections;

/// <summary>Makes the workings of a piece: every figure once, those that went into it by their numbers.</summary>
internal static class WorkingSheets
{
    /// <summary>The workings of its parts' sizes, what is given first, each figure after all that went into it.</summary>
    public static ImmutableArray<PacketWorking> Of(Piece piece)
    {
        var made = new List<PacketWorking>();
        var known = new Dictionary<(string, string, string), int>();
        foreach (var part in piece.Parts)
        foreach (var size in new[] { part.Length, part.Width })
            Number(size, piece.Unit, known, made);
        return [.. made];
    }

    private static int Number(
        Working figure,
        LengthUnit unit,
        Dictionary<(string, string, string), int> known,
        List<PacketWorking> made
    )
    {
        var key = (figure.Name, figure.Template, figure.Figure.Text(unit));
        if (known.TryGetValue(key, out var number))
            return number;
        var from = figure.Inputs.Select(input => Number(input.Working, unit, known, made)).ToImmutableArray();
        known[key] = number = made.Count + 1;
        made.Add(
            new(
                number,
                figure.Name,
                figure.Figure.Text(unit),
                figure.Template.Length > 0 ? $"{figure.Formula} = {figure.Filled(unit)}" : "",
                SourceWords.IsPlain(figure.Source) ? "" : SourceWords.Short(figure.Source),
                from
            )
        );
        return number;
    }
}
