using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Frames;

/// <summary>The strips that a solid top is glued up from: all ripped and jointed at one setting, the two outer ones trimmed after
/// the glue-up so that the top comes to its width.</summary>
/// <param name="Material">The boards.</param>
/// <param name="Whole">What they fill, tongues for breadboard ends included.</param>
/// <param name="Long">Length of each, tongues included.</param>
/// <param name="Wide">Width of the top.</param>
/// <param name="Count">Strips.</param>
/// <param name="Usable">What jointing leaves of a board.</param>
/// <param name="Jointing">Ripped wider by this, for the jointer.</param>
/// <param name="Longer">Cut longer by this, to be trimmed later.</param>
internal sealed record TopStrips(
    RoleMaterial Material,
    Box Whole,
    Working<Length> Long,
    Working<Length> Wide,
    int Count,
    Length Usable,
    Length Jointing,
    Length Longer
)
{
    private static readonly SourceNote Practice = new(
        "Common practice: joint an edge before gluing it; glue up a little over-wide, and trim both edges",
        Certainty.CommonPractice
    );

    /// <summary>The strips, from the front.</summary>
    public IEnumerable<Draft> All(LengthUnit unit)
    {
        var each = Each(unit);
        var surplus = (each * Count) - Whole.Dy;
        var (front, back) = (Length.FromTicks(surplus.Ticks / 2), surplus - Length.FromTicks(surplus.Ticks / 2));
        var y = Whole.Y;
        for (var i = 0; i < Count; i++)
        {
            var trim = (i == 0 ? front : Length.Zero) + (i == Count - 1 ? back : Length.Zero);
            yield return Strip(Whole.With(Axis.Y, y, y + each - trim), each);
            y += each - trim;
        }
    }

    // To the next step of a rule, unless the board ends there.
    private Length Each(LengthUnit unit)
    {
        var step = Shares.Step(unit);
        var exact = (Whole.Dy.Ticks + Count - 1) / Count;
        return Length.Min(Length.FromTicks((exact + step - 1) / step * step), Length.Max(Usable, Length.FromTicks(exact)));
    }

    private Draft Strip(Box box, Length each) =>
        new("Top strip", "Top", Material, box, Axis.X, Axis.Z)
        {
            Length = Long,
            CutLongBy = Longer,
            CutWideBy = each - box.Dy + Jointing,
            FacesToFinish = "all faces",
            Width = Working.Of(
                "Width of a strip",
                box.Dy,
                "{depth} ÷ {strips}, to the step above; the outer two trimmed",
                Practice,
                ("depth", Wide),
                ("strips", Working.Given("Strips", Count, QuantityKind.Bare, 0))
            ),
        };
}
