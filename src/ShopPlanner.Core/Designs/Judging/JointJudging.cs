using ShopPlanner.Core.Designs.Joining;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Judging;

/// <summary>Joints that no screw or dowel that is sold can hold without coming out.</summary>
internal static class JointJudging
{
    public static IEnumerable<PieceWarning> Of(Piece piece)
    {
        var ids = piece
            .Parts.SelectMany(part => part.Copies.Select(copy => (copy.Mark, Part: part)))
            .ToDictionary(one => one.Mark, one => one.Part, StringComparer.Ordinal);
        return JointFit
            .Of(piece)
            .Select(fit => (Fit: fit, Reason: Reason(fit, piece.Unit)))
            .Where(one => one.Reason is not null)
            .Select(one => (From: ids[one.Fit.Joint.From], Into: ids[one.Fit.Joint.Into], one.Reason))
            .DistinctBy(one => (one.From.Id, one.Into.Id))
            .Select(one => new PieceWarning(
                Severity.Fails,
                $"{one.From.Name} to {one.Into.Name.ToLowerInvariant()}: {one.Reason}",
                one.From.Id,
                null
            ));
    }

    private static string? Reason(JointFit fit, LengthUnit unit) =>
        fit.Joint.Kind switch
        {
            JointKind.Screwed when fit.Screw().Choice is null =>
                "no wood screw that is sold holds them without coming out. Use thicker wood, or another joint.",
            JointKind.PocketScrew when fit.Screw().Refused is { } refused => refused.OfNearPiece
                ? $"{Text(fit.From.Box.Extent(fit.From.Flat), unit)} {refused.Reason}. Use other wood, or another joint."
                : $"{Text(fit.Into.Box.Extent(fit.Joint.Along), unit)} {refused.Reason}. Use thicker wood, or another joint.",
            JointKind.PocketScrew
                when PocketHole.Reach(fit.From.Box.Extent(fit.From.Flat)) is var reach
                    && fit.From.Box.Extent(fit.Joint.Along) < reach =>
                $"{Text(fit.From.Box.Extent(fit.Joint.Along), unit)} is too short for a pocket hole: at least "
                    + $"{Text(RuleMarks.Up(reach, unit), unit)}. Use another joint.",
            JointKind.Dowel when fit.Dowels() is null =>
                $"{Text(fit.Narrow, unit)} is too thin for dowels. Use thicker wood, or another joint.",
            _ => null,
        };

    private static string Text(Length length, LengthUnit unit) => LengthFormat.WithUnit(length, unit);
}
