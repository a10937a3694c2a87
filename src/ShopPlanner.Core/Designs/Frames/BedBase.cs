using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Frames;

/// <summary>What a mattress lies on: slats on ledgers and on a middle beam with legs of its own.</summary>
internal sealed record BedBase(BedSizes Bed, Builder Builder)
{
    private const int BoltsInALeg = 2;

    /// <summary>The middle beam, on edge from foot to head, with its legs bolted to its face.</summary>
    public Draft Beam(Draft foot, Draft head)
    {
        var (material, wide) = (Bed.Beam!, BedSizes.Wide(Bed.Beam!));
        var x = Length.FromTicks((Bed.Width - material.Thickness).Ticks / 2);
        var box = Box.Between(x, foot.Box.EndY, Bed.SlatZ - wide, x + material.Thickness, head.Box.Y, Bed.SlatZ);
        var beam = Builder.Add(
            new("Middle beam", "Frame", material, box, Axis.Y, Axis.X)
            {
                Length = Working.Given("Between foot and head rail", box.Dy),
            }
        );
        foreach (var rail in new[] { foot, head })
            Builder.Join(ButtJoint.Hidden(beam, rail, Axis.Y), beam, rail, Axis.Y);
        for (var i = 0; i < Bed.BeamLegs; i++)
            Leg(beam, wide, i);
        return beam;
    }

    // From the floor to the slats, beside the beam, at equal distances.
    private void Leg(Draft beam, Length wide, int i)
    {
        var middle = beam.Box.Y + Length.FromTicks(beam.Box.Dy.Ticks * (i + 1) / (Bed.BeamLegs + 1));
        var y = middle - Length.FromTicks(wide.Ticks / 2);
        var leg = Builder.Add(
            new(
                "Beam leg",
                "Frame",
                Bed.Beam!,
                Box.Between(beam.Box.EndX, y, Length.Zero, beam.Box.EndX + Bed.Beam!.Thickness, y + wide, Bed.SlatZ),
                Axis.Z,
                Axis.X
            )
            {
                Length = Working.Of(
                    "Length of a leg",
                    Bed.SlatZ,
                    "{rail} + {ledger}",
                    Working.Geometry,
                    ("rail", Bed.RailHeight),
                    ("ledger", Working.Given("ledger", Bed.LedgerHigh))
                ),
            }
        );
        Builder.Join(JointKind.Bolted, leg, beam, Axis.X);
        Builder.Buy("Carriage bolts, 3/8 in × 3 1/2 in, with nuts and washers", BoltsInALeg);
    }

    /// <summary>Slats from side to side, screwed to the ledgers and to the beam.</summary>
    public void Slats(ImmutableArray<Draft> ledgers, Draft? beam)
    {
        var (from, to) = (ledgers[0].Box.X + BedSizes.SlatPlay, ledgers[1].Box.EndX - BedSizes.SlatPlay);
        var (wide, start) = (BedSizes.Wide(Bed.Slat), Bed.Py);
        var free = (Bed.Depth - (Bed.Py * 2) - (wide * Bed.Slats)).Ticks;
        for (var i = 0; i < Bed.Slats; i++)
        {
            var y = start + (wide * i) + Length.FromTicks(free * (i + 1) / (Bed.Slats + 1));
            var slat = Builder.Add(
                new(
                    "Bed slat",
                    "Slats",
                    Bed.Slat,
                    Box.Between(from, y, Bed.SlatZ, to, y + wide, Bed.SlatZ + Bed.Slat.Thickness),
                    Axis.X,
                    Axis.Z
                )
                {
                    Length = Working.Given("Between the side rails, less 1/8 in at each end", to - from),
                    FacesToFinish = "edges rounded",
                }
            );
            foreach (var under in ledgers.Append(beam).OfType<Draft>())
                Builder.Join(ButtJoint.Of(slat, under, Axis.Z), slat, under, Axis.Z);
        }

        if (Bed.Gap.IsPositive)
            ShopAids.Spacer(Bed.Slat, Bed.Gap, Builder);
    }
}
