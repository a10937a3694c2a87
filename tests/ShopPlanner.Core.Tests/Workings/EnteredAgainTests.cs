using System.Globalization;
using System.Text.RegularExpressions;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Workings;

/// <summary>A value that an answer or a refusal tells is taken when it is entered, and where it is a limit, a step beyond it is
/// not.</summary>
public sealed partial class EnteredAgainTests
{
    [Fact]
    public void The_room_that_a_growing_panel_is_told_to_need_is_enough_and_half_a_mark_less_is_not()
    {
        var said = 0;
        for (var width = 12; width <= 60; width++)
            foreach (var species in new[] { "oak-red", "cherry-black", "beech-american" })
            {
                string[] door =
                [
                    "opening-width=" + width.ToString(CultureInfo.InvariantCulture),
                    "opening-height=30",
                    "groove=7/8",
                    "species=" + species,
                    "dampest=14",
                ];
                if (Grows([.. door, "clearance=1/32"]) is not { } told)
                    continue;
                said++;
                var room = Asked.Inch(Least().Match(told).Groups["length"].Value);
                Assert.Null(Grows([.. door, "clearance=" + Inches(room)]));
                Assert.NotNull(Grows([.. door, "clearance=" + Inches(room - Asked.Inch("1/32"))]));
            }

        Assert.InRange(said, 100, 200);
    }

    [Fact]
    public void The_groove_that_a_shrinking_panel_is_told_to_need_holds_it()
    {
        var said = 0;
        for (var width = 12; width <= 40; width++)
            foreach (var groove in new[] { "1/4", "3/8", "1/2" })
            {
                string[] door =
                [
                    "opening-width=" + width.ToString(CultureInfo.InvariantCulture),
                    "opening-height=30",
                    "species=beech-american",
                    "built-at=13",
                    "dampest=13",
                    "driest=5",
                ];
                if (Falls([.. door, "groove=" + groove]) is not { } told)
                    continue;
                said++;
                Assert.Null(Falls([.. door, "groove=" + Inches(Asked.Inch(Least().Match(told).Groups["length"].Value))]));
            }

        Assert.InRange(said, 30, 90);
    }

    [Fact]
    public void The_wood_that_a_screw_is_told_to_need_is_enough_and_a_step_less_is_not()
    {
        var said = 0;
        foreach (var unit in Enum.GetValues<LengthUnit>())
            for (var near = 2; near <= 52; near++)
            {
                string[] given = ["thickness=" + near + "/16 in"];
                var refused = Asked.Run(unit, "screws", [.. given, "into=1/16 in"]);
                if (refused.Faults is not [{ Field: "into" } fault])
                    continue;
                said++;
                var needed = LengthText.Parse(Least().Match(fault.Message).Groups["length"].Value, unit).Value;
                Assert.NotNull(Asked.Run(unit, "screws", [.. given, "into=" + Inches(needed) + " in"]).Answer);
                var less = needed - (unit == LengthUnit.Inch ? Asked.Inch("1/64") : Length.FromMillimetres(0.1m));
                Assert.Null(Asked.Run(unit, "screws", [.. given, "into=" + Inches(less) + " in"]).Answer);
            }

        Assert.InRange(said, 60, 110);
    }

    [Fact]
    public void The_thickest_piece_that_screws_are_told_to_take_is_taken_and_a_mark_more_is_not()
    {
        foreach (var unit in Enum.GetValues<LengthUnit>())
        {
            var fault = Assert.Single(Asked.Run(unit, "screws", "thickness=5 in", "into=10 in").Faults);
            var most = LengthText.Parse(Most().Match(fault.Message).Groups["length"].Value, unit).Value;
            Assert.NotNull(Asked.Run(unit, "screws", "thickness=" + Inches(most) + " in", "into=10 in").Answer);
            var more = most + (unit == LengthUnit.Inch ? Asked.Inch("1/16") : Length.FromMillimetres(1));
            Assert.Null(Asked.Run(unit, "screws", "thickness=" + Inches(more) + " in", "into=10 in").Answer);
        }
    }

    [Fact]
    public void The_joint_that_a_dowel_is_told_to_need_is_wide_enough_and_a_step_less_is_not()
    {
        for (var thick = 6; thick <= 48; thick++)
        {
            string[] given = ["thickness=" + thick + "/16"];
            if (Asked.Run("dowels", [.. given, "width=1/16"]).Faults is not [{ Field: "width" } fault])
                continue;
            var width = Asked.Inch(Least().Match(fault.Message).Groups["length"].Value);
            Assert.NotNull(Asked.Run("dowels", [.. given, "width=" + Inches(width)]).Answer);
            Assert.Null(Asked.Run("dowels", [.. given, "width=" + Inches(width - Asked.Inch("1/64"))]).Answer);
        }
    }

    [Fact]
    public void The_pieces_that_are_told_to_fit_do_and_one_more_does_not()
    {
        for (var span = 3; span <= 40; span++)
        {
            string[] given = ["span=" + span.ToString(CultureInfo.InvariantCulture), "member=1 1/4"];
            var fault = Assert.Single(Asked.Run("spacing", [.. given, "count=400"]).Faults);
            var most = int.Parse(Number().Match(fault.Message).Groups["number"].Value, CultureInfo.InvariantCulture);
            Assert.NotNull(Asked.Run("spacing", [.. given, $"count={most}"]).Answer);
            Assert.Null(Asked.Run("spacing", [.. given, $"count={most + 1}"]).Answer);
        }
    }

    [Fact]
    public void The_height_that_hinges_are_told_to_want_is_enough()
    {
        foreach (var weight in new[] { "2 lb", "20 lb", "35 lb", "50 lb" })
        {
            var fault = Assert.Single(Asked.Run("hinges", "height=2", "width=12", "weight=" + weight).Faults);
            var height = Asked.Inch(Want().Match(fault.Message).Groups["length"].Value);
            Assert.NotNull(Asked.Run("hinges", "height=" + Inches(height), "width=12", "weight=" + weight).Answer);
        }
    }

    [Fact]
    public void The_room_for_a_swelling_panel_is_at_least_half_of_what_it_swells_by_and_less_than_a_half_mark_more()
    {
        foreach (var unit in Enum.GetValues<LengthUnit>())
            for (var width = 3; width <= 60; width++)
            {
                var answer = Asked.Run(unit, "movement", $"width={width} in", "from=6", "to=12").Answer!;
                var change = ((Working<Length>)answer.Results[0]).Value;
                var room = ((Working<Length>)answer.Results[3]).Value;
                var half = unit == LengthUnit.Inch ? Asked.Inch("1/32") : Length.FromMillimetres(0.5m);
                Assert.True(room * 2 >= change && (room - half) * 2 < change, $"{width} in");
                var slot = ((Working<Length>)answer.Results[2]).Value;
                Assert.True(slot >= change && slot - (half * 2) < change, $"{width} in");
            }
    }

    private static string? Grows(string[] door) => Failing(door, "grows");

    private static string? Falls(string[] door) => Failing(door, "shrinks");

    private static string? Failing(string[] door, string word) =>
        Asked
            .Answer("door", door)
            .Verdicts.FirstOrDefault(one => one.Severity == Severity.Fails && one.Text.Contains(word, StringComparison.Ordinal))
            ?.Text;

    private static string Inches(Length length) => length.ToInches().ToString("0.######", CultureInfo.InvariantCulture);

    [GeneratedRegex("at least (?<length>[0-9 /⁄.⁰¹²³⁴⁵⁶⁷⁸⁹₀₁₂₃₄₅₆₇₈₉½¼¾⅛⅜⅝⅞]+ ?(″|in|mm))")]
    private static partial Regex Least();

    [GeneratedRegex("at most (?<length>[0-9 /.]+ ?(in|mm))")]
    private static partial Regex Most();

    [GeneratedRegex("at most (?<number>[0-9]+)")]
    private static partial Regex Number();

    [GeneratedRegex("which need (?<length>[^″]+″)")]
    private static partial Regex Want();
}
