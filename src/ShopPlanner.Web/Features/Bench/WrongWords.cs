using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Bench.Wrong;
using ShopPlanner.Services.Common;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Features.Bench;

/// <summary>Wrong cuts in plain words.</summary>
public static class WrongWords
{
    /// <summary>The reasons to choose from.</summary>
    public static IReadOnlyList<(WrongReason Reason, string Name)> Reasons { get; } =
    [
        (WrongReason.Short, "Too short or too narrow"),
        (WrongReason.Chipped, "Chipped or torn"),
        (WrongReason.WrongFace, "Wrong face or wrong way round"),
        (WrongReason.Other, "Something else"),
    ];

    /// <summary>What a reason is called.</summary>
    public static string Of(WrongReason reason) => Reasons.First(one => one.Reason == reason).Name;

    /// <summary>What a proposal costs: <c>Costs $4.20 more</c>.</summary>
    public static string Cost(RestProposal proposal, string sign)
    {
        ArgumentNullException.ThrowIfNull(proposal);
        return proposal.Extra > Money.Zero ? $"Costs {Words.Money(proposal.Extra, sign)} more"
            : proposal.Extra < Money.Zero ? $"Costs {Words.Money(Money.Zero - proposal.Extra, sign)} less"
            : "Costs nothing more";
    }

    /// <summary>A size down to the last mark of a rule that is not beyond it: <c>20″ × 2 ½″</c>.</summary>
    public static string Size(Length length, Length width, LengthUnit unit) => $"{AtMark(length, unit)} × {AtMark(width, unit)}";

    private static string AtMark(Length length, LengthUnit unit) => LengthFormat.WithUnit(BenchWords.Marked(length, unit), unit);
}
