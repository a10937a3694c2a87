using System.Collections.Immutable;
using ShopPlanner.Core.Making.Labels;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Packets.Labels;

/// <summary>What one label says.</summary>
/// <param name="Mark">The part's mark, or an offcut's tag; the largest thing on it.</param>
/// <param name="Name">The part's name, or the offcut's material.</param>
/// <param name="Size">Length, width and thickness, finished.</param>
/// <param name="Of">The project, or the day of an offcut.</param>
public sealed record Label(string Mark, string Name, string Size, string Of)
{
    /// <summary>Where it is stuck, and what its right edge points to; empty where that is not known.</summary>
    public string Lies { get; init; } = "";

    /// <summary>What else is noted; may be empty.</summary>
    public string Note { get; init; } = "";

    /// <summary>What is done at the edges of the part that the label's edges stand for.</summary>
    public EdgeHints Hints { get; init; } = EdgeHints.None;

    /// <summary>The part's piece of the triangle of its assembly; null for none.</summary>
    public TrianglePiece? Triangle { get; init; }

    /// <summary>What its code says to a phone: an address, or words; empty for no code.</summary>
    public string Code { get; init; } = "";

    /// <summary>A size for a label: <c>30″ × 11 ¼″ × ¾″</c>, <c>762 × 285.8 × 18 mm</c>.</summary>
    public static string SizeOf(LengthUnit unit, params ReadOnlySpan<Length> sides)
    {
        var texts = new string[sides.Length];
        for (var i = 0; i < sides.Length; i++)
            texts[i] = LengthFormat.Set(sides[i], unit).Text + (unit == LengthUnit.Inch ? "″" : "");
        return string.Join(" × ", texts) + (unit == LengthUnit.Inch ? "" : " mm");
    }

    /// <summary>The label of a design's part.</summary>
    /// <param name="label">What is known of it.</param>
    /// <param name="unit">Of its size.</param>
    /// <param name="project">What it belongs to.</param>
    public static Label For(PartLabel label, LengthUnit unit, string project)
    {
        ArgumentNullException.ThrowIfNull(label);
        var part = label.Part;
        return new(label.Mark, part.Name, SizeOf(unit, part.Length.Value, part.Width.Value, part.Thickness.Value), project)
        {
            Lies = $"{label.FaceWords} → {label.RightWords}",
            Note = label.Hints.Faces.IsEmpty ? "" : $"in the face: {string.Join(", ", label.Hints.Faces)}",
            Hints = label.Hints,
            Triangle = label.Triangle,
        };
    }
}

/// <summary>How labels are printed.</summary>
/// <param name="Sheet">On which sheet.</param>
/// <param name="First">The number of the first label that is still on the sheet, from 1, row by row.</param>
/// <param name="Right">How far everything is moved to the right; less than nothing for to the left.</param>
/// <param name="Down">How far everything is moved down; less than nothing for up.</param>
public sealed record LabelPrint(LabelSheet Sheet, int First, Length Right, Length Down)
{
    /// <summary>The farthest that labels are moved: half of the gaps and margins that sheets have.</summary>
    public static readonly Length MostNudge = Length.FromMillimetres(5);

    /// <summary>From the top of a sheet, as its figures are.</summary>
    public static LabelPrint On(LabelSheet sheet) => new(sheet, 1, Length.Zero, Length.Zero);

    /// <summary>Reads what was typed.</summary>
    /// <param name="sheet">Key of the sheet.</param>
    /// <param name="first">Number of the first label; empty for 1.</param>
    /// <param name="right">To the right, with a minus for to the left; empty for nothing.</param>
    /// <param name="down">Down, with a minus for up; empty for nothing.</param>
    /// <param name="unit">Of a number without a unit.</param>
    /// <returns>What was read, or a fault for each of them that is wrong: <c>sheet</c>, <c>start</c>, <c>right</c>,
    /// <c>down</c>.</returns>
    public static (LabelPrint? Print, ImmutableArray<Fault> Faults) Read(
        string? sheet,
        string? first,
        string? right,
        string? down,
        LengthUnit unit
    )
    {
        var faults = ImmutableArray.CreateBuilder<Fault>();
        var found = LabelSheets.Find(sheet);
        if (found is null)
            faults.Add(
                Fault.Of("sheet", sheet, $"is no sheet: use one of {string.Join(", ", LabelSheets.All.Select(one => one.Key))}")
            );
        var number = Number(first, found?.Count ?? int.MaxValue, faults);
        var (x, y) = (Nudge("right", right, unit, faults), Nudge("down", down, unit, faults));
        return faults.Count == 0 ? (new(found!, number, x, y), []) : (null, faults.ToImmutable());
    }

    private static int Number(string? text, int most, ImmutableArray<Fault>.Builder faults)
    {
        if (string.IsNullOrWhiteSpace(text))
            return 1;
        if (
            int.TryParse(
                text.Trim(),
                System.Globalization.NumberStyles.None,
                System.Globalization.CultureInfo.InvariantCulture,
                out var number
            )
            && number >= 1
            && number <= most
        )
            return number;
        faults.Add(
            Fault.Of("start", text, FormattableString.Invariant($"is no label of the sheet: write a number from 1 to {most}"))
        );
        return 1;
    }

    private static Length Nudge(string field, string? text, LengthUnit unit, ImmutableArray<Fault>.Builder faults)
    {
        if (string.IsNullOrWhiteSpace(text))
            return Length.Zero;
        var trimmed = text.Trim();
        var isLess = trimmed[0] is '-' or '−' or '–';
        var parsed = LengthText.Parse(isLess || trimmed[0] == '+' ? trimmed[1..] : trimmed, unit);
        if (!parsed.Ok)
            faults.Add(Fault.Of(field, text, "is not a distance: write it like 1 mm, -1/32 in or 0.5 mm"));
        else if (parsed.Value > MostNudge)
            faults.Add(Fault.Of(field, text, "is more than 5 mm (3/16 in): choose another sheet, or print at 100%"));
        else
            return isLess ? -parsed.Value : parsed.Value;
        return Length.Zero;
    }
}
