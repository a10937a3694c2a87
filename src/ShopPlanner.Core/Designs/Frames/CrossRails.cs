using System.Globalization;
using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Frames;

/// <summary>Rails between the long aprons of a table: they carry the middle of a long top and keep the aprons apart.</summary>
/// <param name="Sizes">Of the legs.</param>
/// <param name="Material">Of the aprons.</param>
/// <param name="SetBack">Of the aprons.</param>
/// <param name="Count">How many there are, at equal distances.</param>
internal sealed record CrossRails(LegSizes Sizes, RoleMaterial Material, Length SetBack, int Count)
{
    private Length Inset => SetBack + Material.Thickness;

    private Length Free => Sizes.Width - (Inset * 2) - (Material.Thickness * Count);

    /// <summary>Reads them; null after a fault.</summary>
    public static CrossRails? Read(NodeReader members, LegSizes sizes, RoleMaterial apron, Length setback)
    {
        var rails = new CrossRails(sizes, apron, setback, members.Count("cross"));
        // The outer ones stand clear of the legs, between the long aprons.
        if (!members.Failed && rails.Count > 0 && (!rails.Free.IsPositive || rails.At(0) < sizes.Lx))
            members.Fail(
                "cross",
                rails.Count.ToString(CultureInfo.InvariantCulture),
                "cross rails find no room between the legs: use fewer"
            );
        return members.Failed ? null : rails;
    }

    private Length At(int place) =>
        Inset + (Material.Thickness * place) + Length.FromTicks(Free.Ticks * (place + 1) / (Count + 1));

    /// <summary>Adds them.</summary>
    /// <param name="z">Of their underside.</param>
    /// <param name="tall">How high they are.</param>
    /// <param name="builder">Takes them.</param>
    public void Add(Length z, Length tall, Builder builder)
    {
        for (var i = 0; i < Count; i++)
        {
            var x = At(i);
            Add(Box.Between(x, Inset, z, x + Material.Thickness, Sizes.Depth - Inset, z + tall), builder);
        }
    }

    private void Add(Box box, Builder builder)
    {
        var rail = builder.Add(
            new("Cross rail", "Frame", Material, box, Axis.Y, Axis.X)
            {
                Length = Working.Of(
                    "Length between the aprons",
                    box.Dy,
                    "{depth} − 2 × ({setback} + {apron})",
                    Working.Geometry,
                    ("depth", Sizes.Outside.Depth),
                    ("setback", Working.Given("set back", SetBack)),
                    ("apron", Working.Given("apron", Material.Thickness))
                ),
            }
        );
        foreach (var atEnd in new[] { false, true })
            builder.JoinAt(rail, box, Axis.Y, atEnd, apron => ButtJoint.Hidden(rail, apron, Axis.Y), Length.Zero);
    }
}
