using System.Globalization;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Access;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Web.Shared;

/// <summary>The program's words for counts and states.</summary>
public static class Words
{
    /// <summary><c>1 piece</c>, <c>3 pieces</c>.</summary>
    public static string Count(int number, string one, string? many = null) =>
        string.Create(CultureInfo.InvariantCulture, $"{number} {(number == 1 ? one : many ?? one + "s")}");

    /// <summary>Returns a project's state in words.</summary>
    public static string Of(ProjectState state) =>
        state switch
        {
            ProjectState.Planning => "Planning",
            ProjectState.Buying => "Buying",
            ProjectState.Cutting => "Cutting",
            ProjectState.Building => "Building",
            ProjectState.Finishing => "Finishing",
            ProjectState.Done => "Done",
            _ => "Archived",
        };

    /// <summary>How far the cutting is: <c>12 of 40 cuts done, 2 of 5 boards and sheets finished</c>.</summary>
    public static string Of(CutProgress progress)
    {
        ArgumentNullException.ThrowIfNull(progress);
        var (cuts, stocks) = (Count(progress.Cuts, "cut"), Stocks(progress.Stocks));
        return progress.IsBegun
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"{progress.CutsMade} of {cuts} done, {progress.StocksFinished} of {stocks} finished"
            )
            : $"{stocks}, {cuts}";
    }

    /// <summary><c>1 board or sheet</c>, <c>3 boards and sheets</c>.</summary>
    public static string Stocks(int number) => Count(number, "board or sheet", "boards and sheets");

    /// <summary>What a device may do, as in "for the bench".</summary>
    public static string Of(AccessRole role) =>
        role switch
        {
            AccessRole.Owner => "everything",
            AccessRole.Bench => "the bench",
            _ => "shopping lists",
        };

    /// <summary>Returns a plan's state in words.</summary>
    public static string Of(PlanState state) =>
        state switch
        {
            PlanState.Ready => "Ready to cut",
            PlanState.Cutting => "Cutting",
            PlanState.Cut => "All cut",
            _ => "Canceled",
        };

    /// <summary>The units a person chooses from.</summary>
    public static IReadOnlyList<(LengthUnit Value, string Name)> Units { get; } =
    [(LengthUnit.Inch, "Inches"), (LengthUnit.Millimetre, "Millimeters")];

    /// <summary>The unit's name in a sentence.</summary>
    public static string Of(LengthUnit unit) => unit == LengthUnit.Inch ? "inches" : "millimeters";

    /// <summary>An amount with the shop's sign: <c>$6.48</c>.</summary>
    public static string Money(Money amount, string sign) => sign + amount;

    /// <summary>How good a plan is, in plain words.</summary>
    /// <param name="status">As planned.</param>
    /// <param name="cost">The plan's.</param>
    /// <param name="bound">No plan costs less.</param>
    /// <param name="sign">The shop's currency sign.</param>
    public static string Quality(PlanStatus status, Money cost, Money bound, string sign) =>
        status switch
        {
            PlanStatus.Proven => "Proven cheapest",
            PlanStatus.BestFound when cost > bound => $"Could be up to {Money(cost - bound, sign)} cheaper",
            PlanStatus.BestFound => "No cheaper plan found",
            _ => "Some parts are left out",
        };

    /// <summary>The day, as it reads in a list.</summary>
    public static string Day(DateTime utc) => utc.ToLocalTime().ToString("MMM d, yyyy", CultureInfo.InvariantCulture);

    /// <summary>The day, where no time of day is kept.</summary>
    public static string Day(DateOnly day) => day.ToString("MMM d, yyyy", CultureInfo.InvariantCulture);

    /// <summary>The day and the time of day.</summary>
    public static string Moment(DateTime utc) => utc.ToLocalTime().ToString("MMM d, yyyy, h:mm tt", CultureInfo.InvariantCulture);

    /// <summary>The same length in the other unit, exactly enough for a rule.</summary>
    public static string BothUnits(Length length) =>
        $"{LengthFormat.WithUnit(length, LengthUnit.Inch)} = {LengthFormat.WithUnit(length, LengthUnit.Millimetre)}";
}
