using System.Text.RegularExpressions;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Plans.Ordering;

/// <summary>What a material's name says besides its size: <c>Red oak 1x4</c> and <c>Red oak 1x6</c> are one family.</summary>
internal static partial class MaterialFamily
{
    // 3/4 in plywood measures 23/32: nobody counts that as another thickness (common practice).
    private static readonly Length Slack = Length.FromInches(0, 1, 32);

    public static string Of(string name) => TextRules.Tidy(Sizes().Replace(TextRules.Key(name), " "));

    public static bool IsAsThick(Length one, Length other) => Length.Max(one, other) - Length.Min(one, other) <= Slack;

    [GeneratedRegex(@"\d[\d/.]*(X\d+)?|\b(IN|MM)\b")]
    private static partial Regex Sizes();
}
