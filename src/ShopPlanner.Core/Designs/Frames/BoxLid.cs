using System.Globalization;
using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Frames;

/// <summary>A lid on hinges at the back of a box, held by supports that are chosen by its weight.</summary>
/// <param name="Sizes">Of the box.</param>
/// <param name="Material">Of the lid.</param>
/// <param name="Edging">Solid edging in front and at the ends; null without.</param>
/// <param name="Outside">Of the whole.</param>
/// <param name="Back">What it hangs on.</param>
/// <param name="Builder">Takes parts, hardware and findings.</param>
internal sealed record BoxLid(
    BoxSizes Sizes,
    RoleMaterial Material,
    RoleMaterial? Edging,
    Outside Outside,
    Draft Back,
    Builder Builder
)
{
    private const string Lightest = "plywood";

    // Enough for fingers between a closing lid and the front, and for air (common practice).
    private static readonly Length FingerRoom = Length.FromInches(0.5m);

    private static readonly SourceNote Torque = new("Statics: weight of the lid × half of its depth", Certainty.Derived);

    private Length Edge => Edging?.Thickness ?? Length.Zero;

    /// <summary>Adds it.</summary>
    public void Add(LengthUnit unit)
    {
        var whole = Box.Between(
            Length.Zero,
            Length.Zero,
            Sizes.Whole.EndZ,
            Outside.Width.Value,
            Outside.Depth.Value,
            Outside.Height.Value
        );
        var lid = Builder.Add(
            new("Lid", "Lid", Material, whole.Grown(Axis.X, -Edge, -Edge).With(Axis.Y, Edge, whole.EndY), Axis.X, Axis.Z)
            {
                Length = Less("Length of the lid", Outside.Width, 2),
                Width = Less("Width of the lid", Outside.Depth, 1),
                FacesToFinish = "both faces, all edges",
            }
        );
        if (Edging is { } edging)
            Band(edging, whole, lid);
        Builder.Join(JointKind.Hinged, lid, Back, Axis.Z);
        Hardware(lid, unit);
    }

    private Working<Length> Less(string name, Working<Length> whole, int edges) =>
        Edge == Length.Zero
            ? whole
            : Working.Of(
                name,
                whole.Value - (Edge * edges),
                edges == 1 ? "{whole} − {edging}" : "{whole} − 2 × {edging}",
                Working.Geometry,
                ("whole", whole),
                ("edging", Working.Given("edging", Edge))
            );

    // The back edge stays bare: the hinges lie on it.
    private void Band(RoleMaterial edging, Box whole, Draft lid)
    {
        void Strip(string name, Box box, Axis along, Axis flat)
        {
            var strip = Builder.Add(new(name, "Lid", edging, box, along, flat) { FacesToFinish = "outer face, edges" });
            Builder.Join(JointKind.Glued, strip, lid, flat);
        }

        Strip("Front edging", whole.With(Axis.Y, Length.Zero, Edge), Axis.X, Axis.Y);
        foreach (var x in new[] { Length.Zero, whole.EndX - Edge })
            Strip("End edging", whole.With(Axis.X, x, x + Edge).With(Axis.Y, Edge, whole.EndY), Axis.Y, Axis.X);
    }

    private void Hardware(Draft lid, LengthUnit unit)
    {
        var torque = Moment(unit);
        // In the edge of plywood few screws hold little: a hinge along the whole back has many.
        Builder.Buy($"Continuous hinge, 1 1/2 in wide, cut to {LengthFormat.WithUnit(Sizes.Whole.Dx, unit)}", 1);
        Builder.Buy($"Lid supports that hold at any angle, for {Amount(torque.Value, unit)} in all (pair)", 1);
        Builder.Warn(
            Severity.Safety,
            $"A falling lid breaks fingers and traps heads. Fit supports made for its weight, {Amount(torque.Value, unit)} in "
                + "all, that hold it wherever you let go. Never fit a lock or a latch.",
            lid,
            torque
        );
        Builder.Warn(
            Severity.Safety,
            "Toy chests have safety rules of their own for lids, gaps and air holes (in the US, ASTM F963). Read them before "
                + "a child uses it: this design is not tested.",
            lid
        );
        if (Sizes.FrontLower < FingerRoom)
            Builder.Warn(
                Severity.Watch,
                $"The lid closes on the front with no room for fingers or air. Make the front "
                    + $"{LengthFormat.WithUnit(FingerRoom, unit)} lower than the ends.",
                lid
            );
    }

    // What the supports must hold: kg by meters are shown as the supports are sold, in inch-pounds or newton meters.
    private Working<double> Moment(LengthUnit unit)
    {
        var row = StrengthTable.Find(Material.Species ?? Lightest) ?? StrengthTable.Find(Lightest)!;
        var weight = Weight.Of(
            Area.Of(Outside.Width.Value, Outside.Depth.Value) * Material.Thickness,
            Weight.Density(row, Weight.Indoors)
        );
        var (mass, arm) = (QuantityKind.Mass.FromMetric(weight.Value, unit), (double)Outside.Depth.Value.To(unit) / 2);
        var value = unit == LengthUnit.Inch ? mass * arm : mass * 9.80665 * arm / 1000;
        return Working.Of(
            unit == LengthUnit.Inch ? "Turning force of the lid, inch-pounds" : "Turning force of the lid, newton meters",
            value,
            QuantityKind.Bare,
            unit == LengthUnit.Inch ? 0 : 1,
            "{weight} × {depth} ÷ 2",
            Torque,
            ("weight", weight),
            ("depth", Outside.Depth)
        );
    }

    private static string Amount(double torque, LengthUnit unit) =>
        unit == LengthUnit.Inch
            ? string.Create(CultureInfo.InvariantCulture, $"{Math.Ceiling(torque / 5) * 5:0} in-lb")
            : string.Create(CultureInfo.InvariantCulture, $"{Math.Ceiling(torque * 2) / 2:0.0} N·m");
}
