using System.Collections.Immutable;
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

    // Makers of MDF: the pilot goes deeper than the screw.
    private static readonly Length MdfDeeper = Length.FromMillimetres(1);

    /// <summary>The screw, its drills, how many and where.</summary>
    public IEnumerable<Working?> Sizes => [Choice.Length, Gauge, .. Drills, Choice.Penetration, Count, Positions, .. Distances];

    /// <summary>Whether the joint is too narrow for the distances that a screw wants.</summary>
    public bool IsCramped => Places.IsCramped(Asked.Width.Value);

    private ScrewPlaces Places => new(Choice.Gauge, Asked.Wood, Asked.Joint);

    private Working<ImmutableArray<Length>> Positions => Places.Along(Asked.Width);

    private IEnumerable<Working> Distances =>
        Asked.Joint == ScrewJoint.Pocket ? [] : [Places.FromEdge(Asked.Unit), Places.FromEnd(Asked.Unit)];

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
        Drill("Pilot bit, far piece", Choice.Gauge.Pilot(Asked.Wood), WoodScrews.PilotSourceFor(Asked.Wood));

    private Working<Length> PilotStop =>
        Working.Of(
            "Stop collar on the pilot bit at",
            Choice.Length.Value + (Asked.Wood == PilotWood.Mdf ? MdfDeeper : Length.Zero),
            Asked.Wood == PilotWood.Mdf ? "{screw} + 1 mm" : "{screw}",
            Asked.Wood == PilotWood.Mdf ? WoodScrews.MdfPilotSource : Working.Geometry,
            ("screw", Choice.Length)
        );

    private Working<double> Count =>
        Working.Of(
            "Screws in the joint",
            Positions.Value.Length,
            QuantityKind.Bare,
            0,
            "number of {positions}",
            Positions.Source,
            ("positions", Positions)
        );

    public static ScrewMade Of(ScrewAsked asked)
    {
        var (choice, refusal) = ScrewChoice.Of(asked.Near, asked.Into, asked.Joint, asked.Unit);
        return new(asked, choice!, refusal);
    }

    /// <summary>Whether fewer diameters of the screw than these are in the far piece.</summary>
    public bool IsShallow(int diameters) =>
        Asked.Joint != ScrewJoint.Pocket && Choice.Penetration.Value < Choice.Gauge.Diameter * diameters;

    private static Working<Length> Drill(string name, Length diameter, SourceNote source) =>
        Working.Looked(name, diameter, new BitFigure(diameter), source);
}
