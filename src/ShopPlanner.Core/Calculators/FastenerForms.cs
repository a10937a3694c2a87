using System.Collections.Immutable;
using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>What holds two pieces together: screws, dowels.</summary>
internal static class FastenerForms
{
    public static readonly ImmutableArray<WorkingForm> All = [ScrewsForm(), DowelsForm()];

    private static readonly SourceNote EdgeRule = new(
        "Common practice: two screws from 1 1/2 in of width on, then one for each 6 in",
        Certainty.CommonPractice
    );

    private static WorkingForm ScrewsForm() =>
        new(
            "screws",
            "Screws",
            "Which screw joins two pieces without breaking through, and its drills.",
            [
                new("thickness", "Thickness of the near piece", KeyKind.Length) { Most = "6 in" },
                new("into", "Wood of the far piece in the screw's direction", KeyKind.Length) { Most = "24 in" },
                new("joint", "Joint", KeyKind.Choice)
                {
                    Default = "face",
                    Choices = [new("pocket", "from a pocket"), new("face", "face to face"), new("edge", "into an edge or end")],
                },
                new("wood", "Far piece", KeyKind.Choice)
                {
                    Default = "softwood",
                    Choices = [new("softwood", "softwood, plywood, MDF"), new("hardwood", "hardwood")],
                },
                new("width", "Width of the joint", KeyKind.Length) { Default = "2 1/2 in", Most = "8 ft" },
            ],
            reader =>
            {
                var (near, into) = (
                    Working.Given("Near piece", reader.Length("thickness")),
                    Working.Given("Far piece", reader.Length("into"))
                );
                var joint = reader.Choice("joint") switch
                {
                    "pocket" => ScrewJoint.Pocket,
                    "edge" => ScrewJoint.Edge,
                    _ => ScrewJoint.Face,
                };
                var (hard, width) = (
                    reader.Choice("wood") == "hardwood",
                    Working.Given("Width of the joint", reader.Length("width"))
                );
                return () => Screws(near, into, joint, hard, width);
            }
        );

    private static FormOutcome Screws(
        Working<Length> near,
        Working<Length> into,
        ScrewJoint joint,
        bool hard,
        Working<Length> width
    )
    {
        var (choice, refused) = ScrewChoice.Of(near, into, joint);
        if (refused is not null)
            return refused.OfNearPiece ? Refused("thickness", near, refused) : Refused("into", into, refused);
        var count =
            width.Value < Length.FromInches(1.5m)
                ? 1
                : 2 + (int)((width.Value - Length.FromTicks(1)).Ticks / Length.FromInches(6).Ticks);
        var holes = Working.Of("Screws in the joint", count, QuantityKind.Bare, 0, "by {width}", EdgeRule, ("width", width));
        return new Answer([choice!.Length, .. Drills(choice, near, joint, hard), choice.Penetration, holes])
        {
            Verdicts = [.. Verdicts(choice, into.Value, joint, hard)],
        };
    }

    private static Fault Refused(string key, Working<Length> piece, ScrewRefusal refused) =>
        Fault.Of(key, piece.Figure.Text(LengthUnit.Inch), refused.Reason);

    private static IEnumerable<Working> Drills(ScrewChoice choice, Working<Length> near, ScrewJoint joint, bool hard)
    {
        var (gauge, pilot) = (choice.Gauge, hard ? choice.Gauge.PilotHardwood : choice.Gauge.PilotSoftwood);
        yield return Working.Looked(
            "Gauge",
            gauge.Gauge,
            QuantityKind.Bare,
            0,
            new("Common practice by thickness", Certainty.CommonPractice)
        );
        if (joint == ScrewJoint.Pocket)
        {
            yield return Working.Of(
                "Stop collar: the jig's mark for",
                near.Value,
                "the thickness of {near}",
                ScrewChoice.PocketPractice,
                ("near", near)
            );
            yield break;
        }

        yield return Working.Looked(
            "Clearance drill, near piece",
            gauge.Clearance,
            new LengthFigure(gauge.Clearance),
            WoodScrews.DrillSource
        );
        yield return Working.Looked("Pilot drill, far piece", pilot, new LengthFigure(pilot), WoodScrews.PilotSource);
        yield return Working.Of(
            "Stop collar on the pilot drill at",
            choice.Length.Value,
            "length of {screw}",
            Working.Geometry,
            ("screw", choice.Length)
        );
    }

    private static IEnumerable<Verdict> Verdicts(ScrewChoice choice, Length into, ScrewJoint joint, bool hard)
    {
        if (joint == ScrewJoint.Edge)
            yield return new(
                Severity.Watch,
                "End grain holds a screw badly and plywood edges split: drill the pilot, and add glue, a dowel or a cleat where it carries."
            );
        if (joint == ScrewJoint.Pocket)
            yield return new(Severity.Fine, hard ? "Fine thread for hardwood." : "Coarse thread for softwood, plywood and MDF.");
        if (into - choice.Penetration.Value < Length.FromInches(0.125m))
            yield return new(
                Severity.Watch,
                "Less than 1/8 in of the far piece is left beyond the point: try the joint on scrap of the same thickness first, by the jig's own mark."
            );
        if (choice.Penetration.Value < choice.Gauge.Diameter * 6)
            yield return new(
                Severity.Watch,
                "Fewer than six diameters are in the far piece, less than the design specification counts (from memory): add glue, and carry no load by it."
            );
        else if (choice.Penetration.Value < choice.Gauge.Diameter * 10)
            yield return new(
                Severity.Watch,
                "Fewer than ten diameters are in the far piece: sideways it holds less than its full value (from memory of the design specification)."
            );
    }

    private static WorkingForm DowelsForm() =>
        new(
            "dowels",
            "Dowels",
            "Dowels for a joint: which, how deep, where.",
            [
                new("thickness", "Thickness of the thinner piece", KeyKind.Length) { Least = "3/8 in", Most = "3 in" },
                new("width", "Length of the joint", KeyKind.Length) { Most = "10 ft" },
            ],
            reader =>
            {
                var (thickness, width) = (
                    Working.Given("Thickness", reader.Length("thickness")),
                    Working.Given("Length of the joint", reader.Length("width"))
                );
                return () =>
                    Dowels.Of(thickness, width) is not { } dowels
                        ? Fault.Of(
                            "thickness",
                            thickness.Figure.Text(LengthUnit.Inch),
                            "finds no rod from a third to a half of it"
                        )
                        : new Answer([
                            dowels.Diameter,
                            dowels.DowelLength,
                            dowels.HoleDepth,
                            Working.Of(
                                "Dowels",
                                dowels.Places.Value.Length,
                                QuantityKind.Bare,
                                0,
                                "as many as {places}",
                                Working.Geometry,
                                ("places", dowels.Places)
                            ),
                            dowels.Places,
                        ])
                        {
                            Verdicts =
                            [
                                new(Severity.Fine, "Groove the dowels or buy fluted ones: trapped glue splits the wood."),
                            ],
                        };
            }
        );
}
