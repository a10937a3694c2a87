using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>Finds the trenches that a piece's joints ask for.</summary>
internal static class TrenchList
{
    private static readonly JointKind[] Kinds =
    [
        JointKind.Groove,
        JointKind.Dado,
        JointKind.Rabbet,
        JointKind.Breadboard,
        JointKind.SlidingGroove,
    ];

    // These take what is as thick as themselves by a tongue.
    private static readonly JointKind[] Tongued = [JointKind.Groove, JointKind.Breadboard];

    /// <summary>All of them, in the order of the joints.</summary>
    public static ImmutableArray<Trench> Of(PieceWork work) =>
        [
            .. work
                .Joints.Where(one => Kinds.Contains(one.Kind) && one.Depth.IsPositive)
                .Select(Housing.Of)
                .OfType<Housing>()
                .GroupBy(one => (one.Joint.Into.Mark, one.Joint.Along, one.AtEnd, one.Run))
                .SelectMany(side => OnOneSide([.. side], work.Unit))
                .OrderBy(one => one.Joints.Min(joint => joint.Index)),
        ];

    // On one side of a copy, housings that overlap and meet are one trench; what is as wide as the copy goes into the one there.
    private static IEnumerable<Trench> OnOneSide(List<Housing> housings, LengthUnit unit)
    {
        var whole = housings.Where(one => one is { IsLap: false, IsWhole: true }).ToList();
        var lines = new List<List<Housing>>();
        foreach (var housing in housings.Except(whole).OrderBy(one => one.Width).ThenBy(one => one.Joint.Index))
            if (lines.Find(line => line[0].IsBeside(housing) && line.Exists(housing.Meets)) is { } there)
                there.Add(housing);
            else
                lines.Add([housing]);
        foreach (var housing in whole)
            if (lines.Find(line => !line[0].IsLap && line.Exists(housing.Meets)) is { } there)
                there.Add(housing);
            else
                lines.Add([Middle(housing, unit)]);
        return lines.Select(line => Cut(line, unit));
    }

    // Nothing thin decides: a third of the piece, in its middle.
    private static Housing Middle(Housing housing, LengthUnit unit)
    {
        var (start, stock) = (housing.Start, housing.Width);
        var width = Usual(housing.Joint.Kind, stock, unit).Value;
        var near = Length.FromTicks((stock - width).Ticks / 2);
        return housing with { Start = start + near, End = start + near + width, IsUsual = true };
    }

    // The tongue of a breadboard end is a tenon, as its length is.
    private static Working<Length> Usual(JointKind kind, Length stock, LengthUnit unit) =>
        kind == JointKind.Breadboard
            ? MortiseTenon.Thickness(Working.Given("Piece", stock), unit)
            : CentredGroove.Usual(Working.Given("Piece", stock), unit);

    private static Trench Cut(List<Housing> line, LengthUnit unit)
    {
        var first = line[0];
        return new(
            first.Joint.Into,
            first.Joint.Along,
            first.AtEnd,
            first.Run,
            first.Across,
            first.Start,
            first.End,
            line.Min(one => one.RunStart),
            line.Max(one => one.RunEnd),
            first.CutWidth(unit),
            first.IsLap,
            [.. line.Select(one => one.Joint)]
        );
    }

    /// <summary>What one joint asks of the copy that takes it.</summary>
    /// <param name="Joint">The joint.</param>
    /// <param name="Shared">What the two share.</param>
    /// <param name="AtEnd">Whether the far side along the joint is cut.</param>
    /// <param name="Run">Direction of the trench.</param>
    /// <param name="Across">Direction of its width.</param>
    /// <param name="Start">Where it begins across.</param>
    /// <param name="End">Where it ends.</param>
    private sealed record Housing(WorkJoint Joint, Box Shared, bool AtEnd, Axis Run, Axis Across, Length Start, Length End)
    {
        public Length Width => End - Start;

        /// <summary>Where it begins along the trench; what slides needs all of it.</summary>
        public Length RunStart => Slides ? Joint.Into.Box.Start(Run) : Shared.Start(Run);

        /// <summary>Where it ends along the trench.</summary>
        public Length RunEnd => Slides ? Joint.Into.Box.End(Run) : Shared.End(Run);

        private bool Slides => Joint.Kind == JointKind.SlidingGroove;

        /// <summary>Whether it would take the whole of the copy across.</summary>
        public bool IsWhole => !IsUsual && Start == Joint.Into.Box.Start(Across) && End == Joint.Into.Box.End(Across);

        /// <summary>Whether it takes a part with its face, or as wide as the copy without a tongue.</summary>
        public bool IsLap => Joint.From.Copy.Flat == Joint.Along || (IsWhole && !Tongued.Contains(Joint.Kind));

        /// <summary>Whether its width follows from the copy's thickness alone.</summary>
        public bool IsUsual { get; init; }

        public static Housing? Of(WorkJoint joint)
        {
            var (from, into, along) = (joint.From.Box, joint.Into.Box, joint.Along);
            if (from.Shared(into) is not { } shared)
                return null;
            var isInside = from.Start(along) >= into.Start(along) && shared.End(along) == into.End(along);
            var atEnd = from.End(along) > into.End(along) || isInside;
            var sides = Axes.All.Where(axis => axis != along).OrderBy(axis => shared.Extent(axis)).ToList();
            var across = joint.From.Copy.Flat == along ? sides[0] : joint.From.Copy.Flat;
            var housing = new Housing(
                joint,
                shared,
                atEnd,
                BoxSides.Third(along, across),
                across,
                shared.Start(across),
                shared.End(across)
            );
            return housing.IsDrawerCorner ? housing.Half() : housing;
        }

        public bool IsBeside(Housing other) =>
            Across == other.Across && IsLap == other.IsLap && Start < other.End && other.Start < End;

        /// <summary>Whether both lie on one stretch of the trench: between others it would stay open to see.</summary>
        public bool Meets(Housing other) =>
            Shared.Start(Run) <= other.Shared.End(Run) + Trench.NoWall
            && other.Shared.Start(Run) <= Shared.End(Run) + Trench.NoWall;

        public Working<Length> CutWidth(LengthUnit unit)
        {
            var goesIn = Working.Given(PartName, Width);
            if (IsUsual)
                return Usual(Joint.Kind, Joint.Into.Box.Extent(Across), unit);
            return Joint.Kind is JointKind.Groove or JointKind.SlidingGroove
                ? CentredGroove.For(goesIn, Working.Given("Clearance", Trench.Room))
                : LetIn.Width(LetInJoint.Dado, goesIn, Working.Given("Clearance", Length.Zero));
        }

        private string PartName => Joint.From.Name;

        // In a drawer that is joined by dadoes, the front's tongue is half of its thickness, on its inner side (common practice),
        // so that the side's end keeps wood before the dado.
        private bool IsDrawerCorner =>
            Joint.Kind == JointKind.Dado
            && Joint.From.Part.Assembly == "Drawer"
            && (Start == Joint.Into.Box.Start(Across)) != (End == Joint.Into.Box.End(Across));

        private Housing Half()
        {
            var half = Length.FromTicks(Width.Ticks / 2);
            return Start == Joint.Into.Box.Start(Across) ? this with { Start = Start + half } : this with { End = End - half };
        }
    }
}
