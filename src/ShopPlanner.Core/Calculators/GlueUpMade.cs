using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>A glue-up worked out.</summary>
/// <param name="Asked">What it was worked out from.</param>
/// <param name="Strip">Width of each jointed strip.</param>
/// <param name="Clamping">Its clamps.</param>
internal sealed record GlueUpMade(GlueUpAsked Asked, Working<Length> Strip, Clamping Clamping)
{
    /// <summary>Whether there is more than one strip, and so a joint.</summary>
    public bool IsGlued => Asked.Strips.Value > 1;

    /// <summary>Strips, and what is trimmed off the panel.</summary>
    public IEnumerable<Working> Sizes => [Asked.Strips, Strip, Ripped, Glued, Trimmed];

    /// <summary>Area and glue.</summary>
    public IEnumerable<Working> Glue
    {
        get
        {
            var area = GlueUp.GluedArea(Asked.Strips, Asked.Length, Asked.Thickness, Asked.Joint, Asked.Tongue);
            return [area, GlueUp.Glue(area, Asked.Spread)];
        }
    }

    /// <summary>The part for a project.</summary>
    public ProposedPart Proposed =>
        new("Panel strip", Asked.Finished, Strip.Value, Asked.Thickness.Value, Asked.Strips.Value)
        {
            CutLongBy = Asked.Oversize,
            CutWideBy = Asked.Jointing.Value * 2,
        };

    private Working<Length> Ripped =>
        Working.Of(
            "Rip each strip at",
            Strip.Value + (Asked.Jointing.Value * 2),
            "{strip} + 2 × {jointing}",
            GlueUp.Jointing,
            ("strip", Strip),
            ("jointing", Asked.Jointing)
        );

    private Working<Length> Glued => GlueUp.Glued(Strip, Asked.Strips, Asked.Lost);

    private Working<Length> Trimmed =>
        Working.Of(
            "Trimmed off the width",
            Glued.Value - Asked.FinishedWidth,
            "{glued} − {panel}",
            Working.Geometry,
            ("glued", Glued),
            ("panel", Working.Given("Width of the panel", Asked.FinishedWidth))
        );

    public static GlueUpMade Of(GlueUpAsked asked)
    {
        var strip = GlueUp.StripWidth(asked.Width, asked.Strips, asked.Lost, asked.Unit, asked.Board.Value);
        return new(asked, strip, Clamping.Of(asked, strip));
    }
}
