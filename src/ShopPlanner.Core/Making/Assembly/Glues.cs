using System.Collections.Immutable;
using ShopPlanner.Core.Workings;
using static ShopPlanner.Core.Workings.Certainty;

namespace ShopPlanner.Core.Making.Assembly;

/// <summary>A glue, and how long it holds work up. The label in hand comes before all of it.</summary>
/// <param name="Id">As in <see cref="Model.WorkChoices.Glue"/>.</param>
/// <param name="Name">As shown.</param>
/// <param name="ClampMinutes">How long clamps stay on, at least.</param>
/// <param name="SetMinutes">What passes before the joint is loaded: joined further, planed, hung.</param>
/// <param name="Says">How it is used, a plain sentence.</param>
/// <param name="Source">Where that comes from.</param>
public sealed record WorkGlue(string Id, string Name, int ClampMinutes, int SetMinutes, string Says, SourceNote Source)
{
    /// <summary>Usual wood glue.</summary>
    public static readonly WorkGlue Pva = new(
        "pva",
        "Wood glue (PVA)",
        60,
        24 * 60,
        "You have about 10 minutes before it grabs: spread it only when everything else is ready.",
        new("General pages on wood glue: clamp 30 to 60 minutes, no load for 24 hours; your label comes first", Quoted)
    );

    /// <summary>All that are known, the usual one first.</summary>
    public static readonly ImmutableArray<WorkGlue> All =
    [
        Pva,
        new(
            "hide",
            "Hide glue",
            24 * 60,
            24 * 60,
            "Warm the parts, and work fast: it grabs as it cools.",
            new(
                $"{TradeBooks.Mission1}, p. 110, and part 3 (1912), p. 17: clamps 24 hours "
                    + $"({TradeBooks.Handwork}, p. 131: 6 at least)",
                Read
            )
        ),
        new(
            "polyurethane",
            "Polyurethane glue",
            4 * 60,
            24 * 60,
            "Dampen one face, wear gloves, and clamp well: it foams and pushes joints apart.",
            new("Common practice: clamp 4 hours, full strength after 24; your label comes first", CommonPractice)
        ),
        new(
            "epoxy",
            "Epoxy",
            12 * 60,
            24 * 60,
            "Mix it as the label says, wear gloves, and clamp lightly: a joint pressed dry is weak.",
            new(
                "Common practice for slow epoxy: leave it overnight, full strength after 24 hours; your label comes first",
                CommonPractice
            )
        ),
    ];

    /// <summary>Returns the glue of an id, its times replaced by those of the label; the usual glue for an id that isn't
    /// known.</summary>
    /// <param name="id">Of the glue.</param>
    /// <param name="hours">By <c>clamp</c> and <c>glue</c>: what the label says.</param>
    public static WorkGlue Of(string id, IReadOnlyDictionary<string, double> hours)
    {
        ArgumentNullException.ThrowIfNull(hours);
        var usual = All.FirstOrDefault(one => one.Id == id) ?? Pva;
        var (clamp, set) = (Minutes(hours, "clamp") ?? usual.ClampMinutes, Minutes(hours, "glue") ?? usual.SetMinutes);
        return clamp == usual.ClampMinutes && set == usual.SetMinutes
            ? usual
            : usual with
            {
                ClampMinutes = clamp,
                SetMinutes = Math.Max(clamp, set),
                Source = new("The label, as entered", Read),
            };
    }

    private static int? Minutes(IReadOnlyDictionary<string, double> hours, string what) =>
        hours.TryGetValue(what, out var said) && said >= 0 ? (int)Math.Ceiling(said * 60) : null;
}
