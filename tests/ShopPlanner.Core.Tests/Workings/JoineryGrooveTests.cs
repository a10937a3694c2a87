using CsCheck;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Workings;

/// <summary>Grooves and tongues against the rules of old textbooks and by their geometry.</summary>
public sealed class JoineryGrooveTests
{
    [Theory]
    [InlineData("3/4", "1/4", "Noyes, Handwork in Wood, no. 42")]
    [InlineData("1 1/2", "1/2", "Noyes, Handwork in Wood, no. 42")]
    [InlineData("7/8", "5/16", "Noyes, Handwork in Wood, no. 42, and a trade tip: the nearest bit")]
    public void A_groove_is_a_third_of_the_thickness_where_nothing_else_decides(string stock, string groove, string source)
    {
        Assert.True(Asked.Inch(groove) == Asked.Length("groove", "Groove width", "stock=" + stock), source);
        Assert.Equal(Certainty.Read, Asked.Result("groove", "Groove width", "stock=" + stock).Source.Certainty);
    }

    /// <summary>Oracle: Noyes, Handwork in Wood, no. 42: about as deep as wide; tongue as thick as the groove is wide.</summary>
    [Fact]
    public void A_groove_is_as_deep_as_wide_and_the_tongue_fills_it()
    {
        Assert.Equal(Asked.Inch("1/4"), Asked.Length("groove", "Groove depth", "stock=3/4", "groove=1/4"));
        Assert.Equal(Asked.Inch("1/4"), Asked.Length("groove", "Tongue thickness", "stock=3/4", "groove=1/4", "fit=0"));
        Assert.Equal(Asked.Inch("1/4"), Asked.Length("groove", "Taken off each face", "stock=3/4", "groove=1/4", "fit=0"));
    }

    public static TheoryData<string, string, double, string, string> Settings() =>
        new()
        {
            // stock and keys, first fence setting, passes, settings, width reached; all by geometry.
            { "stock=3/4 groove=1/4", "1/4", 1, "1/4", "1/4" },
            { "stock=3/4 groove=1/4 cutter=1/8", "1/4", 2, "1/4", "1/4" },
            { "stock=3/4 groove=1/8 panel=7/32 fit=1/32", "1/4", 2, "1/4", "1/4" },
            { "stock=3/4 panel=7/32 fit=1/32", "1/4", 1, "1/4", "1/4" },
            { "stock=1 groove=1/2 cutter=1/8", "1/4", 4, "1/4 3/8", "1/2" },
            { "stock=1 1/2 groove=3/4 cutter=1/8", "3/8", 6, "3/8 1/2 5/8", "3/4" },
            { "stock=1 groove=3/8 cutter=1/8", "5/16", 4, "5/16 3/8", "3/8" },
        };

    [Theory]
    [MemberData(nameof(Settings))]
    public void Fence_settings_by_geometry(string keys, string first, double passes, string settings, string reached)
    {
        var given = keys.Replace("1 1/2", "1-1/2", StringComparison.Ordinal).Split(' ');
        Assert.Equal(Asked.Inch(first), Asked.Length("groove", "First fence setting", given));
        Assert.Equal(passes, Asked.Number("groove", "Passes", given));
        Assert.Equal(
            settings.Split(' ').Select(Asked.Inch),
            ((LengthsFigure)Asked.Result("groove", "Fence settings", given).Figure).Lengths
        );
        Assert.Equal(Asked.Inch(reached), Asked.Length("groove", "Width reached", given));
    }

    // A blade that fills the groove, or a narrower one that still clears it in a few hundred passes.
    private static readonly Gen<(Length Stock, Length Width, Length Blade, Length Other)> Grooves =
        from width in Gen.Long[400, 60_000]
        from walls in Gen.Long[1, 60_000]
        from blade in Gen.Long[Math.Max(200, (width + 199) / 200), width]
        from other in Gen.Long[Math.Max(200, (width + 199) / 200), width]
        select (Length.FromTicks(width + walls), Length.FromTicks(width), Length.FromTicks(blade), Length.FromTicks(other));

    [Fact]
    public void Walls_and_groove_fill_the_piece_and_so_do_cheeks_and_tongue() =>
        Gen.Select(Grooves, Gen.Long[0, 150])
            .Check(
                one => one.Item1.Width < one.Item1.Stock && one.Item1.Blade <= one.Item1.Width,
                one =>
                {
                    var ((stock, width, blade, _), fit) = one;
                    var groove = CentredGroove.Of(Given(stock), Given(blade), Given(width), Given(Length.FromTicks(fit)));
                    if (blade < width)
                        Assert.Equal(stock, (groove.Fence.Value * 2) + groove.Reached.Value);
                    Assert.Equal(stock, (groove.Cheek.Value * 2) + groove.Tongue.Value);
                    Assert.InRange((width - groove.Reached.Value).Ticks, 0, 1);
                    Assert.InRange((width - Length.FromTicks(fit) - groove.Tongue.Value).Ticks, 0, 1);
                }
            );

    [Fact]
    public void Passes_clear_all_of_the_groove_and_nothing_beside_it() =>
        Grooves
            .Where(one => one.Blade < one.Width)
            .Check(
                one => one.Width < one.Stock && one.Blade.Ticks * 200 >= one.Width.Ticks,
                one =>
                {
                    var (stock, width, blade, _) = one;
                    var groove = CentredGroove.Of(Given(stock), Given(blade), Given(width), Given(Length.Zero));
                    // Each setting cuts from its fence on, and the same again from the other face.
                    var cuts = groove
                        .Settings.Value.Select(one => (From: one, To: one + blade))
                        .SelectMany(cut => new[] { cut, (From: stock - cut.To, To: stock - cut.From) })
                        .OrderBy(cut => cut.From)
                        .ToList();
                    Assert.Equal(groove.Fence.Value, cuts[0].From);
                    Assert.Equal(stock - groove.Fence.Value, cuts.Max(cut => cut.To));
                    var end = cuts[0].To;
                    foreach (var (from, to) in cuts.Skip(1))
                    {
                        Assert.True(from <= end, $"a strip stands from {end} to {from}");
                        end = Length.Max(end, to);
                    }

                    Assert.Equal(cuts.Count, groove.Passes.Value);
                }
            );

    [Fact]
    public void A_wider_blade_never_wants_more_passes() =>
        Grooves.Check(
            pair => pair.Width < pair.Stock && pair.Blade <= pair.Width && pair.Other <= pair.Width,
            pair =>
            {
                var (stock, width, one, other) = pair;
                double Passes(Length blade) =>
                    CentredGroove.Of(Given(stock), Given(blade), Given(width), Given(Length.Zero)).Passes.Value;
                Assert.True(one <= other ? Passes(one) >= Passes(other) : Passes(one) <= Passes(other));
            }
        );

    [Fact]
    public void It_is_said_that_turning_the_piece_centres_the_groove_and_practice_pieces_are_proposed()
    {
        var answer = Asked.Answer("groove", "stock=3/4", "groove=1/8", "panel=7/32", "practice=3");
        Assert.Contains(answer.Verdicts, verdict => verdict.Text.Contains("end for end", StringComparison.Ordinal));
        var part = Assert.Single(answer.Parts);
        Assert.Equal((3, Asked.Inch("3/4")), (part.Quantity, part.Thickness));
        Assert.True(part.Length >= Asked.Inch("12") && part.Width >= Asked.Inch("3"), "too small to be cut safely");
        Assert.Contains(Cautions.GrooveWithoutGuard, answer.Cautions);
    }

    [Theory]
    [InlineData("stock=3/4 groove=1/4 cutter=1/8", "only just meet")]
    [InlineData("stock=3/4 groove=1/2", "split easily")]
    [InlineData("stock=3/4 groove=1/4 panel=1/2 cutter=1/8", "doesn't go in")]
    [InlineData("stock=3/4 groove=1/4 panel=1/4", "tight in the groove")]
    [InlineData("stock=2 groove=1 1/8 cutter=1/8", "settings is a lot")]
    [InlineData("stock=3/4 groove=1/4 depth=1 1/4", "several passes")]
    public void What_is_to_be_watched_is_said(string keys, string words)
    {
        var given = keys.Replace("1 1/", "1-1/", StringComparison.Ordinal).Split(' ');
        Assert.Contains(
            Asked.Answer("groove", given).Verdicts,
            verdict => verdict.Severity == Severity.Watch && verdict.Text.Contains(words, StringComparison.Ordinal)
        );
    }

    private static Working<Length> Given(Length length) => Working.Given("given", length);
}
