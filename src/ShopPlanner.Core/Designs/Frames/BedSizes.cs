using System.Globalization;
using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Frames;

/// <summary>The sizes that the parts of a bed share.</summary>
internal sealed record BedSizes(
    Outside Outside,
    RoleMaterial Post,
    RoleMaterial Rail,
    RoleMaterial Ledger,
    RoleMaterial? Beam,
    RoleMaterial Slat,
    int Count,
    RoleMaterial Head,
    int Boards,
    Working<Length> RailHeight,
    Working<Length> FootHeight,
    int BeamLegs
)
{
    /// <summary>Gap between slats that mattress makers usually allow (common practice).</summary>
    public static readonly Length MostGap = Length.FromInches(3);

    /// <summary>Room for a slat at each end.</summary>
    public static readonly Length SlatPlay = Length.FromInches(0.125m);

    // Boards of sheet goods are ripped so wide (common practice).
    private static readonly Length Ripped = Length.FromInches(3.5m);

    public Length Width => Outside.Width.Value;

    public Length Depth => Outside.Depth.Value;

    /// <summary>Extent of a post along the width.</summary>
    public Length Px => Post.Width ?? Post.Thickness;

    /// <summary>Extent of a post along the depth.</summary>
    public Length Py => Post.Thickness;

    public Length Tall => Wide(Rail);

    /// <summary>Upper face of the ledgers, and of the beam: the slats lie on both.</summary>
    public Length SlatZ => RailHeight.Value + LedgerHigh;

    // One ripped from a sheet is twice as high as it is thick, as a cleat is.
    public Length LedgerHigh => Ledger.Width ?? Ledger.Thickness * 2;

    /// <summary>Slats: as many as asked for, or as the usual gap takes.</summary>
    public int Slats =>
        Count > 0 ? Count : Math.Max(2, (int)Math.Ceiling((Inside - MostGap).Ticks / (decimal)(Wide(Slat) + MostGap).Ticks));

    private Length Inside => Depth - (Py * 2);

    /// <summary>Gap between slats, and from the end ones to head and foot.</summary>
    public Length Gap => Length.FromTicks((Inside - (Wide(Slat) * Slats)).Ticks / (Slats + 1));

    public static Length Wide(RoleMaterial material) => material.Width ?? Ripped;

    public static BedSizes? Read(NodeReader members, Outside outside)
    {
        var bed = new BedSizes(
            outside,
            members.Role("post"),
            members.Role("rail"),
            members.Role("ledger"),
            members.MaybeRole("beam"),
            members.Role("slat"),
            members.Count("slats"),
            members.Role("head"),
            members.Count("boards"),
            members.Length("rail_height"),
            members.Length("foot_height"),
            members.Count("beam_legs")
        );
        if (!members.Failed)
            bed.Check(members);
        return members.Failed ? null : bed;
    }

    /// <summary>Front left, front right, back left, back right: the foot in front, lower than the head.</summary>
    public Legs AddPosts(Builder builder)
    {
        Draft At(string name, Length x, Length y, Working<Length> high) =>
            builder.Add(
                new(name, "Frame", Post, new(x, y, Length.Zero, Px, Py, high.Value), Axis.Z, Axis.Y)
                {
                    Length = high,
                    FacesToFinish = "all faces",
                }
            );
        return new(
            At("Foot post", Length.Zero, Length.Zero, FootHeight),
            At("Foot post", Width - Px, Length.Zero, FootHeight),
            At("Head post", Length.Zero, Depth - Py, Outside.Height),
            At("Head post", Width - Px, Depth - Py, Outside.Height)
        );
    }

    private void Check(NodeReader members)
    {
        string Text(Length length) => LengthFormat.WithUnit(length, members.Unit);
        var top = RailHeight.Value + Tall;
        if (Rail.Thickness > Px || Rail.Thickness > Py)
            members.Fail("rail", Rail.Name, "is thicker than the posts: use a thinner board, or thicker posts");
        if (top > FootHeight.Value)
            members.Fail("foot_height", Text(FootHeight.Value), $"is lower than the rails: at least {Text(top)}");
        if (FootHeight.Value > Outside.Height.Value)
            members.Fail("foot_height", Text(FootHeight.Value), $"is higher than the head: at most {Text(Outside.Height.Value)}");
        if (Ledger.Thickness <= SlatPlay * 2)
            members.Fail(
                "ledger",
                Ledger.Name,
                $"is too thin for the slats to lie on: more than {Text(SlatPlay * 2)}, since they have room at their ends"
            );
        if (SlatZ + Slat.Thickness > top)
            members.Fail("ledger", Ledger.Name, "lifts the slats over the rails: use a narrower ledger, or wider rails");
        if (Beam is { } beam && SlatZ < Wide(beam))
            members.Fail(
                "rail_height",
                Text(RailHeight.Value),
                $"puts the middle beam into the floor: at least {Text(Wide(beam) - LedgerHigh)}"
            );
        if (Count == 1 || Gap < Length.Zero)
            members.Fail(
                "slats",
                Slats.ToString(CultureInfo.InvariantCulture),
                Count == 1 ? "must be at least 2 slats" : "slats are wider in total than the bed is long inside"
            );
        if (Outside.Height.Value - top < Wide(Head) * Boards)
            members.Fail(
                "boards",
                Boards.ToString(CultureInfo.InvariantCulture),
                $"boards are wider in total than the {Text(Outside.Height.Value - top)} above the head rail"
            );
    }
}
