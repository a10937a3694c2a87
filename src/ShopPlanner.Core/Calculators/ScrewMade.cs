using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>Screws worked out.</summary>
/// <param name="Asked">What they were worked out from.</param>
/// <param name="Choice">The screw; only to be asked for where nothing is refused.</param>
/// <param name="Refusal">Why no screw will do; null where one does.</param>
internal sealed record ScrewMade(ScrewAsked Asked, ScrewChoice Choice, ScrewRefusal? Refusal)
{
    private static readonly SourceNote ByThickness = new("Common practice by thickness", Certainty.CommonPractice);
    private static readonly SourceNote EdgeRule = new(
        "Common practice: two screws from 1 1/2 in of width up, then one for each 6 in",
        Certainty.CommonPractice
    );

    /// <summary>The screw, its drills, and how many.</summary>
    public IEnumerable<Working?> Sizes => [Choice.Length, Gauge, .. Drills, Choice.Penetration, Count];

    private Working<double> Gauge => Working.Looked("Gauge", Choice.Gauge.Gauge, QuantityKind.Bare, 0, ByThickness);

    private IEnumerable<Working> Drills =>
        Asked.Joint == ScrewJoint.Pocket ? [PocketStop] : [ClearanceDrill, PilotDrill, PilotStop];

    private Working<Length> PocketStop =>
        Working.Of(
            "Set the jig and stop collar for",
            Asked.Near.Value,
            "the thickness of {near}",
            ScrewChoice.PocketPractice,
            ("near", Asked.Near)
        );

    private Working<Length> ClearanceDrill => Drill("Clearance bit, near piece", Choice.Gauge.Clearance, WoodScrews.DrillSource);

    private Working<Length> PilotDrill =>
        Drill(
            "Pilot bit, far piece",
            Asked.IsHard ? Choice.Gauge.PilotHardwood : Choice.Gauge.PilotSoftwood,
            WoodScrews.PilotSource
        );

    private Working<Length> PilotStop =>
        Working.Of(
            "Stop collar on the pilot bit at",
            Choice.Length.Value,
            "length of {screw}",
            Working.Geometry,
            ("screw", Choice.Length)
        );

    private Working<double> Count
    {
        get
        {
            var width = Asked.Width.Value;
            var count =
                width < Length.FromInches(1.5m) ? 1 : 2 + (int)((width - Length.FromTicks(1)).Ticks / Length.FromInches(6).Ticks);
            return Working.Of("Screws in the joint", count, QuantityKind.Bare, 0, "by {width}", EdgeRule, ("width", Asked.Width));
        }
    }

    public static ScrewMade Of(ScrewAsked asked)
    {
        var (choice, refusal) = ScrewChoice.Of(asked.Near, asked.Into, asked.Joint);
        return new(asked, choice!, refusal);
    }

    /// <summary>Whether fewer diameters of the screw than these are in the far piece.</summary>
    public bool IsShallow(int diameters) => Choice.Penetration.Value < Choice.Gauge.Diameter * diameters;

    private static Working<Length> Drill(string name, Length diameter, SourceNote source) =>
        Working.Looked(name, diameter, new LengthFigure(diameter), source);
}
