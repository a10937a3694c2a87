using System.Text;
using ShopPlanner.Core.Measures;
using ShopPlanner.Packets.Labels;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Paper;
using ShopPlanner.Services.Tests.Designs;

namespace ShopPlanner.Services.Tests.Paper;

/// <summary>Which labels are printed.</summary>
public sealed class LabelServiceTests
{
    private static readonly LabelPrint OnLetter = LabelPrint.On(LabelSheets.All[0]);

    [Fact]
    public async Task A_row_of_four_is_four_labels_and_each_code_leads_to_its_part()
    {
        await using var shop = await TestShop.OpenAsync();
        var project = await Some.ProjectAsync(shop);
        await shop.Parts.SaveAsync(
            project.Id,
            [Some.New(Some.Part("30", "A", "4")), Some.New(Some.Part("20", "B", "1"))],
            TestShop.Cancel
        );
        var (labels, source) = (shop.Get<ILabelService>(), new LabelSource(null, project.Id));

        Assert.Equal(5, (await labels.FindAsync(source, TestShop.Cancel))!.Count);
        Assert.Equal(["A1", "A2", "A3", "A4", "B"], await MarksAsync(labels, source, ""));
        Assert.Equal(["A1", "A2", "A3", "A4"], await MarksAsync(labels, source, "a"));
        Assert.Equal(["A2", "B"], await MarksAsync(labels, source, "A2; B"));
        var none = await labels.PrintAsync(source, "Q", OnLetter, null, TestShop.Cancel);
        Assert.Equal("only", Assert.Single(none.Faults).Field);
    }

    [Fact]
    public async Task Parts_of_a_design_have_the_marks_of_its_drawings_in_the_list_and_in_a_plan()
    {
        await using var given = await Ideas.BeginAsync("bookcase");
        var (labels, source) = (given.Shop.Get<ILabelService>(), new LabelSource(null, given.Project));
        var drawn = await MarksAsync(labels, source, "");
        Assert.Contains("A1L", drawn);
        Assert.Contains("A2R", drawn);

        Assert.True((await given.Service.MakePartsAsync(given.Project, false, CommandId.New(), TestShop.Cancel)).Ok);
        var listed = await MarksAsync(labels, source, "");
        Assert.Empty(drawn.Except(listed));
        Assert.Equal(["A1L"], await MarksAsync(labels, source, "A1"));
    }

    [Fact]
    public async Task The_parts_of_a_plan_have_its_marks_and_a_canceled_plan_has_no_labels()
    {
        await using var given = await PlannedShop.OpenAsync();
        var plan = (await given.PlanAsync()).Summary.Id;
        var (labels, source) = (given.Shop.Get<ILabelService>(), new LabelSource(plan, null));
        Assert.Equal(["A1", "A2", "A3"], await MarksAsync(labels, source, ""));
        await given.Shop.Plans.WithdrawAsync(plan, TestShop.Cancel);
        Assert.Null(await labels.FindAsync(source, TestShop.Cancel));
    }

    [Fact]
    public async Task Every_offcut_has_a_label_without_a_code()
    {
        await using var given = await PlannedShop.OpenAsync();
        var labels = given.Shop.Get<ILabelService>();
        Assert.Equal(0, (await labels.FindAsync(LabelSource.Bin, TestShop.Cancel))!.Count);
        await given.OffcutAsync("20");
        await given.OffcutAsync("14 1/2");
        Assert.Equal(2, (await labels.FindAsync(LabelSource.Bin, TestShop.Cancel))!.Count);
        var file = await labels.PrintAsync(
            LabelSource.Bin,
            "B1",
            OnLetter,
            (_, _) => throw new InvalidOperationException(),
            TestShop.Cancel
        );
        Assert.Equal("%PDF", Encoding.ASCII.GetString(file.Value!.Content, 0, 4));
        Assert.Null(await labels.FindAsync(new(Guid.NewGuid(), null), TestShop.Cancel));
        Assert.Null(await labels.FindAsync(new(null, Guid.NewGuid()), TestShop.Cancel));
    }

    [Fact]
    public async Task Templates_follow_the_design_and_its_pulls()
    {
        await using var given = await Ideas.BeginAsync("nightstand");
        var templates = given.Shop.Get<ITemplateService>();
        var view = await templates.FindAsync(given.Project, Length.FromMillimetres(96), PaperSize.A4, TestShop.Cancel);
        var line = Assert.Single(view!.Lines);
        Assert.Equal(2, line.Template.Holes.Length);
        Assert.Null(await templates.FindAsync(Guid.NewGuid(), Length.Zero, PaperSize.A4, TestShop.Cancel));
        var file = await templates.PrintAsync(given.Project, [line.Template.Id], Length.Zero, PaperSize.Letter, TestShop.Cancel);
        Assert.True(file.Ok);
    }

    // What the codes are asked for, in the order of the labels.
    private static async Task<List<string>> MarksAsync(ILabelService labels, LabelSource source, string only)
    {
        var marks = new List<string>();
        var made = await labels.PrintAsync(
            source,
            only,
            OnLetter,
            (_, mark) =>
            {
                marks.Add(mark);
                return "x";
            },
            TestShop.Cancel
        );
        Assert.True(made.Ok, string.Join("; ", made.Faults));
        return marks;
    }
}
