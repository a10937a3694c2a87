using System.Collections.Frozen;
using System.Globalization;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Designs.Judging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Tests.Designs;
using ShopPlanner.Core.Totals;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Totals;

/// <summary>What a design's own parts add up to, beside sums in plain inches and pounds that share nothing with the
/// program's.</summary>
public sealed class PieceTotalTests
{
    private const double PoundsPerCubicFoot = 62.43;

    // Faces, long edges, ends of every word that designs use; a new word needs a row here.
    private static readonly FrozenDictionary<string, (int, int, int)> Words = new Dictionary<string, (int, int, int)>
    {
        [""] = (0, 0, 0),
        ["all faces"] = (2, 2, 2),
        ["both faces"] = (2, 0, 0),
        ["both faces, before it goes in"] = (2, 0, 0),
        ["both faces, front edge"] = (2, 1, 0),
        ["both faces, upper edge"] = (2, 1, 0),
        ["both faces, all edges"] = (2, 2, 2),
        ["upper face"] = (1, 0, 0),
        ["upper face, front edge"] = (1, 1, 0),
        ["upper face, edges"] = (1, 2, 0),
        ["outer face, edges"] = (1, 2, 0),
        ["front face"] = (1, 0, 0),
        ["front face, edges"] = (1, 2, 0),
        ["front face, all edges"] = (1, 2, 2),
        ["inner face"] = (1, 0, 0),
        ["both faces, edges"] = (2, 2, 0),
        ["both faces, lower edge"] = (2, 1, 0),
        ["front edge, both faces"] = (2, 1, 0),
        ["outer face, lower edge"] = (1, 1, 0),
        ["upper face, before it goes in"] = (1, 0, 0),
        ["both faces, all edges, before it goes on"] = (2, 2, 2),
        ["edges rounded"] = (2, 2, 2),
    }.ToFrozenDictionary();

    public static TheoryData<string, LengthUnit> Cases
    {
        get
        {
            var cases = new TheoryData<string, LengthUnit>();
            foreach (var name in DesignFiles.Names)
            foreach (var unit in Enum.GetValues<LengthUnit>())
                cases.Add(name, unit);
            return cases;
        }
    }

    [Theory, MemberData(nameof(Cases))]
    public void The_area_to_finish_is_the_sum_of_the_faces(string design, LengthUnit unit)
    {
        var piece = Counted.Piece(design);
        var inches = Members(piece).Sum(part => part.Copies.Length * Surface(part));
        var total = Assert.Single(Counted.Of("coats", piece, unit).Questions);
        var told = total.Added[0].Figure.Number(LengthUnit.Inch)!.Value * 144;
        // Each part is rounded up by less than a hundredth of a square foot or meter.
        var step = unit == LengthUnit.Inch ? 1.44 : 0.01 / 0.00064516;
        Assert.InRange(told, inches - 0.01, inches + (step * total.Added[0].Shares.Length));
    }

    [Theory, MemberData(nameof(Cases))]
    public void The_weight_is_the_sum_of_volumes_times_densities_and_lies_within_its_range(string design, LengthUnit unit)
    {
        var piece = Counted.Piece(design);
        var pounds = Members(piece).Sum(part => part.Copies.Length * Cubic(part) / 1728 * PoundsPerCubicFoot * Density(part));
        var total = Counted.Of("weight", piece, unit);
        var sum = total.Sum!.Figure.Number(LengthUnit.Inch)!.Value;
        Assert.Equal(pounds, sum, pounds * 0.002);
        Assert.InRange(
            sum,
            total.Range!.Value.Least.Number(LengthUnit.Inch)!.Value,
            total.Range.Value.Most.Number(LengthUnit.Inch)!.Value
        );
        Assert.Equal(sum, total.Questions.Sum(one => one.Outcome.Answer!.Results[0].Figure.Number(LengthUnit.Inch)!.Value), 1e-6);
    }

    // Two ways to the same factor: the judge's own, and the form's from what is entered.
    [Theory, MemberData(nameof(Cases))]
    public void The_stability_is_the_judges_where_something_opens(string design, LengthUnit unit)
    {
        var piece = Counted.Piece(design);
        var judged = PieceJudge
            .Of(piece)
            .Select(one => one.Working)
            .OfType<Working>()
            .FirstOrDefault(one => one.Name == "Stability factor");
        var question = Assert.Single(Counted.Of("stability", piece, unit).Questions);
        Assert.NotNull(question.Outcome.Answer);
        if (judged is null)
            return;
        var factor = question.Outcome.Answer.Results[0].Figure.Number(unit)!.Value;
        Assert.Equal(judged.Figure.Number(unit)!.Value, factor, (0.01 * factor) + 0.005);
        Assert.NotEqual("0", question.Given["doors"]);
    }

    [Fact]
    public void Some_design_has_doors_or_drawers_that_were_compared() =>
        Assert.Contains(DesignFiles.Names, name => Members(Counted.Piece(name)).Any(part => part.Assembly is "Door" or "Drawer"));

    [Theory, MemberData(nameof(Cases))]
    public void Entered_by_hand_each_question_gives_the_same_answer(string design, LengthUnit unit)
    {
        var piece = Counted.Piece(design);
        foreach (var name in PartTotals.Forms)
        {
            Assert.True(WorkingForms.TryFind(name, out var form));
            foreach (var question in Counted.Of(name, piece, unit).Questions)
            {
                var again = form.Run(question.Given, unit).Answer;
                Assert.True(again is not null, $"{name}, {question.About}: {string.Join("; ", question.Outcome.Faults)}");
                Assert.Equal(
                    again.Results.Select(one => (one.Name, one.Figure.Text(unit))),
                    question.Outcome.Answer!.Results.Select(one => (one.Name, one.Figure.Text(unit)))
                );
            }
        }
    }

    [Theory, MemberData(nameof(Cases))]
    public void The_shares_shown_add_up_to_the_figure_shown(string design, LengthUnit unit)
    {
        var piece = Counted.Piece(design);
        foreach (var name in PartTotals.Forms)
        foreach (var added in Counted.Of(name, piece, unit).Questions.SelectMany(question => question.Added))
        {
            Assert.NotEmpty(added.Shares);
            var shown = added.Shares.Sum(share => Math.Round(share.Share.Number(unit)!.Value, 6));
            Assert.Equal(added.Figure.Number(unit)!.Value, shown, 1e-4);
        }
    }

    [Fact]
    public void The_strips_of_a_top_are_one_panel_and_glued()
    {
        var piece = Counted.Piece("table");
        var strips = piece.Copies("Top strip").ToList();
        var wide = strips.Sum(strip => (double)strip.Box.Dy.ToInches());
        var panel = Assert.Single(Counted.Of("glue-up", piece).Questions);
        Assert.Equal("Top", panel.About);
        Assert.Equal(wide, panel.Added[0].Figure.Number(LengthUnit.Inch)!.Value, 1e-6);
        Assert.Equal(strips.Count, Parts(panel).Sum());
        var moving = Assert.Single(
            Counted.Of("movement", piece).Questions,
            question => question.About.Contains("Top", StringComparison.Ordinal)
        );
        Assert.Equal(wide, (double)LengthText.Parse(moving.Given["width"], LengthUnit.Inch).Value.ToInches(), 1e-6);
    }

    private static IEnumerable<int> Parts(PartQuestion panel) =>
        panel
            .Added[0]
            .Shares.Select(share =>
                share.Part.Split(" × ") is [_, var count] ? int.Parse(count, CultureInfo.InvariantCulture) : 1
            );

    private static IEnumerable<PiecePart> Members(Piece piece) => piece.Parts.Where(part => part.Purpose == PartPurpose.Member);

    private static double Surface(PiecePart part)
    {
        var (length, width, thick) = Inches(part);
        var (faces, edges, ends) = part.Assembly == "Free parts" ? (2, 2, 2) : Words[part.FacesToFinish];
        return (faces * length * width) + (edges * length * thick) + (ends * width * thick);
    }

    private static double Cubic(PiecePart part)
    {
        var (length, width, thick) = Inches(part);
        return length * width * thick;
    }

    // Boards at 8% moisture; panels as they are published.
    private static double Density(PiecePart part) =>
        part.Material.Form == MaterialForm.Board
            ? StrengthTable.Find(part.Material.Species!)!.Gravity * 1.08
            : StrengthTable.Find(part.Material.Species!)!.Gravity;

    private static (double Length, double Width, double Thick) Inches(PiecePart part) =>
        ((double)part.Length.Value.ToInches(), (double)part.Width.Value.ToInches(), (double)part.Thickness.Value.ToInches());
}
